using SetupService.Api.Tests.Comparison;

namespace SetupService.Api.Tests.Corpus;

/// <summary>
/// Sends the recorded requests again and holds the answers against those kept. With SETUP_SERVICE_WRITE_CORPUS=1 in the environment
/// the answers that differ are recorded anew instead, with SETUP_SERVICE_CORPUS_CALL only one call is played; README.md beside
/// this file tells more.
/// </summary>
public sealed class CorpusTests(CorpusService service) : IClassFixture<CorpusService>
{
    private static readonly bool IsWriting = Environment.GetEnvironmentVariable("SETUP_SERVICE_WRITE_CORPUS") == "1";

    private static readonly string? OnlyCall = Environment.GetEnvironmentVariable("SETUP_SERVICE_CORPUS_CALL");

    public static TheoryData<string> Calls() => [.. CorpusFile.Calls.Where(call => string.IsNullOrEmpty(OnlyCall) || call == OnlyCall)];

    [Theory]
    [MemberData(nameof(Calls))]
    public async Task The_service_answers_as_recorded(string call)
    {
        var kept = await CorpusFile.ReadAsync(call);
        var now = new CorpusEntry[kept.Count];
        await Parallel.ForAsync(0, kept.Count, async (i, _) => now[i] = await CorpusPlayer.PlayAsync(service.Client, kept[i]));

        var changed = kept.Zip(now, (before, after) => (before.Id, Differences: CorpusReport.Differences(before, after))).Where(one => one.Differences.Count > 0).ToList();
        if (IsWriting)
        {
            service.Report.Add(call, kept.Count, changed);
            var ids = changed.Select(one => one.Id).ToHashSet();
            if (ids.Count > 0)
                await CorpusFile.WriteAsync(call, kept.Zip(now, (before, after) => ids.Contains(before.Id) ? after : before));
            return;
        }

        Assert.True(changed.Count == 0, Told(call, kept.Count, changed));
    }

    /// <summary>So that no file is empty and no call slips out of the corpus.</summary>
    [Fact]
    public async Task The_corpus_is_large_and_holds_refusals_of_both_kinds()
    {
        List<CorpusEntry> all = [];
        foreach (var call in CorpusFile.Calls)
            all.AddRange(await CorpusFile.ReadAsync(call));

        Assert.True(all.Count >= 1000, $"{all.Count} recorded calls");
        Assert.True(all.Count(entry => entry.Status == 200) >= 700, "too few are answered");
        Assert.True(all.Count(entry => entry.Status == 400) >= 80, "too few are refused as invalid");
        Assert.True(all.Count(entry => entry.Status == 422) >= 20, "too few are refused as not computable");
        Assert.Equal(all.Count, all.Select(entry => entry.Id).Distinct().Count());
    }

    private static string Told(string call, int count, List<(string Id, List<AnswerDifference> Differences)> changed) =>
        $"{changed.Count} of {count} answers of {call} are not as recorded:\n"
        + string.Join('\n', changed.Take(10).Select(one => $"{one.Id}: {string.Join("; ", one.Differences.Take(4))}"));
}
