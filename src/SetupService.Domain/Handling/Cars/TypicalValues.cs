using SetupService.Domain.Suspension;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>What the figures of a road car usually are, by layout where that matters, each with its source. The ranges are our judgement unless the source gives one.</summary>
public static class TypicalValues
{
    private const string CommonPractice = "common practice, no source";

    // The cars' own figures are read from a reprint; the report itself was not seen.
    private const string ThreeCars = "three cars published with DOT HS 807 956 (1992), as reprinted in vehicle models of TU München, 2017";
    private const string ChassisHandbook = "from memory (The Automotive Chassis, 2001)";

    private const double UsualPressureKpa = 230;
    private const double UsualAspectPct = 75;

    /// <summary>Camber, degrees.</summary>
    public static TypicalValue CamberDeg(CarAxle axle) => axle == CarAxle.Front ? new(-0.5, -1.5, 0.3, CommonPractice) : new(-1, -2, 0, CommonPractice);

    /// <summary>Toe of a wheel, degrees.</summary>
    public static TypicalValue ToeDeg(CarAxle axle) => axle == CarAxle.Front ? new(0.05, -0.05, 0.15, CommonPractice) : new(0.1, 0, 0.25, CommonPractice);

    /// <summary>Caster, degrees.</summary>
    public static TypicalValue CasterDeg { get; } = new(5, 2, 8.5, "usually 3 to 8° (Perawatan dan Perbaikan Sistem Chasis Kendaraan, p. 79)");

    /// <summary>Height of a wheel centre over the ground, mm.</summary>
    public static TypicalValue LoadedRadiusMm { get; } = new(300, 275, 335, CommonPractice);

    /// <summary>Rate at a bump stop, N/mm: foam, over the first half of its length.</summary>
    public static TypicalValue StopRateNPerMm { get; } = new(60, 20, 150, CommonPractice);

    /// <summary>Length of a bump stop, mm.</summary>
    public static TypicalValue StopLengthMm { get; } = new(45, 25, 70, CommonPractice);

    /// <summary>
    /// Camber compliance, degrees per kN; positive = leans out under side force. Nothing or next to it up to 0.3 is usual. The four axles' kinds are not named where they are quoted:
    /// that a strut gives more, as it bends, and linked wheels give less is common practice.
    /// </summary>
    public static TypicalValue CamberComplianceDegPerKn(SuspensionLayout? layout)
    {
        var (usual, least, most) = layout switch
        {
            SuspensionLayout.MacPhersonStrut => (0.18, 0.06, 0.3),
            SuspensionLayout.DoubleWishbone => (0.12, 0.03, 0.3),
            SuspensionLayout.FiveLink => (0.1, 0.03, 0.3),
            SuspensionLayout.SemiTrailingArm or SuspensionLayout.TwistBeam => (0.1, 0.02, 0.3),
            _ => (0.15, 0.02, 0.3),
        };
        return new(usual, least, most, "Trans. JSME 89(919), 2023, Table 2, quoted: median 0.17 of four axles; one large car's model data: 0.04 and 0.06; by kind common practice, no source");
    }

    /// <summary>Toe compliance, degrees per kN; positive = toes out under side force.</summary>
    public static TypicalValue ToeComplianceDegPerKn(CarAxle axle) => axle == CarAxle.Front
        ? new(0.02, 0, 0.1, "J. Inst. Industrial Applications Engineers 12(3), 2024, Table 3, quoted: 0.004 to 0.032 of four axles; one large car's model data: 0.107")
        : new(0, -0.08, 0.08, CommonPractice + "; one large car's model data: −0.07");

    /// <summary>
    /// Vertical rate of a tyre, N/mm, by its size and pressure: 0.00028 p √((1.03 − 0.004 A) S (S A/50 + d)) + 3.45 kgf/mm with p
    /// in kPa, section width S and rim diameter d in mm and aspect ratio A in percent.
    /// </summary>
    public static TypicalValue TyreRateNPerMm(Tyre? tyre)
    {
        if (tyre is null) return new(210, 160, 280, ThreeCars + ": 158, 190 and 213 N/mm; larger since");
        var marking = tyre.Marking;
        var aspect = marking.AspectRatioPct ?? UsualAspectPct;
        var width = marking.NominalSectionWidthMm;
        var rate = HandlingCar.StandardGravity * ((0.00028 * (tyre.PressureKpa ?? UsualPressureKpa)
            * Math.Sqrt((1.03 - (0.004 * aspect)) * width * ((width * aspect / 50) + marking.Dimensions.RimDiameterMm))) + 3.45);
        return new(rate, 0.8 * rate, 1.2 * rate,
            "Tire Science and Technology 33(3), 2005: vertical stiffness of belted radials by size and pressure; coefficients from memory"
                + (tyre.PressureKpa is null ? ", at a usual pressure because none is given" : ""));
    }

    /// <summary>Height of the centre of gravity, mm, by the mean track and the body: the static stability factor is track/(2 height).</summary>
    public static TypicalValue CentreOfGravityHeightMm(double meanTrackMm, CarBody? body)
    {
        var (usual, low, high) = body switch
        {
            CarBody.Sedan => (1.420, 1.493, 1.330),
            CarBody.Coupe => (1.433, 1.571, 1.285),
            CarBody.Hatchback => (1.308, 1.442, 1.246),
            CarBody.Wagon => (1.307, 1.422, 1.204),
            CarBody.Convertible => (1.511, 1.582, 1.204),
            CarBody.Suv => (1.209, 1.286, 1.095),
            CarBody.Pickup => (1.167, 1.238, 1.079),
            CarBody.Van => (1.180, 1.371, 0.970),
            _ => (1.41, 1.55, 1.15),
        };
        return new(meanTrackMm / (2 * usual), meanTrackMm / (2 * low), meanTrackMm / (2 * high), body is null
            ? "NHTSA, Trends in the static stability factor of passenger cars, light trucks and vans, DOT HS 809 868 (2005): mean 1.41 for passenger cars, 1.12 to 1.24 for taller ones; give body"
            : "median and 5 to 95 % of static stability factors by body, 1270 public measurements of cars from 2001 to 2021 (open study, 2022); vans: vans and minivans together");
    }

    /// <summary>Front axle's share of the braking force, percent.</summary>
    public static TypicalValue BrakeShareFrontPct { get; } = new(68, 60, 78, ThreeCars + ": 76, 66 and 64 %");

    /// <summary>Front axle's share of the driving force where both axles are driven, percent.</summary>
    public static TypicalValue DriveShareFrontPct { get; } = new(50, 35, 70, CommonPractice);

    /// <summary>Unsprung mass of a wheel, kg, by the mass of the car.</summary>
    public static TypicalValue UnsprungMassKg(double carMassKg, SuspensionLayout? layout) => new(
        0.0275 * carMassKg, 0.022 * carMassKg, (layout is SuspensionLayout.TwistBeam ? 0.038 : 0.035) * carMassKg,
        ThreeCars + ": 2.7 to 2.9 % of the car's mass a wheel");

    /// <summary>Height of a roll centre, mm.</summary>
    public static TypicalValue RollCentreHeightMm(SuspensionLayout? layout, CarAxle axle) => (layout, axle) switch
    {
        (SuspensionLayout.TwistBeam, _) => new(160, 80, 260, CommonPractice),
        (SuspensionLayout.SemiTrailingArm, _) => new(110, 40, 180, CommonPractice),
        (SuspensionLayout.DoubleWishbone or SuspensionLayout.FiveLink, CarAxle.Front) => new(50, 0, 100, ChassisHandbook + ": front axles 30 to 100 mm"),
        (SuspensionLayout.MacPhersonStrut, CarAxle.Front) => new(60, 10, 110, ChassisHandbook + ": front axles 30 to 100 mm"),
        (_, CarAxle.Front) => new(60, 0, 130, ChassisHandbook + ": front axles 30 to 100 mm"),
        (null or SuspensionLayout.Measured, _) => new(100, 20, 220, ChassisHandbook + ": independent rear axles 60 to 130 mm"),
        _ => new(100, 40, 150, ChassisHandbook + ": independent rear axles 60 to 130 mm"),
    };

    /// <summary>Spring travel by wheel travel.</summary>
    public static TypicalValue MotionRatio(SuspensionLayout? layout) => layout switch
    {
        SuspensionLayout.MacPhersonStrut => new(0.95, 0.88, 1, CommonPractice),
        SuspensionLayout.DoubleWishbone or SuspensionLayout.FiveLink => new(0.65, 0.50, 0.85, CommonPractice),
        SuspensionLayout.SemiTrailingArm => new(0.75, 0.60, 0.95, CommonPractice),
        SuspensionLayout.TwistBeam => new(0.90, 0.70, 1.1, CommonPractice),
        _ => new(0.85, 0.55, 1.05, CommonPractice),
    };

    /// <summary>Damper travel by wheel travel: of a strut the spring's, else about the spring's.</summary>
    public static TypicalValue DamperMotionRatio(SuspensionLayout? layout, double springMotionRatio) => layout is SuspensionLayout.MacPhersonStrut
        ? new(springMotionRatio, springMotionRatio - 0.02, springMotionRatio + 0.02, "the spring's: a strut carries its spring about the damper")
        : new(springMotionRatio, 0.85 * springMotionRatio, 1.2 * springMotionRatio, CommonPractice);

    /// <summary>Steering-axis inclination, degrees.</summary>
    public static TypicalValue SteeringAxisInclinationDeg(SuspensionLayout? layout) => layout switch
    {
        SuspensionLayout.MacPhersonStrut => new(13.5, 11, 16, ChassisHandbook + ": passenger cars 11 to 15.5°"),
        SuspensionLayout.DoubleWishbone => new(10.5, 7, 14, CommonPractice),
        _ => new(12.5, 8, 16, ChassisHandbook + ": passenger cars 11 to 15.5°"),
    };

    /// <summary>Front-view swing arm, mm. Camber goes by its reciprocal, so the value is the middle of the range in 1/length.</summary>
    public static TypicalValue SwingArmMm(SuspensionLayout? layout, CarAxle axle)
    {
        var (shortestMm, longestMm, source) = (layout, axle) switch
        {
            (SuspensionLayout.MacPhersonStrut, CarAxle.Front) => (1200.0, 4000.0, ThreeCars + ": two front axles, 1604 and 2540 mm"),
            (SuspensionLayout.MacPhersonStrut, _) => (1900, 9000, ThreeCars + ": one rear axle, 4763 mm"),
            (SuspensionLayout.DoubleWishbone or SuspensionLayout.FiveLink, _) => (1100, 3500, CommonPractice),
            (SuspensionLayout.SemiTrailingArm, _) => (800, 2000, ThreeCars + ": one rear axle, 1104 mm"),
            (SuspensionLayout.TwistBeam, _) => (1100, 4000, CommonPractice),
            _ => (1100, 6000, ThreeCars + ": 1104 to 4763 mm"),
        };
        return new(2 / ((1 / shortestMm) + (1 / longestMm)), shortestMm, longestMm, source);
    }

    /// <summary>
    /// Roll rate of a bar that is not given, N m/deg, by its share of its axle's roll stiffness: in front 0.30 (0.15 to 0.45), behind 0.12, from none to 0.45.
    /// </summary>
    public static TypicalValue BarRollRateNmPerDeg(CarAxle axle, double springRateNPerMm, double motionRatio, double trackMm)
    {
        var ofSprings = double.DegreesToRadians(1) * springRateNPerMm * motionRatio * motionRatio * trackMm * trackMm / 2000;
        var (usual, least, most) = axle == CarAxle.Front ? (0.3, 0.15, 0.45) : (0.12, 0, 0.45);
        return new(Rate(usual), Rate(least), Rate(most),
            ThreeCars + ": bars 23 to 45 % of the front axle's roll stiffness, 0 to 14 % of the rear's; one coupe of an open study, 2021: 17 to 23 and 47 to 60 %");

        double Rate(double share) => ofSprings * share / (1 - share);
    }
}

/// <summary>What a figure usually is.</summary>
/// <param name="Value">The value used where none is given.</param>
/// <param name="Lower">Lower end of the range nine cars in ten lie in.</param>
/// <param name="Upper">Upper end of that range.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record TypicalValue(double Value, double Lower, double Upper, string Source);
