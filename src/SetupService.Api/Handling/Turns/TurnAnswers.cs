using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Suspension;

namespace SetupService.Api.Handling.Turns;

/// <summary>What rows and single answers put down alike of a turn.</summary>
internal static class TurnAnswers
{
    /// <summary>The row of a turn.</summary>
    public static TurnRow Row(CorneringEvaluation car, in SteadyTurn turn, LimitStudy? limits)
    {
        var attitude = turn.Attitude;
        var lateralG = attitude.Demand.LateralG;
        var isAlong = attitude.Demand.LongitudinalG != 0 || car.Reading.Car.Aero is not null;
        return new TurnRow
        {
            LateralG = lateralG,
            SpeedKmh = car.Path.SpeedKmh(lateralG),
            CornerRadiusM = car.Path.RadiusM(lateralG),
            LongitudinalG = isAlong ? attitude.Demand.LongitudinalG : null,
            PitchDeg = isAlong ? attitude.PitchDeg : null,
            RollDeg = attitude.RollDeg,
            RollDegPerG = turn.RollDegPerG,
            SteerDeg = attitude.SteerToLeftDeg,
            SteeringWheelDeg = double.IsFinite(attitude.SteeredDeg) ? attitude.SteeredToLeftDeg * car.SteeringRatio : null,
            Wheels = Wheels(attitude, isAlong),
            Axles = new TurnAxlesResponse { Front = Axle(attitude.Front, isAlong), Rear = Axle(attitude.Rear, isAlong) },
            RollStiffnessFrontPct = car.RollStiffnessFrontPct,
            Balance = Balance(car, turn, limits),
        };
    }

    private static BalanceResponse Balance(CorneringEvaluation car, in SteadyTurn turn, LimitStudy? limits) => new()
    {
        FrontLoadTransferPct = turn.Attitude.FrontLoadTransferPct,
        UndersteerDegPerG = turn.UndersteerDegPerG,
        Text = CorneringWords.Balance(turn, limits, car.Reading.Car),
    };

    /// <summary>What each axle can hold; nothing of it where that was not worked out.</summary>
    public static LimitResponse Limit(LimitStudy? limits) => limits is not { } study ? NotWorked : new()
    {
        Front = UncertaintyResponse.From(study.Front) ?? WithoutRange(study.Limits.Front),
        Rear = UncertaintyResponse.From(study.Rear) ?? WithoutRange(study.Limits.Rear),
        Margin = UncertaintyResponse.From(study.Margin),
        First = study.First,
        FrontFirstPct = 100 * study.FrontFirst,
        Text = CorneringWords.Limit(study),
    };

    private static readonly LimitResponse NotWorked = new()
    {
        Front = null,
        Rear = null,
        Margin = null,
        First = FirstAxle.Unclear,
        FrontFirstPct = null,
        Text = "The limits were not asked for: they are worked out with detail=full.",
    };

    // Where only one axle has a limit there are no joint draws: its range stays open.
    private static UncertaintyResponse? WithoutRange(in AxleLimit limit) =>
        limit.LimitG is { } g ? new() { Value = g, Lower = null, Upper = null, LevelPct = Uncertainty.NinetyPct } : null;

    private static TurnWheelsResponse Wheels(in CorneringAttitude attitude, bool isAlong) => new()
    {
        FrontLeft = Wheel(attitude.FrontLeft, isAlong),
        FrontRight = Wheel(attitude.FrontRight, isAlong),
        RearLeft = Wheel(attitude.RearLeft, isAlong),
        RearRight = Wheel(attitude.RearRight, isAlong),
    };

    private static TurnWheelResponse Wheel(in WheelAttitude wheel, bool isAlong) => new()
    {
        IsOuter = wheel.IsOuter,
        LoadN = wheel.LoadN,
        TravelMm = wheel.TravelMm,
        SteerDeg = wheel.SteerDeg,
        SlipDeg = wheel.SlipDeg,
        SideForceN = wheel.SideForceN,
        LongitudinalForceN = isAlong ? wheel.LongitudinalN : null,
        InclinationDeg = wheel.IsBeyondReadings ? null : wheel.InclinationAngleDeg,
        Contributions = new InclinationContributionsResponse
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

    private static TurnAxleResponse Axle(in AxleAttitude axle, bool isAlong) => new()
    {
        AddedLoadN = isAlong ? axle.LongitudinalLoadN : null,
        LongitudinalForceN = isAlong ? axle.LongitudinalN : null,
        LongitudinalUsedPct = isAlong && double.IsFinite(axle.LongitudinalUsed) ? 100 * axle.LongitudinalUsed : null,
        LoadTransferN = axle.LoadTransferN,
        ElasticN = axle.ElasticN,
        GeometricN = axle.GeometricN,
        UnsprungN = axle.UnsprungN,
        HeaveMm = axle.HeaveMm,
        GripUsedPct = 100 * Math.Min(axle.GripUsed, AxleAttitude.MostToldGripUsed),
        SlipDeg = axle.SlipDeg,
        RollCentreHeightMm = axle.RollCentreHeightMm,
    };
}

/// <summary>The figures that turns lack, each with the reason, so that no null stands without one.</summary>
internal static class TurnGaps
{
    private static (string Output, Predicate<TurnRow> IsMissing, string Reason, string[] Needs)[] OfTurn(UnitSystem units, bool hasSteeringRatio) =>
    [
        ("cornerRadiusM", row => row.CornerRadiusM is null, "at this speed and lateral acceleration the path is all but straight", []),
        ("rollDegPerG", row => row.RollDegPerG is null, "a turn a little harder has no equilibrium", []),
        ("steeringWheelDeg", row => row.SteeringWheelDeg is null && !hasSteeringRatio, "needs /vehicle/steeringRatio", ["/vehicle/steeringRatio"]),
        ("steeringWheelDeg", row => row.SteeringWheelDeg is null && hasSteeringRatio, "the wheels are steered so far off ride height only", []),
        ("frontLoadTransferPct", row => row.Balance.FrontLoadTransferPct is null, "too little load is transferred to be shared out", []),
        ("inclinationDeg", row => IsBeyondReadings(row.Wheels), Prose.Write(units, $"an inner wheel is unloaded beyond its suspension's readings and the {MeasuredSuspension.ExtensionMm:gap} they are extended by; its camber is held there, which matters little as it gives little side force"), ["/vehicle/front/suspension/readings", "/vehicle/rear/suspension/readings"]),
        ("understeerDegPerG", row => row.Balance.UndersteerDegPerG is null && IsNearLimit(row), "an axle uses more than nine tenths of its grip: there slip grows so fast that a gradient tells nothing of the balance; see limit", []),
        ("understeerDegPerG", row => row.Balance.UndersteerDegPerG is null && !IsNearLimit(row) && HasLifted(row.Wheels), "a wheel has left the road: its axle's bar and springs move no more load, and a gradient tells nothing of the balance; see limit", []),
        ("understeerDegPerG", row => row.Balance.UndersteerDegPerG is null && !IsNearLimit(row) && !HasLifted(row.Wheels), "a turn a little harder has no equilibrium, or its steer is reached off ride height only", []),
    ];

    /// <summary>The figures, each with how many rows lack it where that is not all.</summary>
    public static UnknownResponse[] Find(CorneringEvaluation car, IReadOnlyList<TurnRow> rows, LimitStudy? limits) =>
    [
        .. limits is null ? [UnknownResponse.Create("/limit", "not asked for; detail=full works it out")] : OfLimits(limits),
        .. from figure in OfTurn(car.Units, car.SteeringRatio is not null)
           let count = rows.Count(row => figure.IsMissing(row))
           where count > 0
           select UnknownResponse.Create(figure.Output, count == rows.Count ? figure.Reason : FormattableString.Invariant($"in {count} of {rows.Count} rows {figure.Reason}"), figure.Needs),
        .. OfAxle(car.Reading.Car.Front, "front"),
        .. OfAxle(car.Reading.Car.Rear, "rear"),
    ];

    private static IEnumerable<UnknownResponse> OfAxle(HandlingAxle axle, string name)
    {
        if (axle.BumpTravelMm is null) yield return UnknownResponse.Create("bumpLeftMm", $"of the {name} wheels needs /vehicle/{name}/bumpTravelMm", $"/vehicle/{name}/bumpTravelMm");
        if (axle.ReboundTravelMm is null) yield return UnknownResponse.Create("droopLeftMm", $"of the {name} wheels needs /vehicle/{name}/reboundTravelMm", $"/vehicle/{name}/reboundTravelMm");
    }

    private static IEnumerable<UnknownResponse> OfLimits(LimitStudy study)
    {
        if (study.Limits.Front.LimitG is null) yield return UnknownResponse.Create("/limit/front", CorneringWords.NoLimit(study.Limits.Front));
        if (study.Limits.Rear.LimitG is null) yield return UnknownResponse.Create("/limit/rear", CorneringWords.NoLimit(study.Limits.Rear));
        if (study.Limits.MarginG is null) yield return UnknownResponse.Create("/limit/margin", "needs both limits");
    }

    private static bool IsNearLimit(TurnRow row) => Math.Max(row.Axles.Front.GripUsedPct, row.Axles.Rear.GripUsedPct) > 100 * SteadyTurn.MostUsedForGradient;

    private static bool HasLifted(TurnWheelsResponse wheels) => wheels.FrontLeft.IsLifted || wheels.FrontRight.IsLifted || wheels.RearLeft.IsLifted || wheels.RearRight.IsLifted;

    private static bool IsBeyondReadings(TurnWheelsResponse wheels) =>
        wheels.FrontLeft.InclinationDeg is null || wheels.FrontRight.InclinationDeg is null || wheels.RearLeft.InclinationDeg is null || wheels.RearRight.InclinationDeg is null;
}
