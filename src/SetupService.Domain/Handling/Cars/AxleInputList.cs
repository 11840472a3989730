using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>The scalars of one axle that the handling model takes.</summary>
public sealed class AxleInputList
{
    internal AxleInputList(CarAxle axle)
    {
        HandlingInput Make(string pointer, string unit, Func<HandlingAxle, double> read, Func<HandlingAxle, double, HandlingAxle> put, double relative, double absolute) =>
            new((axle == CarAxle.Front ? "/front" : "/rear") + pointer, unit, car => read(car.At(axle)), (car, value) => car.With(axle, put(car.At(axle), value)), relative, absolute);

        Load = Make("", "Kg", one => one.LoadN / HandlingCar.StandardGravity, WithLoad, 0.01, 0) with
        {
            Place = axle == CarAxle.Front ? "/frontAxleLoadKg" : "/rearAxleLoadKg",
        };
        Track = Make("/trackMm", "Mm", one => one.TrackMm, (one, value) => one with { TrackMm = value }, 0, 3);
        UnsprungMass = Make("/unsprungMassKg", "Kg", one => one.UnsprungMassKg, (one, value) => one with { UnsprungMassKg = value }, 0.05, 0);
        TyreRate = Make("/tyre/verticalRateNPerMm", "NPerMm", one => one.TyreRateNPerMm, (one, value) => one with { TyreRateNPerMm = value }, 0.07, 0);
        SpringRate = Make("/spring/rateNPerMm", "NPerMm", one => one.SpringRateNPerMm, (one, value) => one with { SpringRateNPerMm = value }, 0.03, 0);
        MotionRatio = Make("/spring/motionRatio", "", one => one.MotionRatio, (one, value) => one with { MotionRatio = value }, 0, 0.01);
        DamperMotionRatio = Make("/damper/motionRatio", "", one => one.DamperMotionRatio, (one, value) => one with { DamperMotionRatio = value }, 0, 0.01);
        BarRollRate = Make("/antiRollBar/rollRateNmPerDeg", "NmPerDeg", one => one.BarRollRateNmPerDeg, (one, value) => one with { BarRollRateNmPerDeg = value }, 0.1, 0);
        RollCentreHeight = Make("/rollCentreHeightMm", "Mm", one => one.RollCentreHeightMm, (one, value) => one with { RollCentreHeightMm = value }, 0, 10);
        StopRate = Make("/bumpStop/rateNPerMm", "NPerMm", one => one.StopRateNPerMm, (one, value) => one with { StopRateNPerMm = value }, 0.2, 0);
        StopLength = Make("/bumpStop/lengthMm", "Mm", one => one.StopLengthMm, (one, value) => one with { StopLengthMm = value }, 0, 2);
        Camber = Make("/alignment/camberDeg", "Deg", one => (one.LeftCamberDeg + one.RightCamberDeg) / 2, WithCamber, 0, 0.1);
        Toe = Make("/alignment/toeDeg", "Deg", one => (one.LeftToeDeg + one.RightToeDeg) / 2, WithToe, 0, 0.03);
        Caster = Make("/alignment/casterDeg", "Deg", one => ((one.LeftCasterDeg + one.RightCasterDeg) / 2) + one.AddedCasterDeg, WithCaster, 0, 0.25);
        Inclination = Make("/alignment/steeringAxisInclinationDeg", "Deg", one => one.SteeringAxisInclinationDeg, (one, value) => one with { SteeringAxisInclinationDeg = value }, 0, 0.5);
        SwingArm = Make("/suspension", "Mm", one => one.SwingArmMm, (one, value) => one with { SwingArmMm = value }, 0, 0);
        CamberCompliance = Make("/compliance/camberDegPerKn", "DegPerKn", one => one.CamberComplianceDegPerKn, (one, value) => one with { CamberComplianceDegPerKn = value }, 0.2, 0);
        ToeCompliance = Make("/compliance/toeDegPerKn", "DegPerKn", one => one.ToeComplianceDegPerKn, (one, value) => one with { ToeComplianceDegPerKn = value }, 0.2, 0);
        TyreNominalLoad = Make("/tyre", "N", one => one.TyreNominalLoadN, (one, value) => one with { TyreNominalLoadN = value }, 0.05, 0);
        TyreFriction = Make("/tyre/category", "", one => one.TyreFriction, (one, value) => one with { TyreFriction = value }, 0.02, 0);
        All =
        [
            Load, Track, UnsprungMass, TyreRate, SpringRate, MotionRatio, DamperMotionRatio, BarRollRate, RollCentreHeight, StopRate, StopLength,
            Camber, Toe, Caster, Inclination, SwingArm, CamberCompliance, ToeCompliance, TyreNominalLoad, TyreFriction,
        ];
    }

    /// <summary>Axle load, kg.</summary>
    public HandlingInput Load { get; }

    /// <summary>Track, mm.</summary>
    public HandlingInput Track { get; }

    /// <summary>Unsprung mass per wheel, kg.</summary>
    public HandlingInput UnsprungMass { get; }

    /// <summary>Tyre vertical rate, N/mm.</summary>
    public HandlingInput TyreRate { get; }

    /// <summary>Spring rate, N/mm.</summary>
    public HandlingInput SpringRate { get; }

    /// <summary>Spring motion ratio.</summary>
    public HandlingInput MotionRatio { get; }

    /// <summary>Damper motion ratio.</summary>
    public HandlingInput DamperMotionRatio { get; }

    /// <summary>Anti-roll bar, N m/deg.</summary>
    public HandlingInput BarRollRate { get; }

    /// <summary>Roll-centre height, mm.</summary>
    public HandlingInput RollCentreHeight { get; }

    /// <summary>Bump-stop rate, N/mm.</summary>
    public HandlingInput StopRate { get; }

    /// <summary>Bump-stop length, mm.</summary>
    public HandlingInput StopLength { get; }

    /// <summary>Camber of both wheels, degrees; putting moves both alike.</summary>
    public HandlingInput Camber { get; }

    /// <summary>Toe of both wheels, degrees; putting moves both alike.</summary>
    public HandlingInput Toe { get; }

    /// <summary>Caster of both wheels, degrees; putting turns the steering axis and leaves points where they are.</summary>
    public HandlingInput Caster { get; }

    /// <summary>Steering-axis inclination, degrees.</summary>
    public HandlingInput Inclination { get; }

    /// <summary>Front-view swing arm where no suspension is given, mm.</summary>
    public HandlingInput SwingArm { get; }

    /// <summary>Camber compliance, degrees per kN.</summary>
    public HandlingInput CamberCompliance { get; }

    /// <summary>Toe compliance, degrees per kN.</summary>
    public HandlingInput ToeCompliance { get; }

    /// <summary>Nominal load of the tyres, N.</summary>
    public HandlingInput TyreNominalLoad { get; }

    /// <summary>Friction of the tyres of this axle against the other's.</summary>
    public HandlingInput TyreFriction { get; }

    /// <summary>All.</summary>
    public IReadOnlyList<HandlingInput> All { get; }

    private static HandlingAxle WithLoad(HandlingAxle axle, double kg)
    {
        var scale = kg * HandlingCar.StandardGravity / axle.LoadN;
        return axle with { LeftLoadN = axle.LeftLoadN * scale, RightLoadN = axle.RightLoadN * scale };
    }

    private static HandlingAxle WithCamber(HandlingAxle axle, double camberDeg)
    {
        var change = camberDeg - ((axle.LeftCamberDeg + axle.RightCamberDeg) / 2);
        return axle with { LeftCamberDeg = axle.LeftCamberDeg + change, RightCamberDeg = axle.RightCamberDeg + change };
    }

    private static HandlingAxle WithToe(HandlingAxle axle, double toeDeg)
    {
        var change = toeDeg - ((axle.LeftToeDeg + axle.RightToeDeg) / 2);
        return axle with { LeftToeDeg = axle.LeftToeDeg + change, RightToeDeg = axle.RightToeDeg + change };
    }

    private static HandlingAxle WithCaster(HandlingAxle axle, double casterDeg) =>
        axle with { AddedCasterDeg = casterDeg - ((axle.LeftCasterDeg + axle.RightCasterDeg) / 2) };
}
