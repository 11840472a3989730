using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Ride;

/// <summary>How one axle rides, per wheel, both sides alike.</summary>
public sealed record RideAxlePart
{
    /// <summary>Sprung mass on one corner.</summary>
    [Sample(307.0)]
    public required double SprungMassKg { get; init; }

    /// <summary>Spring travel by wheel travel at ride height.</summary>
    [Sample(0.94)]
    public required double MotionRatio { get; init; }

    /// <summary>Force in the spring at rest.</summary>
    [Sample(3203.0)]
    public required double SpringForceN { get; init; }

    /// <summary>Rate of the spring at the wheel, with what a motion ratio that changes over travel adds.</summary>
    [Sample(23.9)]
    public required double WheelRateNPerMm { get; init; }

    /// <summary>The same over travel.</summary>
    public required TravelRatePart[] WheelRates { get; init; }

    /// <summary>Vertical rate of the tyre.</summary>
    [Sample(210.0)]
    public required double TyreRateNPerMm { get; init; }

    /// <summary>Spring and tyre in series.</summary>
    [Sample(21.4)]
    public required double RideRateNPerMm { get; init; }

    /// <summary>Undamped frequency of the sprung mass on spring and tyre in series.</summary>
    [Sample(1.33)]
    public required double RideFrequencyHz { get; init; }

    /// <summary>Undamped frequency of the sprung mass on the spring alone.</summary>
    [Sample(1.4)]
    public required double SpringFrequencyHz { get; init; }

    /// <summary>Frequency on the spring with the mean damping, 0 where it swings no more; null where the damper is not known.</summary>
    [Sample(1.3)]
    public required double? DampedFrequencyHz { get; init; }

    /// <summary>Undamped frequency of the unsprung mass between spring and tyre.</summary>
    [Sample(12.5)]
    public required double WheelHopFrequencyHz { get; init; }

    /// <summary>Damping at the wheel that just keeps the sprung mass from swinging on the spring.</summary>
    [Sample(5416.0)]
    public required double CriticalDampingNsPerM { get; init; }

    /// <summary>Damping by that.</summary>
    public required DampingRatioPart DampingRatio { get; init; }

    /// <summary>Sprung weight by wheel rate.</summary>
    [Sample(126.0)]
    public required double StaticDeflectionMm { get; init; }

    /// <summary>Length of the spring at ride height; null where its lengths are not known.</summary>
    [Sample(221.0)]
    public required double? SpringLengthMm { get; init; }

    /// <summary>How much higher the car stands than before the change; 0 where nothing was changed; null where the spring's lengths do not tell.</summary>
    [Sample(-12.0)]
    public required double? RideHeightChangeMm { get; init; }

    /// <summary>Wheel travel left to the bump stop at rest; null where it is not known.</summary>
    [Sample(56.0)]
    public required double? BumpLeftMm { get; init; }

    /// <summary>Wheel travel left to full droop at rest; null where it is not known.</summary>
    [Sample(97.0)]
    public required double? DroopLeftMm { get; init; }

    /// <summary>Vertical acceleration, its own weight included, at which the bump stop is met; 1 = the car stands on it.</summary>
    [Sample(1.44)]
    public required double? StopMetAtVerticalG { get; init; }

    /// <summary>Lateral acceleration at which the outer wheel meets its bump stop; null where it rolls over first or cannot be told.</summary>
    [Sample(1.2)]
    public required double? StopMetAtLateralG { get; init; }

    /// <summary>Spring travel left to its coils touching with the bump stop pressed flat; negative = they touch before.</summary>
    [Sample(21.0)]
    public required double? CoilClearanceMm { get; init; }

    /// <summary>How far the spring is still pressed together at full droop; negative = loose in its seats.</summary>
    [Sample(18.0)]
    public required double? SeatedAtDroopMm { get; init; }

    /// <summary>Whether the dampers can stay.</summary>
    public required DampersPart Dampers { get; init; }
}
