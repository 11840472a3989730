using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

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

    /// <summary>All of it, mm of wheel travel.</summary>
    public double TotalMm => ToStopMm + (CompressionMm / MotionRatio);

    /// <summary>The upward travel of an axle; null where the travel to the stop is not known.</summary>
    public static UpwardTravel? Of(Axle axle)
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
