using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>The sentences about a car in a turn.</summary>
public static class CorneringWords
{
    /// <summary>Why there is no equilibrium, as a clause that begins with the lateral acceleration.</summary>
    public static string Reason(in CorneringObstacle obstacle)
    {
        var (asked, limit) = (G(obstacle.LateralG), G(obstacle.LimitG));
        return obstacle.Failure switch
        {
            CorneringFailure.RollsOver when !obstacle.IsUnloadedThere => $"at {asked} body and wheels come to no balance by this model, as before a roll-over; up to {limit} they do.",
            CorneringFailure.RollsOver => $"at {asked} nothing is left on the inner wheels: the car would roll over; it stands up to {limit}.",
            CorneringFailure.TravelNotReached when obstacle.BeyondReadings is { } beyond => Prose.Write(
                UnitSystem.Metric,
                $"at {asked} the outer {Name(beyond.Axle)} wheel, {Name(beyond.Position)}, would be at {beyond.TravelMm:mm} of travel, beyond what was read of its suspension and the 20 mm that is carried on; up to {limit} no outer wheel is."),
            CorneringFailure.WorkSpent => $"at {asked} the work allowed for one request was spent before an equilibrium was found.",
            CorneringFailure.TravelNotReached => $"at {asked} a wheel would have to travel or steer further than its suspension, or what was read of it, reaches; up to {limit} it does not.",
            _ when obstacle.LimitG > 0 && obstacle.LateralG > obstacle.LimitG && !obstacle.IsAtHeld => $"{asked} is more than the tyres can give; {limit} is what they hold.",
            _ => $"at {asked} an axle's tyres carry too little to give its side force.",
        };
    }

    /// <summary>What the balance says, and of which tyres.</summary>
    public static string Balance(in SteadyTurn turn, bool isFrontGiven, bool isRearGiven)
    {
        var share = turn.Attitude.FrontLoadTransferPct is { } pct
            ? Prose.Write(UnitSystem.Metric, $"The front axle takes {pct:pct} of the load that crosses the car. ")
            : "Too little load crosses the car to tell a share. ";
        var gradient = turn.UndersteerDegPerG is not { } degrees ? "The understeer gradient has no value here."
            : degrees > 0 ? Prose.Write(UnitSystem.Metric, $"Harder by 0.1 g it wants about {degrees / 10:deg} more steer at this radius: it pushes wide (understeer).")
            : Prose.Write(UnitSystem.Metric, $"Harder by 0.1 g it wants about {-degrees / 10:deg} less steer at this radius: its rear goes wide first (oversteer).");
        return $"{share}{gradient} {Tyres(isFrontGiven, isRearGiven)}";
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
        (true, true) => "The cornering stiffness is the one given; how it falls off towards the peak is the published example tyre's, not yours.",
        (false, false) => "The tyres are a published example, not yours: it compares settings of this car and does not foretell the car.",
        (true, false) => "The front's cornering stiffness is the one given, the rear tyres are a published example: the balance is as uncertain as that.",
        _ => "The rear's cornering stiffness is the one given, the front tyres are a published example: the balance is as uncertain as that.",
    };
}
