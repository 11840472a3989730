using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>
/// Room between the brake caliper and the inside of the wheel: from both outlines where they are known, else from the
/// smallest rim the car's papers allow.
/// </summary>
public static class BrakeCheck
{
    /// <summary>Judges the room over the caliper; mm by outlines, inches by the smallest rim.</summary>
    public static CheckResult Evaluate(AxleUnderCheck car, in Fitting candidate)
    {
        var caliper = car.Axle.Hub.CaliperProfile;
        var wheel = candidate.Wheel.InnerProfile;
        if (caliper.Count > 0 && wheel.Count > 0)
        {
            var gapMm = SmallestGap(caliper, wheel, candidate.Wheel.SpacerMm, out var covered);
            if (gapMm is { } nominalMm)
            {
                var result = CheckResult.Room(Budget(car, nominalMm).Margin, car.MinimumMarginMm);
                if (covered || result.Status == Answers.CheckStatus.Fail) return result;
            }

            return CheckResult.Unknown(Finding.OutlineTooShort) with { Value = gapMm };
        }

        return car.Axle.Hub.MinimumRimDiameterIn is { } smallestIn
            ? CheckResult.Of(candidate.Wheel.RimDiameterIn >= smallestIn, candidate.Wheel.RimDiameterIn, smallestIn) with { Finding = Finding.FromMinimumRim }
            : CheckResult.Unknown(Finding.ValueMissing);
    }

    /// <summary>Two outlines were measured, each with its error.</summary>
    internal static ClearanceBudget Budget(AxleUnderCheck car, double gapMm) => new()
    {
        GapMm = gapMm,
        CandidateMm = 0,
        ProductionMm = car.MeasuringErrorMm,
        MeasuringMm = car.MeasuringErrorMm,
    };

    /// <summary>
    /// The smallest difference of radius along the caliper, mm; null where the outlines share no station. Both are
    /// straight between their points, so the smallest stands at a point of one of them.
    /// </summary>
    internal static double? SmallestGap(
        IReadOnlyList<ProfilePoint> caliper, IReadOnlyList<ProfilePoint> wheel, double spacerMm, out bool covered)
    {
        double? smallestMm = null;
        covered = true;
        for (var i = 0; i < caliper.Count; i++)
        {
            var point = caliper[i];

            // The wheel's stations start at its mounting face, which the spacer moves outboard.
            if (RadiusAt(wheel, point.StationMm - spacerMm, largest: false) is { } wheelMm) Take(wheelMm - point.RadiusMm);
            else covered = false;
        }

        for (var i = 0; i < wheel.Count; i++)
        {
            var point = wheel[i];
            if (RadiusAt(caliper, point.StationMm + spacerMm, largest: true) is { } caliperMm) Take(point.RadiusMm - caliperMm);
        }

        return smallestMm;

        void Take(double gapMm) => smallestMm = smallestMm is { } least ? Math.Min(least, gapMm) : gapMm;
    }

    /// <summary>
    /// The radius of an outline at a station, mm; null beyond its ends. Where it steps, with two points at one station, the one
    /// that leaves less room: the largest of a caliper, the smallest of a wheel.
    /// </summary>
    private static double? RadiusAt(IReadOnlyList<ProfilePoint> outline, double stationMm, bool largest)
    {
        double? radiusMm = null;
        for (var i = 0; i < outline.Count; i++)
        {
            if (outline[i].StationMm == stationMm)
            {
                Take(outline[i].RadiusMm);
            }
            else if (i > 0 && outline[i - 1].StationMm < stationMm && stationMm < outline[i].StationMm)
            {
                var (from, to) = (outline[i - 1], outline[i]);
                Take(from.RadiusMm + ((stationMm - from.StationMm) / (to.StationMm - from.StationMm) * (to.RadiusMm - from.RadiusMm)));
            }
        }

        return radiusMm;

        void Take(double mm) => radiusMm = radiusMm is not { } known ? mm : largest ? Math.Max(known, mm) : Math.Min(known, mm);
    }
}
