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
    public static WindowAnswer ToAnswer(FitmentContext car, Tyre tyre, double[] rimWidthsIn, UnitSystem units) => new()
    {
        Windows = Array.ConvertAll(rimWidthsIn, width => Part(tyre, OffsetWindow.Compute(car, tyre, width))),
        Method = "fitment-window",
        Edition = Edition.Current,
        Next = NextCalls.AfterWindow,
        Assumptions = AssumptionResponse.From(FitmentAssumptions.ForWindow(car, tyre, units)),
        Cautions = CautionResponse.From(FitmentCautions.ForWindow(car, tyre, units)),
    };

    private static WindowResponse Part(Tyre tyre, OffsetWindow window)
    {
        Wheel wheel = new() { RimDiameterIn = tyre.Marking.RimDiameterIn, RimWidthIn = window.RimWidthIn, OffsetMm = 0 };
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
