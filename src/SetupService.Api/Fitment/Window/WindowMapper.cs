using SetupService.Api.Http;
using SetupService.Api.Http.Shared;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Fitment.Window;

/// <summary>Maps a question for offsets to domain values, and the windows to the answer.</summary>
internal static class WindowMapper
{
    // An offset at which a wheel needs more room on that side than whatever is fitted now, mm.
    private const double FarMm = 100;

    /// <summary>The car and tyre of a question for offsets.</summary>
    public static MapResult<(Vehicle Vehicle, Tyre Tyre)> Map(WindowRequest request)
    {
        Refusal? refusal = null;
        var vehicle = VehicleMapper.MapForFitment(request.Vehicle).Take("vehicle", ref refusal);
        var tyre = TyreMapper.Map(request.Tyre).Take("tyre", ref refusal);
        if (refusal is not null)
            return refusal;
        return (vehicle!, tyre!);
    }

    /// <summary>The answer, one window a rim width.</summary>
    public static WindowAnswer ToAnswer(FitmentContext car, Tyre tyre, double[] rimWidthsIn, UnitSystem units)
    {
        var windows = Array.ConvertAll(rimWidthsIn, width => OffsetWindow.Compute(car, tyre, width));
        return new()
        {
            Windows = Array.ConvertAll(windows, window => Part(tyre, window)),
            Unknown = [.. Gaps(car, tyre, windows, units)],
            Method = "fitment-window",
            Edition = Edition.Current,
            Next = NextCalls.AfterWindow,
            Assumptions = AssumptionResponse.From(FitmentAssumptions.ForWindow(car, tyre, units)),
            Cautions = CautionResponse.From(FitmentCautions.ForWindow(car, tyre, units)),
        };
    }

    /// <summary>The ends that no window has for want of an input, each as the check of that place words it.</summary>
    private static IEnumerable<UnknownResponse> Gaps(FitmentContext car, Tyre tyre, OffsetWindow[] windows, UnitSystem units)
    {
        foreach (var (id, end, farMm, isMissing) in new (CheckId, string, double, Predicate<OffsetWindow>)[]
        {
            (CheckId.OutboardClearance, "offsetMm/from", -FarMm, window => window.FromOffsetMm is null), (CheckId.InboardClearance, "offsetMm/to", FarMm, window => window.ToOffsetMm is null),
        })
        {
            var fitting = new Fitting(AtZero(tyre, windows[0].RimWidthIn) with { OffsetMm = farMm }, tyre);
            var sheet = new CheckSheet();
            FitmentCheck.Evaluate(car, fitting, sheet);
            if (!Array.Exists(windows, window => window.Status != WindowStatus.Fail && isMissing(window)) || sheet[id].Status != CheckStatus.Unknown) continue;

            // What is missing, without the room that a wheel so far out or in would take.
            var reason = CheckWords.Explanation(car, fitting, id, sheet[id], units);
            var missing = reason.IndexOf(". ", StringComparison.Ordinal) is var stop and > 0 ? reason[..(stop + 1)] : reason;
            yield return UnknownResponse.Create(end, missing, [.. UnknownNeeds.Find(car, fitting, id, sheet[id]).Select(need => need.Replace("/candidate/tyre", "/tyre", StringComparison.Ordinal))]);
        }
    }

    private static Wheel AtZero(Tyre tyre, double rimWidthIn) => new() { RimDiameterIn = tyre.Marking.RimDiameterIn, RimWidthIn = rimWidthIn, OffsetMm = 0 };

    private static WindowResponse Part(Tyre tyre, OffsetWindow window)
    {
        var wheel = AtZero(tyre, window.RimWidthIn);
        return new WindowResponse
        {
            RimWidthIn = window.RimWidthIn,
            Status = window.Status,
            OffsetMm = new OffsetRange { From = window.FromOffsetMm, To = window.ToOffsetMm },
            LimitedBy = new WindowLimits { From = window.FromLimitedBy, To = window.ToLimitedBy },
            BlockedBy = window.BlockedBy,
            RimWidthStatus = RimChecks.Width(new Fitting(wheel, tyre)).Status,
        };
    }
}
