using SetupService.Domain.Fitment.Checks;

namespace SetupService.Domain.Fitment;

/// <summary>Checks a candidate wheel and tyre against an axle: the kernel that single calls and batches share.</summary>
public static class FitmentCheck
{
    /// <summary>
    /// Writes the result of every check that applies into <paramref name="sheet"/>. Allocates nothing; what is
    /// not known about the car or the candidate makes that check unknown, never a guess.
    /// </summary>
    public static void Evaluate(FitmentContext car, in Fitting candidate, CheckSheet sheet)
    {
        if (candidate.Tyre.Marking.HasDimensions)
        {
            var envelope = Envelope.Compute(candidate);
            for (var place = CheckId.InboardClearance; place <= CheckId.SpringSeatClearance; place++)
            {
                sheet.Set(place, ClearanceChecks.Evaluate(car, envelope, place));
            }

            sheet.Set(CheckId.AxleDiameterMatch, RollingChecks.AxleMatch(car, envelope));
            sheet.Set(CheckId.OverallDiameter, RollingChecks.Diameter(car, envelope));
            sheet.Set(CheckId.ArchCover, CoverCheck.Evaluate(car, envelope));
        }
        else
        {
            SetWithoutSize(sheet);
        }

        sheet.Set(CheckId.RimDiameter, RimChecks.Diameter(candidate));
        sheet.Set(CheckId.RimWidth, RimChecks.Width(candidate));
        sheet.Set(CheckId.LoadCapacity, LoadChecks.Capacity(car, candidate));
        sheet.Set(CheckId.SpeedRating, LoadChecks.Speed(car, candidate));
        sheet.Set(CheckId.WheelLoadRating, LoadChecks.Wheel(car, candidate));
        sheet.Set(CheckId.BoltCircle, HubChecks.BoltCircle(car, candidate));
        sheet.Set(CheckId.CentreBore, HubChecks.CentreBore(car, candidate));
        sheet.Set(CheckId.Fastener, HubChecks.Fastener(car, candidate));
        sheet.Set(CheckId.BrakeClearance, BrakeCheck.Evaluate(car, candidate));
        sheet.Conclude(car.Applicable, car.RequiredFor(candidate));
    }

    private static void SetWithoutSize(CheckSheet sheet)
    {
        var unknown = CheckResult.Unknown(UnknownReason.TyreSizeUnknown);
        for (var place = CheckId.InboardClearance; place <= CheckId.SpringSeatClearance; place++)
        {
            sheet.Set(place, unknown);
        }

        sheet.Set(CheckId.AxleDiameterMatch, unknown);
        sheet.Set(CheckId.OverallDiameter, unknown);
        sheet.Set(CheckId.ArchCover, unknown);
    }
}
