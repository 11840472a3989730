using System.Net.Http.Headers;
using System.Text;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>Batches sent as a table.</summary>
public sealed class TableTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Header = "id,rimDiameterIn,rimWidthIn,offsetMm,marking";
    private const string Row = "a,17,8,40,225/45R17 94W XL";

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public async Task Rows_end_in_either_way_and_the_last_needs_no_end(string end)
    {
        var rows = await fixture.Client.RowsOf(Header + end + Row + end + "b" + Row[1..]);

        Assert.Equal([("2", "a"), ("3", "b")], rows.Select(row => (row[0], row[1])));
    }

    [Fact]
    public async Task Columns_come_in_any_order_and_under_either_name()
    {
        var plain = await fixture.Client.RowsOf($"{Header},wheel.massKg,tyre.massKg,pressureKpa\n{Row},8.5,9.5,240\n");
        var turned = await fixture.Client.RowsOf("tyre.pressureKpa,tyre.marking,wheel.offsetMm,wheel.massKg,tyre.massKg,id,wheel.rimWidthIn,wheel.rimDiameterIn\n240,225/45R17 94W XL,40,8.5,9.5,a,8,17\n");

        Assert.Equal(plain[0], turned[0]);
    }

    [Theory]
    [InlineData("id,rimDiameterIn,rimWidthIn,marking", "/candidates required")]
    [InlineData(Header + ",massKg", "/candidates inconsistent")]
    [InlineData(Header + ",rimwidthIn", "/candidates unknownMember")]
    [InlineData(Header + ",innerProfile", "/candidates unknownMember")]
    [InlineData(Header + ",", "/candidates unknownMember")]
    [InlineData(Header + ",offsetMm", "/candidates duplicateMember")]
    [InlineData(Header + ",wheel.offsetMm", "/candidates duplicateMember")]
    [InlineData("", "/candidates unknownMember /candidates required /candidates required /candidates required /candidates required")]
    public async Task A_header_with_faults_is_refused_as_a_whole(string header, string faults)
    {
        using var form = BatchCalls.Form(header + "\n" + Row + "\n", BatchCalls.CarLine());
        using var response = await fixture.Client.PostAsync(new Uri(Calls.BatchCsv, UriKind.Relative), form);

        Assert.Equal(faults, string.Join(' ', (await Problems.Read(response, ProblemTypes.InvalidRequest)).FaultsOf()));
    }

    [Theory]
    [InlineData("a,17,21,40,225/45R17 94W", "outOfRange /candidate/wheel/rimWidthIn: ")]
    [InlineData("a,17,eight,40,225/45R17 94W", "wrongType /candidate/wheel/rimWidthIn: ")]
    [InlineData("a,17,\"8,5\",40,225/45R17 94W", "wrongType /candidate/wheel/rimWidthIn: ")]
    [InlineData("a,17,1e999,40,225/45R17 94W", "notFinite /candidate/wheel/rimWidthIn: ")]
    [InlineData("a,17,NaN,40,225/45R17 94W", "wrongType /candidate/wheel/rimWidthIn: ")]
    [InlineData("a,17,,40,225/45R17 94W", "required /candidate/wheel/rimWidthIn: ")]
    [InlineData("a,17,8,,225/45R17 94W", "required /candidate/wheel/offsetMm: ")]
    [InlineData("a,17,8,40,", "required /candidate/tyre/marking: ")]
    [InlineData("a,17,8,40,45Q17", "unreadable /candidate/tyre/marking: ")]
    [InlineData("a,17,8,40", "inconsistent: The row has 4 cells and the header 5, with a comma between them.")]
    [InlineData("a,17,8,40,225/45R17 94W,more", "inconsistent: The row has 6 cells and the header 5, with a comma between them.")]
    public async Task A_bad_row_is_answered_in_place_with_its_faults_and_the_next_is_answered(string bad, string fault)
    {
        var rows = await fixture.Client.RowsOf($"{Header}\n{bad}\n{Row}\n");

        Assert.StartsWith(fault, rows[0][11], StringComparison.Ordinal);
        Assert.Equal("2,a,,,,,,,,,", string.Join(',', rows[0][..11]));
        Assert.Equal(("3", ""), (rows[1][0], rows[1][11]));
        Assert.NotEqual("", rows[1][2]);
    }

    [Fact]
    public async Task Every_fault_of_a_row_is_told()
    {
        var rows = await fixture.Client.RowsOf($"{Header},boltCircle,fastenerSeat\na,30,21,999,45Q17,round,square\n");

        var faults = rows[0][11].Split(" | ");
        Assert.Equal(6, faults.Length);
        Assert.All(new[] { "rimDiameterIn", "rimWidthIn", "offsetMm", "marking", "boltCircle", "fastenerSeat" }, name => Assert.Contains(faults, fault => fault.Contains("/" + name + ":", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Blank_rows_are_no_rows_and_quoted_cells_are_read()
    {
        var rows = await fixture.Client.RowsOf($"{Header}\n\n\"x, \"\"y\"\"\",\"17\",8,40,\"225/45R17 94W\"\n  \n{Row}\n\n");

        Assert.Equal([("3", "x, \"y\""), ("5", "a")], rows.Select(row => (row[0], row[1])));
    }

    [Fact]
    public async Task A_byte_order_mark_before_the_header_is_not_part_of_it()
    {
        var rows = await fixture.Client.RowsOf($"\uFEFF{Header}\n{Row}\n");

        Assert.Equal("a", Assert.Single(rows)[1]);
    }

    [Fact]
    public async Task A_table_without_rows_has_a_header_alone() => Assert.Empty(await fixture.Client.RowsOf(Header + "\n"));

    // The reader of tables keeps one instance of each short name, by which a comparer of instances took two columns for one.
    [Theory]
    [InlineData("rimDiameterIn,rimWidthIn,offsetMm,marking,,", "unknownMember")]
    [InlineData("x,rimDiameterIn,rimWidthIn,offsetMm,marking,x", "duplicateMember")]
    [InlineData("rimDiameterIn,rimWidthIn,offsetMm,marking,id,id", "duplicateMember")]
    [InlineData("\"\",rimDiameterIn,rimWidthIn,\"\",offsetMm,marking", "unknownMember")]
    public async Task Names_that_stand_twice_in_the_header_are_faults(string header, string code)
    {
        using var form = BatchCalls.Form(header + "\n1,2,3,4,5,6\n", BatchCalls.CarLine());
        using var response = await fixture.Client.PostAsync(new Uri(Calls.BatchCsv, UriKind.Relative), form);
        var faults = (await Problems.Read(response, ProblemTypes.InvalidRequest)).FaultsOf();

        Assert.NotEmpty(faults);
        Assert.All(faults, fault => Assert.Equal("/candidates " + code, fault));
    }

    [Fact]
    public async Task Rows_need_no_id()
    {
        var rows = await fixture.Client.RowsOf("rimDiameterIn,rimWidthIn,offsetMm,marking\n17,8,40,225/45R17 94W\n");

        Assert.Equal("", Assert.Single(rows)[1]);
    }

    [Theory]
    [InlineData("{", "/car syntax")]
    [InlineData("{}", "/car/vehicle required /car/axle required")]
    [InlineData("{\"vehicle\":{\"topSpeedKmh\":1},\"axle\":\"front\"}", "/car/vehicle/topSpeedKmh outOfRange")]
    [InlineData("", "/car required")]
    public async Task A_bad_car_refuses_the_table(string car, string faults)
    {
        using var form = BatchCalls.Form($"{Header}\n{Row}\n", car);
        using var response = await fixture.Client.PostAsync(new Uri(Calls.BatchCsv, UriKind.Relative), form);

        Assert.Equal(faults.Split(' ').Order(StringComparer.Ordinal), string.Join(' ', (await Problems.Read(response, ProblemTypes.InvalidRequest)).FaultsOf()).Split(' ').Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("candidates car", "/car required")]
    [InlineData("candidates", "/car required")]
    [InlineData("car", "/candidates required")]
    [InlineData("car extra", "/candidates required")]
    [InlineData("car extra candidates", "/candidates required")]
    [InlineData("", "/car required")]
    public async Task Parts_missing_or_in_another_order_are_refused(string parts, string fault)
    {
        using MultipartFormDataContent form = [];
        foreach (var part in parts.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            form.Add(part == "car" ? Part(BatchCalls.CarLine(), "application/json") : Part($"{Header}\n{Row}\n", "text/csv"), part);
        using var response = await fixture.Client.PostAsync(new Uri(Calls.BatchCsv, UriKind.Relative), form);

        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        Assert.Contains(fault, problem.FaultsOf());
    }

    [Fact]
    public async Task A_part_after_the_table_is_not_ignored_in_silence()
    {
        using var form = BatchCalls.Form($"{Header}\n{Row}\n", BatchCalls.CarLine());
        form.Add(Part("x", "text/plain"), "tolerances");
        using var response = await fixture.Client.PostAsync(new Uri(Calls.BatchCsv, UriKind.Relative), form);

        var rows = CsvText.Read(await Calls.Text(response));
        Assert.Equal(3, rows.Length);
        Assert.Equal("", rows[1][11]);
        Assert.StartsWith("unknownMember /tolerances: ", rows[2][11], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_body_without_the_boundary_is_no_form()
    {
        using var response = await fixture.Client.PostAsync(Calls.BatchCsv, "this is no form", "multipart/form-data; boundary=edge");

        Assert.Equal([" syntax"], (await Problems.Read(response, ProblemTypes.InvalidRequest)).FaultsOf());
    }

    [Fact]
    public async Task A_form_that_breaks_off_says_so_in_its_last_row()
    {
        var body = BatchCalls.OpenForm + string.Concat(Enumerable.Range(0, 3000).Select(BatchCalls.Row));
        using var response = await fixture.Client.PostAsync(Calls.BatchCsv, body, "multipart/form-data; boundary=edge");

        var rows = CsvText.Read(await Calls.Text(response));
        Assert.Contains("/candidates", rows[^1][11], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_answer_is_a_table_by_its_media_type()
    {
        using var form = BatchCalls.Form($"{Header}\n{Row}\n", BatchCalls.CarLine());
        using var response = await fixture.Client.PostAsync(new Uri(Calls.BatchCsv, UriKind.Relative), form);

        Assert.Equal("text/csv; charset=utf-8; header=present", response.Content.Headers.ContentType!.ToString());
        Assert.EndsWith("\r\n", await Calls.Text(response), StringComparison.Ordinal);
    }

    private static StringContent Part(string text, string type) => new(text, Encoding.UTF8, new MediaTypeHeaderValue(type));
}
