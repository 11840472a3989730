using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>
/// A car with every figure the handling model takes. Its centre of gravity follows the axle loads; what is sprung is what the axle
/// loads leave after the unsprung masses.
/// </summary>
public sealed record HandlingCar
{
    /// <summary>Standard gravity, m/s² (ISO 80000-3; exact by definition, CGPM 1901).</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>Distance between the axles, mm; null where it is not given and the call does without.</summary>
    public double? WheelbaseMm { get; init; }

    /// <summary>Height of the whole car's centre of gravity above the ground at the stated ride height, mm.</summary>
    public required double CentreOfGravityHeightMm { get; init; }

    /// <summary>What the tyres of both axles have in common.</summary>
    public TyreCoefficients TyreSet { get; init; } = TyreTypicals.Set;

    /// <summary>Factor on the friction of all four tyres: the scale of grip, one for everything a request asks.</summary>
    public double GripFactor { get; init; } = 1;

    /// <summary>Front axle's share of the braking force, percent.</summary>
    public double BrakeShareFrontPct { get; init; } = TypicalValues.BrakeShareFrontPct.Value;

    /// <summary>Front axle's share of the driving force, percent: 100 or 0 where one axle is driven; null where nobody said which is.</summary>
    public double? DriveShareFrontPct { get; init; }

    /// <summary>The differential of each driven axle.</summary>
    public Differential Differential { get; init; } = Differential.Open;

    /// <summary>What the air does to it; null where that is not known and counts as nothing.</summary>
    public Aero? Aero { get; init; }

    /// <summary>The front axle.</summary>
    public required HandlingAxle Front { get; init; }

    /// <summary>The rear axle.</summary>
    public required HandlingAxle Rear { get; init; }

    /// <summary>Mass of the whole car, kg.</summary>
    public double MassKg => (Front.LoadN + Rear.LoadN) / StandardGravity;

    /// <summary>Mass without the four wheels, kg.</summary>
    public double SprungMassKg => (Front.SprungLoadN + Rear.SprungLoadN) / StandardGravity;

    /// <summary>Share of the sprung mass the front axle carries.</summary>
    public double SprungShareFront => Front.SprungLoadN / (Front.SprungLoadN + Rear.SprungLoadN);

    /// <summary>Share of the whole mass the front axle carries.</summary>
    public double ShareFront => Front.LoadN / (Front.LoadN + Rear.LoadN);

    /// <summary>How much the ride height changed at the sprung centre of gravity, mm; positive = higher.</summary>
    public double HeightChangeMm => (SprungShareFront * Front.RideHeightChangeMm) + ((1 - SprungShareFront) * Rear.RideHeightChangeMm);

    /// <summary>Height of the sprung mass' centre of gravity above the ground at the present ride height, mm.</summary>
    public double SprungHeightMm =>
        (((MassKg * CentreOfGravityHeightMm)
            - (2 * Front.UnsprungMassKg * Front.LoadedRadiusMm) - (2 * Rear.UnsprungMassKg * Rear.LoadedRadiusMm)) / SprungMassKg) + HeightChangeMm;

    /// <summary>Height of the whole car's centre of gravity above the ground at the present ride height, mm.</summary>
    public double PresentHeightMm => CentreOfGravityHeightMm + (HeightChangeMm * SprungMassKg / MassKg);

    /// <summary>One axle of the car.</summary>
    public HandlingAxle At(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;

    /// <summary>The tyres of one axle.</summary>
    public AxleTyre TyreOf(HandlingAxle axle)
    {
        ArgumentNullException.ThrowIfNull(axle);
        return new AxleTyre(TyreSet, axle.TyreNominalLoadN, GripFactor * axle.TyreFriction).WithStiffness(axle.CorneringStiffnessNPerDeg, axle.LoadN / 2);
    }

    /// <summary>The same car with another axle.</summary>
    public HandlingCar With(CarAxle at, HandlingAxle axle) => at == CarAxle.Front ? this with { Front = axle } : this with { Rear = axle };
}
