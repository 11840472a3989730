using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>
/// What suspension travel uses of the measured gaps: nothing where the measurement allowed for it already; else over the tread the upward
/// travel, and sideways the movement of the wheel centre and its change of camber. Computed once for a car.
/// </summary>
internal sealed record TravelAllowance
{
    /// <summary>Share of the wheel's sideways travel by which it comes nearer to an arm that joins body and upright, and so moves half as far: our choice, no source.</summary>
    public const double ArmShare = 0.5;

    /// <summary>Used of the gap over the tread, mm, at least 0; null where the bump travel is not known.</summary>
    public double? RadialMm { get; private init; }

    /// <summary>Used of the gap inboard; null where the path is not known.</summary>
    public SideTravel? Inboard { get; private init; }

    /// <summary>Used of the gap inboard at full lock; null where the path is not known.</summary>
    public SideTravel? FullLock { get; private init; }

    /// <summary>Used of the gap to the arch; null where the path is not known.</summary>
    public SideTravel? Outboard { get; private init; }

    /// <summary>What errors of the points leave open of the three; null where the points are exact, travel is not counted, or a corner with one coordinate moved does not get there.</summary>
    public (SideTravelError Inboard, SideTravelError FullLock, SideTravelError Outboard)? Errors { get; private init; }

    /// <summary>How far up the wheel goes; null where gaps have the travel in them, or the way to the stop is not known.</summary>
    public UpwardTravel? Upward { get; private init; }

    /// <summary>The wheel's path; null where it was not asked for.</summary>
    public WheelTravelPath? Path { get; private init; }

    /// <summary>What is missing where something is null.</summary>
    public UnknownReason Missing { get; private init; }

    /// <summary>The allowance of an axle.</summary>
    /// <param name="axle">The axle.</param>
    /// <param name="loadedRadiusMm">Height of the wheel centre above the ground, mm; null where it is not known.</param>
    public static TravelAllowance Compute(Axle axle, double? loadedRadiusMm)
    {
        var gaps = axle.Clearance;
        if (gaps.MeasuredAt is not ClearanceMeasuredAt.RideHeight)
        {
            return new() { RadialMm = 0, Inboard = SideTravel.None, FullLock = SideTravel.None, Outboard = SideTravel.None };
        }

        if (UpwardTravel.Compute(axle) is not { } upward) return new() { Missing = UnknownReason.BumpTravelMissing };
        var path = WheelTravelPath.Over(axle, upward.TotalMm);
        var known = new TravelAllowance { RadialMm = upward.TotalMm, Upward = upward, Path = path, Missing = path.Missing };
        if (path.Missing != UnknownReason.Computed) return IsOnStrut(axle) ? known with { Inboard = SideTravel.None } : known;

        var (inboard, fullLock, outboard) = Sides(axle, path, loadedRadiusMm);
        return known with { Inboard = inboard, FullLock = fullLock, Outboard = outboard, Errors = ErrorsOf(axle, upward, loadedRadiusMm) };
    }

    private static (SideTravel Inboard, SideTravel FullLock, SideTravel Outboard) Sides(Axle axle, WheelTravelPath path, double? loadedRadiusMm)
    {
        var gaps = axle.Clearance;
        var toBody = SideTravel.Inboard(path.Places, gaps.InboardHeightMm - loadedRadiusMm);
        return (
            IsOnStrut(axle) ? SideTravel.None : gaps.InboardTo is InboardNeighbour.Body or null ? toBody : toBody.Share(ArmShare),

            // What is nearest at lock, and how high, is not said.
            SideTravel.Inboard(path.Places, null),
            SideTravel.Outboard(path.Places));
    }

    private static (SideTravelError Inboard, SideTravelError FullLock, SideTravelError Outboard)? ErrorsOf(Axle axle, in UpwardTravel upward, double? loadedRadiusMm)
    {
        if (axle.Suspension.PointErrorMm == 0) return null;
        var (inboard, fullLock, outboard) = (new List<(SideTravel, SideTravel)>(), new List<(SideTravel, SideTravel)>(), new List<(SideTravel, SideTravel)>());
        foreach (var (moreModel, lessModel) in axle.Suspension.Moved())
        {
            var (more, less) = (axle with { Suspension = moreModel }, axle with { Suspension = lessModel });
            var (morePath, lessPath) = (WheelTravelPath.Over(more, upward.TotalMm), WheelTravelPath.Over(less, upward.TotalMm));
            if (morePath.Missing != UnknownReason.Computed || lessPath.Missing != UnknownReason.Computed) return null;
            var (moreSides, lessSides) = (Sides(more, morePath, loadedRadiusMm), Sides(less, lessPath, loadedRadiusMm));
            inboard.Add((moreSides.Inboard, lessSides.Inboard));
            fullLock.Add((moreSides.FullLock, lessSides.FullLock));
            outboard.Add((moreSides.Outboard, lessSides.Outboard));
        }

        var share = axle.Suspension.Deviation(1, 0);
        return (new([.. inboard], share), new([.. fullLock], share), new([.. outboard], share));
    }

    /// <summary>True when the gap inboard is to a strut that moves with the upright, so that travel uses nothing of it.</summary>
    private static bool IsOnStrut(Axle axle) => axle is
    {
        Clearance.InboardTo: InboardNeighbour.Strut,
        Suspension.Layout: null or SuspensionLayout.MacPhersonStrut or SuspensionLayout.Measured,
    };
}

/// <summary>
/// How far the wheel goes up from ride height: to the first touch of the bump stop, and on through the stop as far as it can be
/// compressed, by the stop's own motion ratio.
/// </summary>
internal readonly record struct UpwardTravel
{
    /// <summary>Share of its length by which a bump stop of foam or rubber can be compressed: common practice, no source.</summary>
    public const double CompressibleShare = 0.6;

    /// <summary>Length of a bump stop nobody measured, mm: common practice, no source.</summary>
    public const double TypicalLengthMm = 45;

    /// <summary>Travel to the first touch, mm.</summary>
    public double ToStopMm { get; private init; }

    /// <summary>Compression of the stop itself, mm.</summary>
    public double CompressionMm { get; private init; }

    /// <summary>Compression of the stop by wheel travel.</summary>
    public double MotionRatio { get; private init; }

    /// <summary>True where the length is the typical one.</summary>
    public bool IsLengthAssumed { get; private init; }

    /// <summary>True where the compressed length follows from the usual share.</summary>
    public bool IsShareAssumed { get; private init; }

    /// <summary>True where the motion ratio is the damper's or a typical one.</summary>
    public bool IsRatioAssumed { get; private init; }

    /// <summary>Travel from ride height to the fully compressed stop, mm of wheel travel.</summary>
    public double TotalMm => ToStopMm + (CompressionMm / MotionRatio);

    /// <summary>The upward travel of an axle; null where the travel to the stop is not known.</summary>
    public static UpwardTravel? Compute(Axle axle)
    {
        if (axle.BumpTravelMm is not { } toStopMm) return null;
        var stop = axle.BumpStop;
        var lengthMm = stop.LengthMm ?? TypicalLengthMm;
        return new UpwardTravel
        {
            ToStopMm = toStopMm,
            CompressionMm = stop.CompressedLengthMm is { } leftMm && stop.LengthMm is not null ? Math.Max(0, lengthMm - leftMm) : CompressibleShare * lengthMm,
            MotionRatio = stop.MotionRatio ?? axle.Damper.MotionRatio ?? TypicalMotionRatio(axle.Suspension.Layout),
            IsLengthAssumed = stop.LengthMm is null,
            IsShareAssumed = stop.CompressedLengthMm is null || stop.LengthMm is null,
            IsRatioAssumed = stop.MotionRatio is null,
        };
    }

    /// <summary>Damper travel by wheel travel where nobody stated it: common practice, no source.</summary>
    private static double TypicalMotionRatio(SuspensionLayout? layout) => layout switch
    {
        SuspensionLayout.MacPhersonStrut => 0.95,
        SuspensionLayout.DoubleWishbone or SuspensionLayout.FiveLink => 0.65,
        SuspensionLayout.SemiTrailingArm => 0.75,
        SuspensionLayout.TwistBeam => 0.9,
        _ => 0.85,
    };
}
