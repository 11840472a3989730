using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>
/// What suspension travel still takes of gaps: nothing where the person allowed for it while measuring; else
/// the bump travel over the tread, and the lean the wheel takes on the way there, by the measured camber curve or by the points of its
/// suspension.
/// </summary>
internal readonly record struct TravelAllowance
{
    /// <summary>Taken over the tread, mm; null where the bump travel is not known.</summary>
    public double? RadialMm { get; private init; }

    /// <summary>Taken inboard per mm of tyre radius; null where travel or lean are not known.</summary>
    public double? InboardPerRadius { get; private init; }

    /// <summary>Taken outboard per mm of tyre radius; null where travel or lean are not known.</summary>
    public double? OutboardPerRadius { get; private init; }

    /// <summary>Whether the camber curve had to be carried on beyond its readings.</summary>
    public bool IsExtrapolated { get; private init; }

    /// <summary>What the points of the suspension tell of the lean; null where they were not asked.</summary>
    public CornerLean? Corner { get; private init; }

    /// <summary>What is missing where something is null.</summary>
    public Finding Missing { get; private init; }

    public static TravelAllowance Of(Axle axle)
    {
        if (axle.Clearance.MeasuredAt is not ClearanceMeasuredAt.RideHeight)
        {
            return new() { RadialMm = 0, InboardPerRadius = 0, OutboardPerRadius = 0 };
        }

        if (axle.BumpTravelMm is not { } bumpMm) return new() { Missing = Finding.BumpTravelMissing };
        return axle.CamberCurve is { } curve ? FromCurve(curve, bumpMm) : FromPath(CornerLean.Of(axle, bumpMm), bumpMm);
    }

    private static TravelAllowance FromCurve(CamberCurve curve, double bumpMm)
    {
        if (curve.ExtremesDeg(bumpMm) is not { } leanDeg)
        {
            return new() { RadialMm = bumpMm, Missing = Finding.CamberCurveMissing };
        }

        return new()
        {
            RadialMm = bumpMm,
            IsExtrapolated = !curve.Holds(0) || !curve.Holds(bumpMm),
            InboardPerRadius = PerRadius(leanDeg.Inboard),
            OutboardPerRadius = PerRadius(leanDeg.Outboard),
        };
    }

    private static TravelAllowance FromPath(CornerLean corner, double bumpMm) => corner.Extremes is not { } leanDeg
        ? new() { RadialMm = bumpMm, Corner = corner, Missing = corner.Missing }
        : new()
        {
            RadialMm = bumpMm,
            Corner = corner,
            InboardPerRadius = PerRadius(leanDeg.InboardDeg),
            OutboardPerRadius = PerRadius(leanDeg.OutboardDeg),
        };

    /// <summary>A wheel cannot lean over more than flat, whatever two readings extrapolate to.</summary>
    private static double PerRadius(double leanDeg) => Math.Sin(double.DegreesToRadians(Math.Min(leanDeg, 90)));
}
