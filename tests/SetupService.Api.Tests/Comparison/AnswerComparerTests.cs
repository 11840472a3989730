using System.Text.Json.Nodes;

namespace SetupService.Api.Tests.Comparison;

/// <summary>The comparer forgives the last digit of another processor and nothing else.</summary>
public sealed class AnswerComparerTests
{
    private const string Kept =
        """{ "verdict": "pass", "isSafe": true, "gapMm": 12.3456789, "none": null, "list": [1, 2], "text": "The gap is 12.3 mm at 1 g.", "marking": "225/45R17 91W" }""";

    [Theory]
    [InlineData("12.3456789", "12.3456791")] // 1.6e-8 of its size
    [InlineData("12.3 mm", "12.4 mm")] // one in the last digit printed
    [InlineData("\"none\": null, \"list\": [1, 2]", "\"list\": [1, 2.00000005], \"none\": null")] // the order of members; 5e-8
    public void What_another_processor_may_do_is_no_difference(string kept, string now) => Assert.Empty(Compare(kept, now));

    [Theory]
    [InlineData("12.3456789", "12.3456901", "/gapMm")] // 9e-7 of its size
    [InlineData("12.3456789", "\"12.3456789\"", "/gapMm")]
    [InlineData("12.3456789", "null", "/gapMm")]
    [InlineData("\"pass\"", "\"fail\"", "/verdict")]
    [InlineData("true", "false", "/isSafe")]
    [InlineData("\"none\": null, ", "", "/none")]
    [InlineData("\"none\": null", "\"none\": null, \"more\": 1", "/more")]
    [InlineData("\"none\": null", "\"none\": 0", "/none")]
    [InlineData("[1, 2]", "[1, 2, 3]", "/list/2")]
    [InlineData("[1, 2]", "[2, 1]", "/list/0")]
    [InlineData("12.3 mm", "12.5 mm", "/text")]
    [InlineData("12.3 mm", "-12.3 mm", "/text")]
    [InlineData("The gap", "The room", "/text")]
    [InlineData("91W", "92W", "/marking")] // one word and a number: no prose, so exact
    public void What_a_caller_could_notice_is_one(string kept, string now, string path) => Assert.Contains(Compare(kept, now), one => one.Path == path);

    [Fact]
    public void A_number_says_how_far_it_moved()
    {
        var difference = Assert.Single(Compare("12.3456789", "12.4456789"));

        Assert.Equal(DifferenceKind.Number, difference.Kind);
        Assert.Equal(0.1, difference.Amount, 1e-9);
    }

    [Theory]
    [InlineData("<path d=\"M 1.25,2.5\"/>\n", "<path d=\"M 1.26,2.5\"/>\n", true)]
    [InlineData("<path d=\"M 1.25,2.5\"/>\n", "<path d=\"M 1.27,2.5\"/>\n", false)]
    [InlineData("<path d=\"M 1.25,2.5\"/>\n", "<path d=\"L 1.25,2.5\"/>\n", false)]
    [InlineData("a,b\n1.23456789012,x\n", "a,b\n1.23456789999,x\n", true)]
    [InlineData("a,b\n1.23456789012,x\n", "a,b\n1.2345699,x\n", false)]
    [InlineData("a,b\n1,x\n", "a,b\n1,x\n2,y\n", false)]
    public void A_drawing_and_a_table_are_compared_word_by_word(string kept, string now, bool agree) =>
        Assert.Equal(agree, AnswerComparer.CompareTexts(kept, now).Count == 0);

    private static List<AnswerDifference> Compare(string kept, string now)
    {
        Assert.Contains(kept, Kept, StringComparison.Ordinal);
        return AnswerComparer.Compare(JsonNode.Parse(Kept), JsonNode.Parse(Kept.Replace(kept, now, StringComparison.Ordinal)));
    }
}
