using SetupService.Domain.Answers;

namespace SetupService.Domain.Fitment;

/// <summary>
/// The results of one fitment check. A sheet is written again for each candidate, so that a batch of any length
/// allocates one; it belongs to one thread at a time.
/// </summary>
public sealed class CheckSheet
{
    private readonly CheckResult[] _results = new CheckResult[CheckIdSet.CheckCount];

    /// <summary>The checks that apply; the results of others mean nothing.</summary>
    public CheckIdSet Applicable { get; private set; }

    /// <summary>The checks that failed.</summary>
    public CheckIdSet Failed { get; private set; }

    /// <summary>The checks that came out as cautions.</summary>
    public CheckIdSet Cautioned { get; private set; }

    /// <summary>The checks that came out unknown.</summary>
    public CheckIdSet Unknown { get; private set; }

    /// <summary>The checks the verdict was made by: what failed, else what is unknown and required, else what is a caution; empty where all is well.</summary>
    public CheckIdSet DecidedBy { get; private set; }

    /// <summary>The gravest status among the checks that apply, an unknown counting only where it is required.</summary>
    public CheckStatus Verdict { get; private set; }

    /// <summary>The place with least room in the worst case; null where no room is known.</summary>
    public CheckId? Governing { get; private set; }

    /// <summary>The room at the governing place.</summary>
    public Margin? GoverningMargin => Governing is { } place ? _results[(int)place].Margin : null;

    /// <summary>One check's result.</summary>
    public ref readonly CheckResult this[CheckId id] => ref _results[(int)id];

    internal void Set(CheckId id, in CheckResult result) => _results[(int)id] = result;

    internal void Conclude(CheckIdSet applicable, CheckIdSet required)
    {
        Applicable = applicable;
        var failed = default(CheckIdSet);
        var unknown = default(CheckIdSet);
        var cautioned = default(CheckIdSet);
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            if (!applicable.Contains(id)) continue;
            switch (_results[(int)id].Status)
            {
                case CheckStatus.Fail: failed = failed.With(id); break;
                case CheckStatus.Unknown: unknown = unknown.With(id); break;
                case CheckStatus.Caution: cautioned = cautioned.With(id); break;
                default: break;
            }
        }

        (Failed, Cautioned, Unknown) = (failed, cautioned, unknown);
        Governing = Tightest(applicable);
        var missing = new CheckIdSet(unknown.Bits & required.Bits);
        (Verdict, DecidedBy) = failed.Count > 0 ? (CheckStatus.Fail, failed)
            : missing.Count > 0 ? (CheckStatus.Unknown, missing)
            : (cautioned.Count > 0 ? CheckStatus.Caution : CheckStatus.Pass, cautioned);
    }

    private CheckId? Tightest(CheckIdSet applicable)
    {
        CheckId? tightest = null;
        var leastMm = double.PositiveInfinity;
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            if (!applicable.Contains(id) || _results[(int)id].Margin is not { } margin || !(margin.WorstCaseMm < leastMm)) continue;
            leastMm = margin.WorstCaseMm;
            tightest = id;
        }

        return tightest;
    }
}
