using SetupService.Domain.Suspension;
using SetupService.Domain.Tyres;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Vehicles;

/// <summary>One axle of a car, as far as it is known; what is not known is null.</summary>
public sealed record Axle
{
    // Of what nobody said anything there is one of each for all axles.
    private static readonly Hub NoHub = new();
    private static readonly Clearance NoClearance = new();
    private static readonly WheelAlignment NoAngles = new();
    private static readonly Spring NoSpring = new();
    private static readonly Damper NoDamper = new();
    private static readonly BumpStop NoBumpStop = new();
    private static readonly Compliance NoCompliance = new();
    private static readonly AdjustableAngles NotSaid = new();

    /// <summary>The wheel fitted now.</summary>
    public Wheel? Wheel { get; init; }

    /// <summary>The tyre fitted now.</summary>
    public Tyre? Tyre { get; init; }

    /// <summary>Height of the wheel centre above the ground with the car as driven, mm, where it was measured.</summary>
    public double? LoadedRadiusMm { get; init; }

    /// <summary>Load on the axle with the car as driven, kg.</summary>
    public double? LoadKg { get; init; }

    /// <summary>The greatest load the axle may carry, kg, as the car's plate states it.</summary>
    public double? MaximumLoadKg { get; init; }

    /// <summary>Cold gauge pressure the car's plate states for the axle, kPa.</summary>
    public double? PlacardPressureKpa { get; init; }

    /// <summary>The lowest load index the car's papers allow.</summary>
    public int? MinimumLoadIndex { get; init; }

    /// <summary>What the wheel is bolted to.</summary>
    public Hub Hub { get; init; } = NoHub;

    /// <summary>The gaps around the wheel and tyre fitted now.</summary>
    public Clearance Clearance { get; init; } = NoClearance;

    /// <summary>What is known of how its wheels move: from points, from readings, or from a few figures alone.</summary>
    public SuspensionModel Suspension { get; init; } = SuspensionModel.FromFigures;

    /// <summary>Angles of the left wheel at ride height.</summary>
    public WheelAlignment Left { get; init; } = NoAngles;

    /// <summary>Angles of the right wheel at ride height: those of the left where nobody said otherwise.</summary>
    public WheelAlignment Right { get; init; } = NoAngles;

    /// <summary>Distance between the contact centres of left and right, mm.</summary>
    public double? TrackMm { get; init; }

    /// <summary>Unsprung mass per wheel, kg, wheel and tyre included.</summary>
    public double? UnsprungMassKg { get; init; }

    /// <summary>The main spring.</summary>
    public Spring Spring { get; init; } = NoSpring;

    /// <summary>The damper.</summary>
    public Damper Damper { get; init; } = NoDamper;

    /// <summary>The bump stop.</summary>
    public BumpStop BumpStop { get; init; } = NoBumpStop;

    /// <summary>Moment of the anti-roll bar on the body per degree of body roll, N m/deg; 0 = no bar.</summary>
    public double? BarRollRateNmPerDeg { get; init; }

    /// <summary>How far the wheel gives under side force.</summary>
    public Compliance Compliance { get; init; } = NoCompliance;

    /// <summary>Height of the roll centre above the ground at ride height, mm.</summary>
    public double? RollCentreHeightMm { get; init; }

    /// <summary>Wheel travel from ride height to the first touch of the bump stop, mm.</summary>
    public double? BumpTravelMm { get; init; }

    /// <summary>Wheel travel from ride height to full droop, mm.</summary>
    public double? ReboundTravelMm { get; init; }

    /// <summary>How much higher the body stands at this axle than where points, angles and travels are stated, mm; negative = lowered.</summary>
    public double? RideHeightChangeMm { get; init; }

    /// <summary>How far its wheel angles can be set, as far as somebody said.</summary>
    public AdjustableAngles AdjustableAsStated { get; init; } = NotSaid;

    /// <summary>The same, completed by what the kind of its suspension tells.</summary>
    public AdjustableAngles Adjustable => AdjustableAsStated.Or(AdjustableAngles.ByKind(Suspension.Layout));
}
