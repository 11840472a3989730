using SetupService.Api.Http.Shared;
using SetupService.Domain.Handling.Cars;

namespace SetupService.Api.Handling.Cornering;

/// <summary>The figures that turns lack, each with the reason, so that no null stands without one.</summary>
internal static class TurnGaps
{
    private static readonly (string Output, Predicate<TurnRow> IsMissing, string Reason, string[] Needs)[] OfTurn =
    [
        ("cornerRadiusM", row => row.CornerRadiusM is null, "at this speed the path is as good as straight", []),
        ("rollDegPerG", row => row.RollDegPerG is null, "a turn a little harder has no equilibrium on the same tyres", []),
        ("steeringWheelDeg", row => row.SteeringWheelDeg is null, "needs /vehicle/steeringRatio", ["/vehicle/steeringRatio"]),
        ("frontLoadTransferPct", row => row.Balance.FrontLoadTransferPct is null, "too little load crosses the car to be shared", []),
        ("inclinationDeg", row => IsBeyondReadings(row.Wheels), "an inner wheel is unloaded beyond what was read of its suspension and the 20 mm that is carried on; its camber is taken as there, which matters to little side force", ["/vehicle/front/suspension/readings", "/vehicle/rear/suspension/readings"]),
        ("understeerDegPerG", row => row.Balance.UndersteerDegPerG is null, "a turn a little harder has no equilibrium on the same tyres, or its steer is reached off ride height only", []),
    ];

    /// <summary>The figures, each with how many rows lack it where that is not all.</summary>
    public static UnknownResponse[] Of(HandlingCar car, IReadOnlyList<TurnRow> rows) =>
    [
        .. from figure in OfTurn
           let count = rows.Count(row => figure.IsMissing(row))
           where count > 0
           select Part(figure.Output, count == rows.Count ? figure.Reason : FormattableString.Invariant($"in {count} of {rows.Count} rows {figure.Reason}"), figure.Needs),
        .. OfAxle(car.Front, "front"),
        .. OfAxle(car.Rear, "rear"),
    ];

    private static IEnumerable<UnknownResponse> OfAxle(HandlingAxle axle, string name)
    {
        if (axle.BumpTravelMm is null) yield return Part("bumpLeftMm", $"of the {name} wheels needs /vehicle/{name}/bumpTravelMm", $"/vehicle/{name}/bumpTravelMm");
        if (axle.ReboundTravelMm is null) yield return Part("droopLeftMm", $"of the {name} wheels needs /vehicle/{name}/reboundTravelMm", $"/vehicle/{name}/reboundTravelMm");
    }

    private static bool IsBeyondReadings(WheelsPart wheels) =>
        wheels.FrontLeft.InclinationDeg is null || wheels.FrontRight.InclinationDeg is null || wheels.RearLeft.InclinationDeg is null || wheels.RearRight.InclinationDeg is null;

    private static UnknownResponse Part(string output, string reason, params string[] needs) => UnknownResponse.Of(output, reason, needs);
}
