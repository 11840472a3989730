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

    /// <summary>The checks that came out unknown.</summary>
    public CheckIdSet Unknown { get; private set; }

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
        var anyCaution = false;
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            if (!applicable.Contains(id)) continue;
            switch (_results[(int)id].Status)
            {
                case CheckStatus.Fail: failed = failed.With(id); break;
                case CheckStatus.Unknown: unknown = unknown.With(id); break;
                case CheckStatus.Caution: anyCaution = true; break;
                default: break;
            }
        }

        Failed = failed;
        Unknown = unknown;
        Governing = Tightest(applicable);
        if (failed.Count > 0) Verdict = CheckStatus.Fail;
        else if ((unknown.Bits & required.Bits) != 0) Verdict = CheckStatus.Unknown;
        else Verdict = anyCaution ? CheckStatus.Caution : CheckStatus.Pass;
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
