using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>The sentences about a car in a turn.</summary>
public static class CorneringWords
{
    /// <summary>Why there is no equilibrium, as a clause that begins with the lateral acceleration.</summary>
    public static string Reason(in CorneringObstacle obstacle, UnitSystem units)
    {
        var (asked, limit) = (G(obstacle.LateralG), G(obstacle.LimitG));
        return obstacle.Failure switch
        {
            CorneringFailure.RollsOver when !obstacle.IsUnloadedThere => $"at {asked} the model finds no balance, as before a roll-over; up to {limit} it does.",
            CorneringFailure.RollsOver => $"at {asked} the inner wheels carry nothing and the car would roll over; up to {limit} it stays upright.",
            CorneringFailure.TravelNotReached when obstacle.BeyondReadings is { } beyond => Prose.Write(
                units,
                $"at {asked} the outer {Name(beyond.Axle)} wheel, {Name(beyond.Position)}, would be at {beyond.TravelMm:mm} of travel, beyond its readings and the {MeasuredSuspension.ExtensionMm:gap} they are extended by; up to {limit} no outer wheel is."),
            CorneringFailure.WorkSpent => $"at {asked} the work allowed for one request was spent before an equilibrium was found.",
            CorneringFailure.TravelNotReached => $"at {asked} a wheel would travel or steer further than its suspension, or its readings, reach; up to {limit} it does not.",
            _ when obstacle.LimitG > 0 && obstacle.LateralG > obstacle.LimitG && !obstacle.IsAtHeld => $"{asked} is more than the tyres can give; they hold {limit}.",
            _ => $"at {asked} an axle's tyres carry too little load for the side force it needs.",
        };
    }

    /// <summary>What the balance says, and of which tyres.</summary>
    public static string Balance(in SteadyTurn turn, bool isFrontGiven, bool isRearGiven)
    {
        var share = turn.Attitude.FrontLoadTransferPct is { } pct
            ? Prose.Write(UnitSystem.Metric, $"The front axle takes {pct:pct0} of the load transfer. ")
            : "The load transfer is too small to give a share. ";
        var gradient = turn.UndersteerDegPerG is not { } degrees ? "The understeer gradient has no value here."
            : degrees > 0 ? Prose.Write(UnitSystem.Metric, $"The car pushes wide (understeer): each 0.1 g more needs about {degrees / 10:deg} more steer at this radius.")
            : Prose.Write(UnitSystem.Metric, $"The rear goes wide first (oversteer): each 0.1 g more needs about {-degrees / 10:deg} less steer at this radius.");
        return $"{gradient} {share}{Tyres(isFrontGiven, isRearGiven)}";
    }

    /// <summary>A lateral acceleration.</summary>
    public static string G(double lateralG) => Prose.Write(UnitSystem.Metric, $"{lateralG:n} g");

    /// <summary>Wheels by name, "front left and rear right".</summary>
    public static string Wheels(IReadOnlyList<WheelPosition> wheels) => string.Join(" and ", wheels.Select(Name));

    /// <summary>An axle by name.</summary>
    public static string Name(CarAxle axle) => axle == CarAxle.Front ? "front" : "rear";

    /// <summary>A wheel by name.</summary>
    public static string Name(WheelPosition wheel) => wheel switch
    {
        WheelPosition.FrontLeft => "front left",
        WheelPosition.FrontRight => "front right",
        WheelPosition.RearLeft => "rear left",
        _ => "rear right",
    };

    private static string Tyres(bool isFrontGiven, bool isRearGiven) => (isFrontGiven, isRearGiven) switch
    {
        (true, true) => "The cornering stiffness is yours; how it falls off towards the peak is a published example tyre's.",
        (false, false) => "The tyres are a published example, not yours: compare settings of this car by it, but do not predict the car.",
        (true, false) => "The front's cornering stiffness is yours, the rear tyres are a published example: the balance is uncertain.",
        _ => "The rear's cornering stiffness is yours, the front tyres are a published example: the balance is uncertain.",
    };
}
