using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>Tables as spreadsheets write them: separators, decimal commas, columns of the caller's own, empty rows.</summary>
public sealed class SeparatorTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Header = "id,rimDiameterIn,rimWidthIn,offsetMm,marking";
    private const string Row = "a,17,8.5,40.5,225/45R17 94W XL";

    [Theory]
    [InlineData(';', "8.5", "40.5")]
    [InlineData(';', "8,5", "40,5")]
    [InlineData('\t', "8.5", "40.5")]
    [InlineData('\t', "8,5", "40,5")]
    [InlineData(';', "8,5", "4,05e1")]
    public async Task The_separator_is_told_from_the_header_and_a_comma_that_separates_nothing_is_a_decimal_comma(char separator, string width, string offset)
    {
        var expected = (await fixture.Client.RowsOf($"{Header}\n{Row}\n"))[0];
        var table = string.Join(separator, Header.Split(',')) + "\r\n" + string.Join(separator, "a", "17", width, offset, "225/45R17 94W XL") + "\r\n";

        var rows = await fixture.Client.TableOf(table, separator);

        Assert.Equal(BatchCalls.Header.Split(','), rows[0]);
        if (width.Contains(',', StringComparison.Ordinal))
            (expected[5], expected[6]) = (expected[5].Replace('.', ','), expected[6].Replace('.', ','));
        Assert.Equal(expected, rows[1]);
        Assert.Contains(width.Contains(',', StringComparison.Ordinal) ? ',' : '.', rows[1][5]);
    }

    [Theory]
    [InlineData("8,5,1")]
    [InlineData("1.008,5")]
    [InlineData("8,5.1")]
    [InlineData(",")]
    [InlineData("8'5")]
    [InlineData("8,5 in")]
    [InlineData("0000000000000000000000000000000000000000000000000000000000000008,5")]
    public async Task Another_comma_is_no_number(string width)
    {
        var rows = await fixture.Client.TableOf($"{Header.Replace(',', ';')}\na;17;{width};40;225/45R17 94W\n{Row.Replace(',', ';')}\n", ';');

        Assert.StartsWith("wrongType /candidate/wheel/rimWidthIn: ", rows[1][11], StringComparison.Ordinal);
        Assert.Equal("", rows[2][11]);
    }

    [Fact]
    public async Task A_decimal_comma_out_of_range_is_told_like_the_number()
    {
        var rows = await fixture.Client.TableOf($"{Header.Replace(',', ';')}\na;17;21,5;40;225/45R17 94W\n", ';');

        Assert.StartsWith("outOfRange /candidate/wheel/rimWidthIn: rimWidthIn is 21.5; ", rows[1][11], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answers_have_the_decimal_mark_that_the_row_or_the_last_before_it_used()
    {
        var rows = await fixture.Client.TableOf($"{Header.Replace(',', ';')}\na;17;8,5;40;225/45R17 94W\nb;17;8;40;225/45R17 94W\nc;17;8.5;40;225/45R17 94W\n", ';');

        Assert.Equal([',', ',', '.'], rows[1..].Select(row => row[6].First(letter => letter is ',' or '.')));
    }

    [Fact]
    public async Task Further_columns_come_back_behind_the_answer_as_they_came()
    {
        var rows = await fixture.Client.TableOf(
            "sku,rimDiameterIn,\"Price, EUR\",rimWidthIn,offsetMm,marking,id,note\n"
            + "0017,17,\"1,299.00\",8,40,225/45R17 94W XL,a,\"two\nlines \"\"quoted\"\"\"\n"
            + ",17,,21,40,225/45R17 94W XL,b,=1+1\n"
            + "x,17,y,8,40\n");

        Assert.Equal([.. BatchCalls.Header.Split(','), "sku", "Price, EUR", "note"], rows[0]);
        Assert.Equal(("", "0017", "1,299.00", "two\nlines \"quoted\""), (rows[1][11], rows[1][12], rows[1][13], rows[1][14]));
        Assert.StartsWith("outOfRange", rows[2][11], StringComparison.Ordinal);
        Assert.Equal(("", "", "=1+1"), (rows[2][12], rows[2][13], rows[2][14]));
        Assert.Equal(("", "", ""), (rows[3][12], rows[3][13], rows[3][14]));
    }

    [Fact]
    public async Task A_cell_with_the_separator_in_it_is_quoted_in_the_answer()
    {
        var rows = await fixture.Client.TableOf("note;rimDiameterIn;rimWidthIn;offsetMm;marking\n\"a;b\";17;8;40;225/45R17 94W\n", ';');

        Assert.Equal("a;b", rows[1][12]);
    }

    [Theory]
    [InlineData("rimwidthIn", "unknownMember", "rimWidthIn may be meant")]
    [InlineData("rimWidth", "unknownMember", "rimWidthIn may be meant")]
    [InlineData("Offset", "unknownMember", "offsetMm may be meant")]
    [InlineData("ID", "unknownMember", "id may be meant")]
    [InlineData("mass", "unknownMember", "massKg may be meant")]
    [InlineData("tyre.colour", "unknownMember", "There is no column “tyre.colour”")]
    [InlineData("wheel.innerProfile", "unknownMember", "is a list")]
    [InlineData("verdict", "inconsistent", "the name of a column of the answer")]
    [InlineData("line", "inconsistent", "the name of a column of the answer")]
    [InlineData("massKg", "inconsistent", "name it wheel.massKg or tyre.massKg")]
    [InlineData("stock,stock", "duplicateMember", "“stock” stands more than once")]
    [InlineData("boltCircle;centreBoreMm", "inconsistent", "The header has a semicolon in “boltCircle;centreBoreMm”, but its columns were read with a comma between them")]
    public async Task A_name_that_may_be_a_slip_is_refused_by_name(string name, string code, string sentence)
    {
        var fault = await Fault($"{Header.Replace("id,", "", StringComparison.Ordinal)},{name}\n");

        Assert.Equal(code, fault.Code);
        Assert.Contains(sentence, fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sku")]
    [InlineData("pid")]
    [InlineData("no")]
    [InlineData("ean")]
    [InlineData("brand")]
    [InlineData("price")]
    [InlineData("category")]
    [InlineData("Größe")]
    [InlineData("season")]
    [InlineData("description of the wheel as our shop prints it in one long sentence")]
    public async Task A_name_unlike_any_is_passed_through(string name)
    {
        var rows = await fixture.Client.TableOf($"{Header},{name}\n{Row},x\n");

        Assert.Equal((name, "x", ""), (rows[0][12], rows[1][12], rows[1][11]));
    }

    [Theory]
    [InlineData("id|rimDiameterIn|rimWidthIn|offsetMm|marking", "The columns of the header stand apart by “|”")]
    [InlineData("rimDiameterIn;rimWidthIn;offsetMm,marking", "Its columns were read with a semicolon between them")]
    [InlineData("rimDiameterIn\trimWidthIn\tmarking", "no column for wheel.offsetMm, which every candidate needs. Its columns were read with a tab between them")]
    [InlineData("rimDiameterIn;;rimWidthIn;offsetMm;marking", "has no name. Its columns were read with a semicolon between them")]
    public async Task A_header_with_faults_names_the_separator_that_was_taken(string header, string sentence)
    {
        using var form = BatchCalls.Form(header + "\n1\n", BatchCalls.CarLine());
        using var response = await fixture.Client.PostAsync(new Uri(Calls.BatchCsv, UriKind.Relative), form);
        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);

        Assert.Contains(problem.GetProperty("errors").EnumerateArray(), fault => fault.GetProperty("message").GetString()!.Contains(sentence, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\uFEFFid;rimDiameterIn;rimWidthIn;offsetMm;marking\r\na;17;8,5;40,5;225/45R17 94W XL\r\n")]
    [InlineData("\"id\";\"rimDiameterIn\";\"rimWidthIn\";\"offsetMm\";\"marking\"\n\"a\";\" 17\t\";\"8,5 \";\"40,5\";\"225/45R17 94W XL\"")]
    [InlineData(" id ; rimDiameterIn ;rimWidthIn; offsetMm;\"marking\"\r\n\n a ; 17 ; 8,5 ;40,5;  225/45R17 94W XL  \r\n")]
    [InlineData("id;rimDiameterIn;rimWidthIn;offsetMm;marking;\"a,b,c,d,e,f,g\"\na;17;+8,5;4,05E1;225/45R17 94W XL;\n")]
    public async Task Spreadsheets_quote_pad_and_mark_their_tables_in_many_ways(string table)
    {
        var expected = (await fixture.Client.RowsOf($"{Header}\n{Row}\n"))[0];

        var row = (await fixture.Client.TableOf(table, ';'))[1];

        Assert.Equal((expected[1], expected[2], expected[3], expected[6].Replace('.', ','), ""), (row[1], row[2], row[3], row[6], row[11]));
    }

    [Fact]
    public async Task A_bad_row_has_its_own_faults_alone_whatever_its_further_columns_are_called()
    {
        var rows = await fixture.Client.TableOf($"{Header},ident,wheels,tyres\na,17,21,40,225/45R17 94W,x,y,z\n");

        Assert.StartsWith("outOfRange /candidate/wheel/rimWidthIn: ", rows[1][11], StringComparison.Ordinal);
        Assert.DoesNotContain(" | ", rows[1][11], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_too_long_is_told_even_where_it_is_empty()
    {
        var rows = await fixture.Client.TableOf($"{Header}\n{new string(' ', 70_000)}\n{Row}\n");

        Assert.Equal(("2", "3"), (rows[1][0], rows[2][0]));
        Assert.StartsWith("tooLong: ", rows[1][11], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_last_row_about_what_follows_the_table_is_as_wide_as_the_others()
    {
        using var form = BatchCalls.Form($"{Header},note\n{Row},x\n", BatchCalls.CarLine());
        form.Add(new StringContent("x"), "surplus");
        using var response = await fixture.Client.PostAsync(new Uri(Calls.BatchCsv, UriKind.Relative), form);
        var rows = CsvText.Read(await Calls.Text(response));

        Assert.Equal([13, 13, 13], rows.Select(row => row.Length));
        Assert.StartsWith("unknownMember /surplus: ", rows[2][11], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_quote_left_open_takes_the_rest_into_its_row_and_says_so()
    {
        var rows = await fixture.Client.TableOf($"{Header.Replace(',', ';')}\n{Row.Replace(',', ';')}\nb;17;\"8;40;225/45R17\nc;17;8;40;225/45R17\n", ';');

        Assert.Equal(("a", ""), (rows[1][1], rows[1][11]));
        Assert.Equal("inconsistent: The row has 3 cells and the header 5, with a semicolon between them.", rows[2][11]);
        Assert.Equal(3, rows.Length);
    }

    [Fact]
    public async Task A_row_of_another_width_names_the_separator()
    {
        var rows = await fixture.Client.TableOf($"{Header.Replace(',', ';')}\na,17,8,40,225/45R17\n{Row.Replace(',', ';')}\n", ';');

        Assert.Equal("inconsistent: The row has 1 cells and the header 5, with a semicolon between them.", rows[1][11]);
        Assert.Equal("", rows[2][11]);
    }

    [Theory]
    [InlineData(";;;;")]
    [InlineData(" ; ;;\t; ")]
    [InlineData("\"\";;;;\"\"")]
    [InlineData(";")]
    [InlineData("")]
    public async Task Rows_without_a_filled_cell_are_left_out(string empty)
    {
        var rows = await fixture.Client.TableOf($"{Header.Replace(',', ';')}\n{empty}\n{Row.Replace(',', ';')}\n{empty}\n", ';');

        Assert.Equal([("3", "a")], rows[1..].Select(row => (row[0], row[1])));
    }

    [Theory]
    [InlineData("pass", "")]
    [InlineData("unknown", "a")]
    [InlineData("fail,caution", "b")]
    [InlineData("pass,caution,fail,unknown", "a b")]
    public async Task Only_the_verdicts_asked_for_are_sent_and_problems_always(string only, string ids)
    {
        var rows = await fixture.Client.TableOf($"{Header}\na,17,8,40,225/45R17 94W XL\nb,17,8,-100,225/45R17 94W\nc,17,8.5\n", query: "?only=" + only);

        Assert.Equal(ids, string.Join(' ', rows[1..^1].Select(row => row[1])));
        Assert.StartsWith("inconsistent", rows[^1][11], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("good", "unknownWord")]
    [InlineData("pass,", "unknownWord")]
    [InlineData("Pass", "unknownWord")]
    [InlineData("pass, caution", "unknownWord")]
    [InlineData("", "required")]
    [InlineData("pass&only=fail", "repeatedParameter")]
    public async Task Another_word_of_only_is_refused(string only, string code)
    {
        using var form = BatchCalls.Form($"{Header}\n{Row}\n", BatchCalls.CarLine());
        using var response = await fixture.Client.PostAsync(new Uri($"{Calls.BatchCsv}?only={only}", UriKind.Relative), form);

        Assert.Equal(["only " + code], (await Problems.Read(response, ProblemTypes.InvalidRequest)).FaultsOf());
    }

    private async Task<(string? Code, string Message)> Fault(string table)
    {
        using var form = BatchCalls.Form(table, BatchCalls.CarLine());
        using var response = await fixture.Client.PostAsync(new Uri(Calls.BatchCsv, UriKind.Relative), form);
        var fault = Assert.Single((await Problems.Read(response, ProblemTypes.InvalidRequest)).GetProperty("errors").EnumerateArray());
        return (fault.GetProperty("code").GetString(), fault.GetProperty("message").GetString()!);
    }
}
