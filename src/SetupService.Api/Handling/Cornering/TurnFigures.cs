using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Cornering;

/// <summary>What rows and single answers put down alike of a turn.</summary>
internal static class TurnFigures
{
    /// <summary>The row of a turn.</summary>
    public static TurnRow Row(CorneringEvaluation car, in SteadyTurn turn)
    {
        var attitude = turn.Attitude;
        var lateralG = attitude.Demand.LateralG;
        return new TurnRow
        {
            LateralG = lateralG,
            SpeedKmh = car.Path.SpeedKmh(lateralG),
            CornerRadiusM = car.Path.RadiusM(lateralG),
            RollDeg = attitude.RollDeg,
            RollDegPerG = turn.RollDegPerG,
            SteerDeg = attitude.SteerToLeftDeg,
            SteeringWheelDeg = attitude.SteerToLeftDeg * car.SteeringRatio,
            TyrePeakScale = attitude.PeakScale,
            Wheels = Wheels(attitude),
            Axles = new AxlesPart { Front = Part(attitude.Front), Rear = Part(attitude.Rear) },
            RollStiffnessFrontPct = car.RollStiffnessFrontPct,
            Balance = Balance(car, turn),
        };
    }

    private static BalancePart Balance(CorneringEvaluation car, in SteadyTurn turn) => new()
    {
        FrontLoadTransferPct = turn.Attitude.FrontLoadTransferPct,
        UndersteerDegPerG = turn.UndersteerDegPerG,
        Text = CorneringWords.Balance(turn, IsGiven(car.Reading.Car.Front), IsGiven(car.Reading.Car.Rear)),
    };

    private static bool IsGiven(Domain.Handling.Cars.HandlingAxle axle) => axle.CorneringStiffnessNPerDeg is not null;

    private static WheelsPart Wheels(in CorneringAttitude attitude) => new()
    {
        FrontLeft = Part(attitude.FrontLeft),
        FrontRight = Part(attitude.FrontRight),
        RearLeft = Part(attitude.RearLeft),
        RearRight = Part(attitude.RearRight),
    };

    private static WheelPart Part(in WheelAttitude wheel) => new()
    {
        IsOuter = wheel.IsOuter,
        LoadN = wheel.LoadN,
        TravelMm = wheel.TravelMm,
        SteerDeg = wheel.SteerDeg,
        SlipDeg = wheel.SlipDeg,
        SideForceN = wheel.SideForceN,
        InclinationDeg = wheel.IsBeyondReadings ? null : wheel.InclinationAngleDeg,
        Contributions = new ContributionsPart
        {
            Static = wheel.Camber.StaticDeg,
            Kinematic = wheel.IsBeyondReadings ? null : wheel.Camber.KinematicDeg,
            Roll = wheel.Camber.RollDeg,
            Steer = wheel.Camber.SteerDeg,
            Compliance = wheel.Camber.ComplianceDeg,
        },
        BumpLeftMm = wheel.BumpLeftMm,
        DroopLeftMm = wheel.DroopLeftMm,
        IsOnBumpStop = wheel.IsOnBumpStop,
        IsLifted = wheel.IsLifted,
    };

    private static AxlePart Part(in AxleAttitude axle) => new()
    {
        LoadTransferN = axle.LoadTransferN,
        ElasticN = axle.ElasticN,
        GeometricN = axle.GeometricN,
        UnsprungN = axle.UnsprungN,
        HeaveMm = axle.HeaveMm,
        SlipDeg = axle.SlipDeg,
        RollCentreHeightMm = axle.RollCentreHeightMm,
    };
}
