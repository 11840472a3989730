using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Tests.Handling;

/// <summary>
/// The worked case of a hand calculation by the textbook forms (Barton and Fieldhouse, Automotive Chassis Engineering, 2018, for roll and
/// load transfer): sprung mass 1180 kg, 80 kg unsprung an axle, roll centres at 70 and 110 mm.
/// </summary>
internal static class WorkedCar
{
    // The hand calculation takes g = 9.81; loads are given so that the masses are its own.
    private const double G = HandlingCar.StandardGravity;

    public static HandlingCar Make(double tyreRateNPerMm = 220) => new()
    {
        WheelbaseMm = 2600,
        CentreOfGravityHeightMm = ((1180 * 530) + (160 * 305)) / 1340.0,
        Front = Axle(1180 * 1.4 / 2.6, 1520, 28, 32.990167 * double.DegreesToRadians(1) * 1000, 70, tyreRateNPerMm),
        Rear = Axle(1180 * 1.2 / 2.6, 1500, 26, 12.097678 * double.DegreesToRadians(1) * 1000, 110, tyreRateNPerMm),
    };

    public static HandlingAxle Axle(double sprungKg, double trackMm, double wheelRateNPerMm, double barNmPerDeg, double rollCentreMm, double tyreRateNPerMm) => new()
    {
        LeftLoadN = (sprungKg + 80) * G / 2,
        RightLoadN = (sprungKg + 80) * G / 2,
        TrackMm = trackMm,
        UnsprungMassKg = 40,
        LoadedRadiusMm = 305,
        TyreRateNPerMm = tyreRateNPerMm,
        TyreNominalLoadN = 3900,
        TyreFriction = 1.05,
        SpringRateNPerMm = wheelRateNPerMm,
        MotionRatio = 1,
        DamperMotionRatio = 1,
        BarRollRateNmPerDeg = barNmPerDeg,
        RollCentreHeightMm = rollCentreMm,
        SwingArmMm = 3000,
        StopRateNPerMm = 60,
        StopLengthMm = 45,
        LeftCamberDeg = -1,
        RightCamberDeg = -1,
        LeftToeDeg = 0,
        RightToeDeg = 0,
        LeftCasterDeg = 6,
        RightCasterDeg = 6,
        SteeringAxisInclinationDeg = 13,
        CamberComplianceDegPerKn = 0,
        ToeComplianceDegPerKn = 0,
    };
}
