using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment.Batch;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment.Catalogue;

/// <summary>What a catalogue makes of its cars and candidates.</summary>
public sealed class CatalogueTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Header = "id,rimDiameterIn,rimWidthIn,offsetMm,marking";

    private static readonly string Cars = Lines(CatalogueCalls.Car("front"), CatalogueCalls.Car(2, "rear"), CatalogueCalls.Car("all", null));
    private static readonly string Good = BatchCalls.CandidateLine("good");

    [Fact]
    public async Task Every_pair_comes_in_order_of_candidates_then_cars_with_the_members_of_the_contract()
    {
        var bad = BatchCalls.CandidateLine(9, Requests.Object(Requests.Candidate).With("/wheel/boltCircle", "5x112"));
        var lines = await fixture.Client.CatalogueOf(Cars, $"{Good}\n\n{bad}\n");

        Assert.Equal(["car", "candidate", "line", "verdict", "decidedBy", "probableMm"], lines[0].EnumerateObject().Select(member => member.Name));
        Assert.Equal(["front good 1 pass", "2 good 1 caution", "all good 1 caution", "front 9 3 fail", "2 9 3 fail", "all 9 3 fail"], lines[..^1].Select(CatalogueCalls.Told));
        Assert.Equal(["boltCircle"], lines[3].GetProperty("decidedBy").Strings());
        Assert.Equal(JsonValueKind.Null, lines[3].GetProperty("probableMm").ValueKind);
        Assert.Equal(
            """{"carCount":3,"candidateCount":2,"answeredCount":6,"refusedCount":0,"verdicts":{"passCount":1,"cautionCount":2,"failCount":3,"unknownCount":0},"isComplete":true}""",
            lines[^1].GetProperty("summary").GetRawText());
    }

    [Fact]
    public async Task A_pair_has_the_verdict_of_the_single_check()
    {
        var lines = await fixture.Client.CatalogueOf(Cars, Good + "\n");

        var front = await fixture.Client.AnswerOf(Calls.Check, Request());
        var whole = new JsonObject { ["vehicle"] = Request()["vehicle"]!.DeepClone(), ["front"] = Requests.Object(Requests.Candidate), ["rear"] = Requests.Object(Requests.Candidate) };
        var all = await fixture.Client.AnswerOf("/v1/fitment/car-check", whole);
        Assert.Equal(front.GetProperty("decidedBy").Strings(), lines[0].GetProperty("decidedBy").Strings());
        Assert.Equal(front.CheckOf(front.GetProperty("governing").GetString()!).GetProperty("probableMm").GetRawText(), lines[0].GetProperty("probableMm").GetRawText());
        Assert.Equal(all.GetProperty("verdict").GetString(), lines[2].GetProperty("verdict").GetString());
        Assert.Equal(all.GetProperty("decidedBy").EnumerateArray().Select(one => one.GetProperty("id").GetString()).Distinct(), lines[2].GetProperty("decidedBy").Strings());

        static JsonObject Request()
        {
            var check = Requests.Check();
            check.Remove("camberChange");
            return check;
        }
    }

    [Fact]
    public async Task A_camber_change_acts_at_the_axle_that_is_named()
    {
        var car = CatalogueCalls.Car(1);
        car["camberChange"] = Requests.Check()["camberChange"]!.DeepClone();
        var lines = await fixture.Client.CatalogueOf(Lines(car), Good + "\n");

        var single = await fixture.Client.AnswerOf(Calls.Check, Requests.Check());
        Assert.Equal(single.GetProperty("verdict").GetString(), lines[0].GetProperty("verdict").GetString());
        Assert.Equal(single.CheckOf(single.GetProperty("governing").GetString()!).GetProperty("probableMm").GetRawText(), lines[0].GetProperty("probableMm").GetRawText());
        Assert.NotEqual((await fixture.Client.CatalogueOf(Cars, Good + "\n"))[0].GetProperty("probableMm").GetRawText(), lines[0].GetProperty("probableMm").GetRawText());
    }

    [Theory]
    [InlineData("text/csv", ',')]
    [InlineData("text/csv", ';')]
    [InlineData(null, ';')]
    [InlineData("application/vnd.ms-excel", '\t')]
    public async Task Candidates_come_as_a_table_too(string? type, char separator)
    {
        var table = $"{Header},shelf\r\na,17,8,40,225/45R17 94W XL,7\r\n,,,,,\r\nb,17,8,40\r\n,17,8,40,225/45R17 94W XL,\r\n".Replace(',', separator);
        var lines = await fixture.Client.CatalogueOf(Lines(CatalogueCalls.Car(1)), table, type: type);

        Assert.Equal(["1 a 2 unknown", "- b 4  inconsistent", "1 null 5 unknown"], lines[..^1].Select(CatalogueCalls.Told));
        Assert.Equal(
            """{"carCount":1,"candidateCount":3,"answeredCount":2,"refusedCount":1,"verdicts":{"passCount":0,"cautionCount":0,"failCount":0,"unknownCount":2},"isComplete":true}""",
            lines[^1].GetProperty("summary").GetRawText());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("application/x-ndjson")]
    [InlineData("application/json")]
    public async Task Lines_are_told_from_a_table_by_their_type_or_their_beginning(string? type)
    {
        var lines = await fixture.Client.CatalogueOf(Lines(CatalogueCalls.Car(1)), $"\uFEFF\r\n  {Good}\n", type: type);

        Assert.Equal(["1 good 2 pass"], lines[..^1].Select(CatalogueCalls.Told));
    }

    [Theory]
    [InlineData("{", " syntax")]
    [InlineData("{\"vehicle\":{}}", "/id required")]
    [InlineData("{\"id\":null,\"vehicle\":{}}", "/id required")]
    [InlineData("{\"id\":1.5,\"vehicle\":{}}", "/id wrongType")]
    [InlineData("{\"id\":\"x\"}", "/vehicle required")]
    [InlineData("{\"id\":\"x\",\"vehicle\":{\"topSpeedKmh\":1},\"axle\":\"middle\"}", "/vehicle/topSpeedKmh outOfRange /axle unknownWord")]
    [InlineData("{\"id\":\"x\",\"vehicle\":{\"front\":{\"tyre\":{\"marking\":\"45Q17\"}}},\"camberChange\":{\"changeDeg\":-1,\"at\":\"strutTop\"}}", "/camberChange inconsistent /vehicle/front/tyre/marking unreadable")]
    [InlineData("{\"id\":\"front\",\"vehicle\":{}}", "/id inconsistent")]
    [InlineData("{\"id\":\"x\",\"vehicle\":{},\"candidate\":{}}", "/candidate unknownMember")]
    public async Task A_car_that_cannot_be_read_fails_its_pairs_and_not_the_stream(string car, string faults)
    {
        var lines = await fixture.Client.CatalogueOf($"{Lines(CatalogueCalls.Car("front"))}{car}\n{Lines(CatalogueCalls.Car("last"))}", $"{Good}\n{Good}\n{{\n", "?only=pass,caution");

        Assert.Equal(faults.Split(' ').Chunk(2).Select(pair => string.Join(' ', pair)).Order(StringComparer.Ordinal), lines[0].GetProperty("problem").FaultsOf().Order(StringComparer.Ordinal));
        Assert.Equal(2, lines[0].GetProperty("line").GetInt32());
        Assert.Equal(["front good 1 pass", "last good 1 pass", "front good 2 pass", "last good 2 pass"], lines[1..^2].Select(CatalogueCalls.Told));
        Assert.Contains("\"carCount\":3,\"candidateCount\":3,\"answeredCount\":4,\"refusedCount\":5,", lines[^1].GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_no_car_can_be_read_every_pair_is_refused()
    {
        var lines = await fixture.Client.CatalogueOf("{}\n", Good + "\n");

        Assert.Equal(2, lines.Length);
        Assert.Contains("\"answeredCount\":0,\"refusedCount\":1,", lines[1].GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Candidates_that_cannot_be_read_are_told_once_with_number_and_id()
    {
        var wide = BatchCalls.CandidateLine(7, Requests.Object(Requests.Candidate).With("/wheel/rimWidthIn", 21));
        var lines = await fixture.Client.CatalogueOf(Cars, string.Join('\n', wide, "{", "{\"id\":\"n\"}", new string('x', 70_000), "{\"id\":8,\"vehicle\":{},\"axle\":\"front\"}", Good));

        Assert.Equal(
            ["- 7 1 /candidate/wheel/rimWidthIn outOfRange", "- null 2  syntax", "- n 3 /candidate required", "- null 4  tooLong"],
            lines[..4].Select(CatalogueCalls.Told));
        Assert.Equal("- 8 5", CatalogueCalls.Told(lines[4])[..5]);
        Assert.Contains("/vehicle unknownMember", lines[4].GetProperty("problem").FaultsOf());
        Assert.Contains("\"candidateCount\":6,\"answeredCount\":3,\"refusedCount\":15,", lines[^1].GetRawText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?only=pass", "front")]
    [InlineData("?only=caution,fail", "2 all")]
    [InlineData("?only=unknown,fail", "")]
    public async Task Only_the_verdicts_asked_for_are_sent_and_all_are_counted(string query, string cars)
    {
        var lines = await fixture.Client.CatalogueOf(Cars, Good + "\n", query);

        Assert.Equal(cars, string.Join(' ', lines[..^1].Select(line => line.GetProperty("car").ToString())));
        Assert.Contains("\"passCount\":1,\"cautionCount\":2", lines[^1].GetRawText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cars", "/candidates required")]
    [InlineData("candidates cars", "/cars required")]
    [InlineData("candidates", "/cars required")]
    [InlineData("", "/cars required")]
    [InlineData("cars extra candidates", "/candidates required")]
    public async Task Parts_missing_or_in_another_order_are_refused(string parts, string fault)
    {
        using MultipartFormDataContent form = [];
        foreach (var part in parts.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            form.Add(new StringContent(part == "cars" ? Cars : Good), part);
        using var response = await fixture.Client.PostAsync(new Uri(CatalogueCalls.Path, UriKind.Relative), form);

        Assert.Contains(fault, (await Problems.Read(response, ProblemTypes.InvalidRequest)).FaultsOf());
    }

    [Theory]
    [InlineData("", "{}", "application/x-ndjson", "/cars required")]
    [InlineData("\n \n", "{}", "application/x-ndjson", "/cars required")]
    [InlineData("{}", "", "application/x-ndjson", "/candidates required")]
    [InlineData("{}", "\r\n", null, "/candidates required")]
    [InlineData("{}", "id;rimDiameterIn;rimWidthIn;offsetMm\n", "text/csv", "/candidates required")]
    public async Task Parts_without_a_line_are_refused(string cars, string candidates, string? type, string fault)
    {
        using var form = CatalogueCalls.Form(cars, candidates, type);
        using var response = await fixture.Client.PostAsync(new Uri(CatalogueCalls.Path, UriKind.Relative), form);

        Assert.Equal([fault], (await Problems.Read(response, ProblemTypes.InvalidRequest)).FaultsOf());
    }

    [Fact]
    public async Task A_part_after_the_candidates_is_not_ignored_in_silence()
    {
        using var form = CatalogueCalls.Form(Cars, Good);
        form.Add(new StringContent("x"), "tolerances");
        using var response = await fixture.Client.PostAsync(new Uri(CatalogueCalls.Path, UriKind.Relative), form);

        var lines = (await Calls.Text(response)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(["/tolerances unknownMember"], Calls.Parse(lines[^2]).GetProperty("problem").FaultsOf());
    }

    [Theory]
    [InlineData("application/x-ndjson")]
    [InlineData("application/json")]
    [InlineData("multipart/form-data")]
    [InlineData("multipart/mixed; boundary=edge")]
    public async Task Another_media_type_is_refused(string type)
    {
        using var response = await fixture.Client.PostAsync(CatalogueCalls.Path, Good, type);

        await Problems.Read(response, ProblemTypes.UnsupportedMediaType);
    }

    [Fact]
    public async Task A_body_without_the_boundary_is_no_form()
    {
        using var response = await fixture.Client.PostAsync(CatalogueCalls.Path, "this is no form", "multipart/form-data; boundary=edge");

        Assert.Equal([" syntax"], (await Problems.Read(response, ProblemTypes.InvalidRequest)).FaultsOf());
    }

    [Theory]
    [InlineData(1000, 100, true)]
    [InlineData(1001, 100, false)]
    [InlineData(65, 65_000, false)]
    public async Task As_many_cars_are_held_as_is_documented(int count, int length, bool isHeld)
    {
        var cars = string.Concat(Enumerable.Range(0, count).Select(i => string.Create(CultureInfo.InvariantCulture, $"{{\"id\":{i},\"vehicle\":{{}}}}").PadRight(length) + "\n"));
        using var form = CatalogueCalls.Form(cars, Good);
        using var response = await fixture.Client.PostAsync(new Uri(CatalogueCalls.Path + "?only=fail", UriKind.Relative), form);

        if (isHeld)
            Assert.Contains($"\"answeredCount\":{count},", await Calls.Text(response), StringComparison.Ordinal);
        else
            Assert.Equal(["/cars tooMany"], (await Problems.Read(response, ProblemTypes.TooLarge)).FaultsOf());
    }

    [Fact]
    public async Task Each_line_is_valid_against_its_schema()
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        var lines = await fixture.Client.CatalogueOf($"{Cars}{{}}\n", $"{Good}\n{{\n");

        Assert.Equal(6, lines.Length);
        Assert.All(lines, line => Assert.Null(schemas.FaultOf("CatalogueAnswerLine", line.GetRawText())));
        Assert.All(Cars.Split('\n', StringSplitOptions.RemoveEmptyEntries), car => Assert.Null(schemas.FaultOf("CatalogueCarLine", car)));
    }

    private static string Lines(params JsonObject[] cars) => string.Concat(cars.Select(car => car.ToJsonString() + "\n"));
}
