using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tyres;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Fitment;

/// <summary>The 422 of calls that have nothing to tell of a tyre whose size has no rule for its height.</summary>
internal static class SizeProblems
{
    /// <summary>Names every tyre of a request whose dimensions are not known; at least one of them is.</summary>
    public static Problem NotKnown(params ReadOnlySpan<(string Place, Tyre Tyre)> tyres)
    {
        List<Fault> faults = [];
        foreach (var (place, tyre) in tyres)
        {
            if (!tyre.Marking.HasDimensions)
                faults.Add(Fault.At($"{place}/tyre/marking", FaultCodes.Undetermined, $"{TyreAnswers.SizeWithoutRule(tyre.Marking)}. The check (/v1/fitment/check) tells what does not go by it."));
        }

        return Problem.NotComputable(faults[0].Message, faults);
    }
}
