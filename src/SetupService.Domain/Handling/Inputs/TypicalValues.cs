using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Inputs;

/// <summary>What the figures of a road car usually are, by layout where that tells, each with its source.</summary>
public static class TypicalValues
{
    private const string CommonPractice = "common practice, no source";

    /// <summary>Camber, degrees.</summary>
    public static TypicalValue CamberDeg { get; } = new(0, -1.5, 0, CommonPractice);

    /// <summary>Toe of a wheel, degrees.</summary>
    public static TypicalValue ToeDeg { get; } = new(0, -0.1, 0.2, CommonPractice);

    /// <summary>Caster, degrees.</summary>
    public static TypicalValue CasterDeg { get; } = new(5, 2.5, 8, CommonPractice);

    /// <summary>Height of a wheel centre over the ground, mm.</summary>
    public static TypicalValue LoadedRadiusMm { get; } = new(300, 275, 335, CommonPractice);

    /// <summary>Rate at a bump stop, N/mm.</summary>
    public static TypicalValue StopRateNPerMm { get; } = new(60, 20, 200, CommonPractice);

    /// <summary>Length of a bump stop, mm.</summary>
    public static TypicalValue StopLengthMm { get; } = new(45, 25, 70, CommonPractice);

    /// <summary>Camber compliance, degrees per kN: left out where it is not known.</summary>
    public static TypicalValue CamberComplianceDegPerKn { get; } = new(0, 0, 0.25, CommonPractice);

    /// <summary>Toe compliance, degrees per kN: left out where it is not known.</summary>
    public static TypicalValue ToeComplianceDegPerKn { get; } = new(0, -0.03, 0.06, CommonPractice);

    /// <summary>
    /// Vertical rate of a tyre, N/mm, by its size and pressure: 0.00028 p √((1.03 − 0.004 A) S (S A/50 + d)) + 3.45 kgf/mm with p
    /// in kPa, section width S and rim diameter d in mm and aspect ratio A in percent.
    /// </summary>
    public static TypicalValue TyreRateNPerMm(Tyre? tyre)
    {
        const double kgf = 9.80665;
        if (tyre is null) return new(220, 160, 300, CommonPractice);
        var marking = tyre.Marking;
        var aspect = marking.AspectRatioPct ?? 75;
        var width = marking.NominalSectionWidthMm;
        var rate = kgf * ((0.00028 * (tyre.PressureKpa ?? 230)
            * Math.Sqrt((1.03 - (0.004 * aspect)) * width * ((width * aspect / 50) + marking.Dimensions.RimDiameterMm))) + 3.45);
        return new(rate, 0.85 * rate, 1.15 * rate, "Rhyne, Tire Science and Technology 33(3), 2005, from memory: vertical stiffness of belted radials by size and pressure");
    }

    /// <summary>Height of the centre of gravity, mm, by the mean track: the static stability factor track/(2 height).</summary>
    public static TypicalValue CentreOfGravityHeightMm(double meanTrackMm) => new(
        meanTrackMm / (2 * 1.42), meanTrackMm / (2 * 1.55), meanTrackMm / (2 * 1.30), "static stability factor of passenger cars about 1.4, from memory");

    /// <summary>Unsprung mass of a wheel, kg, by the load on its axle.</summary>
    public static TypicalValue UnsprungMassKg(double axleLoadKg, Axle axle)
    {
        ArgumentNullException.ThrowIfNull(axle);
        var ofAxle = 0.055 * axleLoadKg;
        return new(ofAxle, 0.75 * ofAxle, 1.35 * ofAxle, CommonPractice);
    }

    /// <summary>Height of a roll centre, mm.</summary>
    public static TypicalValue RollCentreHeightMm(SuspensionLayout? layout, CarAxle axle) => (layout, axle) switch
    {
        (SuspensionLayout.TwistBeam, _) => new(150, 80, 230, CommonPractice),
        (SuspensionLayout.SemiTrailingArm, _) => new(90, 20, 150, CommonPractice),
        (_, CarAxle.Front) => new(60, 10, 120, CommonPractice),
        _ => new(100, 40, 170, CommonPractice),
    };

    /// <summary>Spring travel by wheel travel.</summary>
    public static TypicalValue MotionRatio(SuspensionLayout? layout) => layout switch
    {
        SuspensionLayout.MacPhersonStrut => new(0.95, 0.90, 0.99, CommonPractice),
        SuspensionLayout.DoubleWishbone or SuspensionLayout.FiveLink => new(0.65, 0.50, 0.85, CommonPractice),
        SuspensionLayout.SemiTrailingArm or SuspensionLayout.TwistBeam => new(0.75, 0.60, 1.0, CommonPractice),
        _ => new(0.85, 0.60, 1.0, CommonPractice),
    };

    /// <summary>Damper travel by wheel travel: of a strut the spring's, else a little more than the spring's.</summary>
    public static TypicalValue DamperMotionRatio(SuspensionLayout? layout, double springMotionRatio) => layout is SuspensionLayout.MacPhersonStrut
        ? new(springMotionRatio, springMotionRatio - 0.02, springMotionRatio + 0.02, "the spring's: a strut carries its spring about the damper")
        : new(springMotionRatio, 0.85 * springMotionRatio, 1.2 * springMotionRatio, CommonPractice);

    /// <summary>Steering-axis inclination, degrees.</summary>
    public static TypicalValue InclinationDeg(SuspensionLayout? layout) =>
        layout is SuspensionLayout.DoubleWishbone ? new(9, 6, 13, CommonPractice) : new(13, 9, 16, CommonPractice);

    /// <summary>Front-view swing arm, mm.</summary>
    public static TypicalValue SwingArmMm(SuspensionLayout? layout) => layout switch
    {
        SuspensionLayout.DoubleWishbone or SuspensionLayout.FiveLink => new(1900, 1300, 3200, CommonPractice),
        SuspensionLayout.SemiTrailingArm => new(1400, 1000, 2500, CommonPractice),
        SuspensionLayout.TwistBeam => new(1800, 1200, 4000, CommonPractice),
        _ => new(3000, 1700, 8000, CommonPractice),
    };

    /// <summary>Roll rate of a bar nobody mentioned, N m/deg: none, at most as much as the springs of its axle give.</summary>
    public static TypicalValue BarRollRateNmPerDeg(double springRateNPerMm, double motionRatio, double trackMm) =>
        new(0, 0, double.DegreesToRadians(1) * springRateNPerMm * motionRatio * motionRatio * trackMm * trackMm / 2000, CommonPractice);
}
