using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using SetupService.Api.Tests.Corpus;
using SetupService.Api.Tests.Drawings;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>With units=us nothing a person reads of the fitment, tyre and wheel calls is in a metric unit: every recorded request is sent anew and all its texts are walked over.</summary>
public sealed partial class UsUnitsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // The unit of the number beside it, which keeps the unit of its name; what was sent; what is wrong with members, whose limits are in the unit of their name.
    private static readonly string[] NoText = ["unit", "marking", "standardMarking", "problem"];

    // A catalogue's lines have no texts.
    public static TheoryData<string> Recorded() => [.. CorpusFile.Calls.Where(call => (call.StartsWith("fitment-", StringComparison.Ordinal) && call != "fitment-catalogue") || call is "tyre-decode" or "wheel-decode")];

    [Theory]
    [MemberData(nameof(Recorded))]
    public async Task No_text_is_metric(string call)
    {
        var (answers, texts) = (0, 0);
        foreach (var entry in (await CorpusFile.ReadAsync(call)).Where(entry => entry.Status == (int)HttpStatusCode.OK))
        {
            var sent = entry.Path.Replace("?units=metric", "?units=us", StringComparison.Ordinal);
            sent = sent.Contains("units=us", StringComparison.Ordinal) ? sent : $"{sent}{(sent.Contains('?', StringComparison.Ordinal) ? '&' : '?')}units=us";
            var answer = await CorpusPlayer.PlayAsync(fixture.Client, entry with { Path = sent });
            Assert.True(answer.Status == (int)HttpStatusCode.OK, $"{entry.Id}: {answer.Answer}");
            answers++;
            foreach (var text in Texts(answer.AnswerType!, answer.Answer!))
            {
                Assert.False(Metric().IsMatch(text), $"{entry.Id}: {text}");
                texts++;
            }
        }

        Assert.True(answers >= 5 && texts > answers, $"{answers} answers, {texts} texts.");
    }

    [Theory]
    [InlineData("fitment-check")]
    public async Task The_printed_report_is_as_american(string call)
    {
        foreach (var entry in (await CorpusFile.ReadAsync(call)).Where(entry => entry.Status == (int)HttpStatusCode.OK).Take(40))
        {
            var page = await CorpusPlayer.PlayAsync(fixture.Client, entry with { Path = "/v1/fitment/check/report?units=us" });
            Assert.All(Tags().Split(page.Answer!.GetValue<string>()), text => Assert.False(Metric().IsMatch(text), $"{entry.Id}: {text}"));
        }
    }

    // 4.5 in is 114.3 mm exactly; 108 mm is 4.252 in. The trade knows a circle by two decimals of an inch, and by what is stamped.
    [Theory]
    [InlineData("5x114.3", "5x4.5 in (5x114.3)")]
    [InlineData("5x108", "5x4.25 in (5x108)")]
    [InlineData("4x100/4x108", "4x3.94 in or 4x4.25 in (4x100/4x108)")]
    public async Task A_bolt_circle_is_named_in_inches_and_as_stamped(string stamped, string us)
    {
        var body = Requests.Check().With("/candidate/wheel/boltCircle", stamped);
        var check = (await fixture.Client.AnswerOf(Calls.Check + "?units=us", body)).CheckOf("boltCircle");

        Assert.Equal(us, check.GetProperty("valueText").GetString());
        Assert.Contains($"bolt circle of {us}", check.GetProperty("explanation").GetString(), StringComparison.Ordinal);
        Assert.Equal(stamped, (await fixture.Client.AnswerOf(Calls.Check, body)).CheckOf("boltCircle").GetProperty("valueText").GetString());
    }

    [Theory]
    [InlineData("metric", "again after 40 to 80 km (")]
    [InlineData("us", "again after 25 to 50 miles (")]
    public async Task Fasteners_are_checked_again_after_a_distance_the_driver_can_read_off(string units, string distance)
    {
        var answer = await fixture.Client.AnswerOf($"{Calls.Check}?units={units}", Requests.Check());

        Assert.Contains(answer.GetProperty("cautions").EnumerateArray(), caution => caution.GetProperty("text").GetString()!.Contains(distance, StringComparison.Ordinal));
    }

    private static IEnumerable<string> Texts(string type, JsonNode answer) => type switch
    {
        "image/svg+xml" => new SvgPicture(answer.GetValue<string>()).AllText.Split('\n'),
        _ when answer is JsonValue text => text.GetValue<string>().Split('\n'),
        _ => Strings(answer),
    };

    private static IEnumerable<string> Strings(JsonNode? node) => node switch
    {
        JsonObject members => members.Where(member => !NoText.Contains(member.Key)).SelectMany(member => Strings(member.Value)),
        JsonArray items => items.SelectMany(Strings),
        JsonValue value when value.GetValueKind() == System.Text.Json.JsonValueKind.String => [value.GetValue<string>()],
        _ => [],
    };

    [GeneratedRegex(@"\d\s?(mm|cm|m|km|km/h|kPa|bar|kg|N|Nm|N/mm|°C)\b|[mM]illimet|[kK]ilomet|[kK]ilogram|[kK]ilopascal|\bmetres?\b")]
    private static partial Regex Metric();

    [GeneratedRegex(@"<style>[^<]*</style>|<[^>]*>")]
    private static partial Regex Tags();
}
