using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Answers;

namespace SetupService.Api.Fitment.Batch;

/// <summary>The verdicts whose answers are sent; everything is counted. Problems are always sent.</summary>
internal readonly struct VerdictFilter
{
    /// <summary><c>only</c>: which verdicts are sent.</summary>
    public static WordsParameter Parameter { get; } = new(
        "only", "Verdicts to send, with commas between them; all where left out. Problems are always sent and everything is counted.", EnumNames<CheckStatus>.List);

    private readonly uint _left;

    private VerdictFilter(IReadOnlyList<CheckStatus> kept)
    {
        _left = ~0u;
        foreach (var verdict in kept)
            _left &= ~(1u << (int)verdict);
    }

    /// <summary>The filter a request asks for.</summary>
    public static VerdictFilter From(QueryReader query) => query.Words<CheckStatus>(Parameter) is { } words ? new(words) : default;

    /// <summary>True when answers of this verdict are sent.</summary>
    public bool Keeps(CheckStatus verdict) => (_left & (1u << (int)verdict)) == 0;
}

/// <summary>Counts verdicts.</summary>
internal sealed class VerdictCounter
{
    private readonly long[] _counts = new long[EnumNames<CheckStatus>.List.Count];
    private readonly long[] _metered = new long[EnumNames<CheckStatus>.List.Count];

    /// <summary>Number of verdicts counted.</summary>
    public long Total => _counts.Sum();

    /// <summary>Counts one.</summary>
    public void Count(CheckStatus verdict) => _counts[(int)verdict]++;

    /// <summary>Adds what was counted since the last call to the meter.</summary>
    public void Meter()
    {
        for (var i = 0; i < _counts.Length; i++)
        {
            ServiceMeter.CountVerdicts(EnumNames<CheckStatus>.List[i], _counts[i] - _metered[i]);
            _metered[i] = _counts[i];
        }
    }

    /// <summary>The counts so far.</summary>
    public VerdictCounts ToCounts() => new()
    {
        PassCount = _counts[(int)CheckStatus.Pass],
        CautionCount = _counts[(int)CheckStatus.Caution],
        FailCount = _counts[(int)CheckStatus.Fail],
        UnknownCount = _counts[(int)CheckStatus.Unknown],
    };
}
