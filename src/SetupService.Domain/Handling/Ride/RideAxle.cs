namespace SetupService.Domain.Handling.Ride;

/// <summary>How one axle rides: springs, tyres and dampers of one of its corners, both sides alike. Method page: docs/methods/ride.</summary>
public sealed record RideAxle
{
    /// <summary>Sprung mass on one corner, kg.</summary>
    public required double SprungMassKg { get; init; }

    /// <summary>Spring travel by wheel travel at ride height.</summary>
    public required double MotionRatio { get; init; }

    /// <summary>Force in the spring at rest, N.</summary>
    public required double SpringForceN { get; init; }

    /// <summary>Rate of the spring at the wheel, N/mm, with what a changing motion ratio adds.</summary>
    public required double WheelRateNPerMm { get; init; }

    /// <summary>Vertical rate of the tyre, N/mm.</summary>
    public required double TyreRateNPerMm { get; init; }

    /// <summary>Wheel rate and tyre in series, N/mm.</summary>
    public double RideRateNPerMm => WheelRateNPerMm * TyreRateNPerMm / (WheelRateNPerMm + TyreRateNPerMm);

    /// <summary>Frequency of the sprung mass on spring and tyre in series, Hz, undamped.</summary>
    public double RideFrequencyHz => Frequency(RideRateNPerMm, SprungMassKg);

    /// <summary>Frequency of the sprung mass on the spring alone, Hz, undamped.</summary>
    public double SpringFrequencyHz => Frequency(WheelRateNPerMm, SprungMassKg);

    /// <summary>Frequency of the unsprung mass between spring and tyre, Hz, undamped.</summary>
    public required double WheelHopFrequencyHz { get; init; }

    /// <summary>How far the spring lets the wheel up under its sprung weight, mm: weight by wheel rate.</summary>
    public double StaticDeflectionMm => SprungMassKg * Cars.HandlingCar.StandardGravity / WheelRateNPerMm;

    /// <summary>Damping at the wheel that just keeps the sprung mass from swinging on the spring, N s/m.</summary>
    public double CriticalDampingNsPerM => 2 * Math.Sqrt(1000 * WheelRateNPerMm * SprungMassKg);

    /// <summary>Damping at the wheel in bump, N s/m; null where the damper is not known.</summary>
    public required double? BumpDampingNsPerM { get; init; }

    /// <summary>Damping at the wheel in rebound, N s/m; null where the damper is not known.</summary>
    public required double? ReboundDampingNsPerM { get; init; }

    /// <summary>Damping ratio in bump.</summary>
    public double? BumpRatio => BumpDampingNsPerM / CriticalDampingNsPerM;

    /// <summary>Damping ratio in rebound.</summary>
    public double? ReboundRatio => ReboundDampingNsPerM / CriticalDampingNsPerM;

    /// <summary>Mean of bump and rebound, which a whole swing feels.</summary>
    public double? MeanRatio => (BumpRatio + ReboundRatio) / 2;

    /// <summary>Frequency on the spring with the mean damping, Hz; 0 where it swings no more; null where the damper is not known.</summary>
    public double? DampedFrequencyHz => MeanRatio is { } ratio ? SpringFrequencyHz * Math.Sqrt(Math.Max(0, 1 - (ratio * ratio))) : null;

    /// <summary>Length of the spring at ride height, mm; null where neither it nor the free length is known.</summary>
    public required double? SpringLengthMm { get; init; }

    /// <summary>Wheel travel left to the bump stop, mm; null where it is not known.</summary>
    public required double? BumpLeftMm { get; init; }

    /// <summary>Wheel travel left to full droop, mm; null where it is not known.</summary>
    public required double? DroopLeftMm { get; init; }

    /// <summary>Vertical acceleration in g, its weight included, at which the stop is met: 1 = it rests on it. Null where the travel is not known.</summary>
    public double? StopMetAtG => BumpLeftMm is { } left ? Math.Max(1, 1 + (left / StaticDeflectionMm)) : null;

    /// <summary>Spring travel left to its coils touching with the bump stop pressed flat, mm; negative = the coils touch before. Null where lengths are not known.</summary>
    public required double? CoilClearanceMm { get; init; }

    /// <summary>How far the spring is still pressed together at full droop, mm; negative = it is loose in its seats. Null where that is not known.</summary>
    public required double? SeatedAtDroopMm { get; init; }

    private static double Frequency(double rateNPerMm, double massKg) => Math.Sqrt(1000 * rateNPerMm / massKg) / (2 * Math.PI);
}

/// <summary>A rate at a wheel travel.</summary>
/// <param name="TravelMm">Travel from ride height, mm; positive = bump.</param>
/// <param name="MotionRatio">Spring travel by wheel travel there.</param>
/// <param name="WheelRateNPerMm">Rate at the wheel, N/mm.</param>
public readonly record struct TravelRate(double TravelMm, double MotionRatio, double WheelRateNPerMm);

/// <summary>Whether the rear swings a little faster than the front, so that both ends fall into step after a bump that meets the front first.</summary>
/// <param name="FrequencyRatio">Rear ride frequency by that of the front.</param>
public readonly record struct FlatRide(double FrequencyRatio)
{
    /// <summary>Least ratio of a flat ride; from memory (Fundamentals of Vehicle Dynamics, 1992: front some 30 % softer).</summary>
    public const double Least = 1.05;

    /// <summary>Most; from memory, as <see cref="Least"/>.</summary>
    public const double Most = 1.3;

    /// <summary>True when it lies in that range.</summary>
    public bool IsFlat => FrequencyRatio is >= Least and <= Most;
}
