using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Tyres;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Fitment;

/// <summary>Works out and words the windows of a request.</summary>
internal static class WindowAnswers
{
    public static WindowAnswer Of(AxleUnderCheck car, Tyre tyre, double[] rimWidthsIn) => new()
    {
        Windows = Array.ConvertAll(rimWidthsIn, width => Part(tyre, OffsetWindow.Of(car, tyre, width))),
        Method = "fitment-window",
        Edition = Edition.Current,
        Assumptions = AssumptionResponse.Of(FitmentAssumptions.ForWindow(car, tyre)),
        Cautions = CautionResponse.Of(FitmentCautions.ForWindow(car, tyre)),
    };

    private static WindowPart Part(Tyre tyre, OffsetWindow window)
    {
        Wheel wheel = new() { RimDiameterIn = tyre.Marking.RimDiameterIn, RimWidthIn = window.RimWidthIn, OffsetMm = 0 };
        return new WindowPart
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
