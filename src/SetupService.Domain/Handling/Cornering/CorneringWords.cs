using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>The sentences about a car in a turn.</summary>
public static class CorneringWords
{
    // A tenth of g then moves the steer by less than the hundredth of a degree it is told in.
    private const double NeutralDegPerG = 0.05;

    /// <summary>Why there is no equilibrium, as a clause that begins with the lateral acceleration.</summary>
    public static string Reason(in CorneringObstacle obstacle, UnitSystem units)
    {
        var (asked, limit) = (G(obstacle.LateralG), G(obstacle.LimitG));
        return obstacle.Failure switch
        {
            CorneringFailure.RollsOver when !obstacle.IsUnloadedThere => $"at {asked} the model finds no balance, as before a roll-over; up to {limit} it does.",
            CorneringFailure.RollsOver => $"at {asked} the inner wheels carry nothing and the car would roll over; up to {limit} it stays upright.",
            CorneringFailure.TravelNotReached when obstacle.Reach is { IsOfPoints: true } reach => Prose.Write(
                units, $"at {asked} the {Name(reach.Position)} wheel would need some {reach.TravelMm:mm} of travel; its suspension's points reach {reach.ReachMm:mm}; up to {limit} every wheel has travel enough."),
            CorneringFailure.TravelNotReached when obstacle.Reach is { } beyond => Prose.Write(
                units,
                $"at {asked} the outer {Name(beyond.Axle)} wheel, {Name(beyond.Position)}, would be at {beyond.TravelMm:mm} of travel, beyond its readings and the {MeasuredSuspension.ExtensionMm:gap} they are extended by, which reach {beyond.ReachMm:mm}; up to {limit} no outer wheel is."),
            CorneringFailure.AxleUnloaded => $"at {asked}, braked or driven so hard, an axle would carry nothing.",
            CorneringFailure.WorkSpent => $"at {asked} the work allowed for one request was spent before an equilibrium was found.",
            _ => $"at {asked} a wheel would travel or steer further than its suspension, or its readings, reach; up to {limit} it does not.",
        };
    }

    /// <summary>What the balance says: which axle gives up first, how much of its grip each uses, how steer grows, and whose tyres these are.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="limits">The limits with their ranges; null where they were not found.</param>
    /// <param name="car">The car.</param>
    public static string Balance(in SteadyTurn turn, LimitStudy? limits, HandlingCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        var attitude = turn.Attitude;
        var share = attitude.FrontLoadTransferPct is { } pct ? Prose.Write(UnitSystem.Metric, $"The front axle takes {pct:pct0} of the load transfer. ") : "";
        var limit = limits is null ? "" : Limit(limits) + " ";
        return $"{limit}{Used(attitude)} {Along(attitude)}{Gradient(turn)} {share}{Tyres(car)}";
    }

    /// <summary>Which axle gives up first, and at what lateral acceleration.</summary>
    public static string Limit(LimitStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var (front, rear) = (study.Limits.Front, study.Limits.Rear);
        if ((front.LimitG, rear.LimitG) is not ({ } frontG, { } rearG))
        {
            var (known, axle) = front.LimitG is { } one ? (one, CarAxle.Front) : (rear.LimitG, CarAxle.Rear);
            var ended = front.LimitG is null ? front : rear;
            var end = NoLimit(ended);
            return known is { } knownG ? $"The {Name(axle)} gives up first, at {G2(knownG)}; the other axle's limit is unknown: {end}." : $"Which axle gives up first is unknown: {end}.";
        }

        var (first, firstG, other, otherG) = frontG <= rearG ? ("front", frontG, "rear", rearG) : ("rear", rearG, "front", frontG);
        if (study.First is not FirstAxle.Unclear) return $"The {first} gives up first, at {G2(firstG)}; the {other} holds {G2(otherG)}.";
        var frontFirst = study.FrontFirst!.Value;
        var likely = frontG <= rearG ? frontFirst : 1 - frontFirst;
        return likely switch
        {
            >= LeastProbable => Prose.Write(UnitSystem.Metric, $"Which axle gives up first is unclear: probably the {first} ({100 * likely:pct0}), at about ") + $"{G2(firstG)}; the {other} holds about {G2(otherG)}.",
            > 1 - LeastProbable => Prose.Write(UnitSystem.Metric, $"Which axle gives up first is unclear, nearly an even chance ({100 * frontFirst:pct0} for the front): ") + $"the front holds about {G2(frontG)}, the rear about {G2(rearG)}.",
            _ => $"Which axle gives up first is unclear: with the values taken the {first}, at {G2(firstG)} before the {other}'s {G2(otherG)}; " + Prose.Write(UnitSystem.Metric, $"with what is not known of the car the {other} in {100 * (1 - likely):pct0} of the cases drawn."),
        };
    }

    /// <summary>What is less probable than this is not called probable; judgement.</summary>
    public const double LeastProbable = 0.6;

    /// <summary>Why an axle has no limit, as a clause.</summary>
    public static string NoLimit(in AxleLimit limit) => limit.EndedBy switch
    {
        CorneringFailure.RollsOver => $"beyond {G2(limit.StandsToG)} the model finds no balance, as before a roll-over",
        CorneringFailure.TravelNotReached => $"beyond {G2(limit.StandsToG)} a wheel would travel or steer further than its suspension, or its readings, reach",
        CorneringFailure.AxleUnloaded => "braked or driven so hard, an axle would carry nothing",
        _ => "the work allowed for one request was spent before it was found",
    };

    private static string Used(in CorneringAttitude attitude) =>
        Prose.Write(UnitSystem.Metric, $"Here the front uses {Share(attitude.Front)} of its grip, the rear {Share(attitude.Rear)}.");

    private static string Share(in AxleAttitude axle) => axle.GripUsed > AxleAttitude.MostToldGripUsed
        ? Prose.Write(UnitSystem.Metric, $"more than {100 * AxleAttitude.MostToldGripUsed:pct0}")
        : Prose.Write(UnitSystem.Metric, $"{100 * axle.GripUsed:pct0}");

    // What braking or driving takes beside the side force.
    private static string Along(in CorneringAttitude attitude)
    {
        var (front, rear) = (attitude.Front.LongitudinalUsed, attitude.Rear.LongitudinalUsed);
        if (front == 0 && rear == 0) return "";
        var braked = attitude.Front.LongitudinalN + attitude.Rear.LongitudinalN < 0;
        return (braked ? "Braking" : "Driving") + " takes " + string.Join(", ", ((string Axle, double Used)[])[("front", front), ("rear", rear)] is var both
            ? both.Where(one => one.Used > 0).Select(one => double.IsFinite(one.Used)
                ? Prose.Write(UnitSystem.Metric, $"{100 * one.Used:pct0} of what the {one.Axle} tyres hold lengthwise")
                : $"more than the {one.Axle} tyres hold lengthwise")
            : []) + ". ";
    }

    private static string Gradient(in SteadyTurn turn) => (turn.UndersteerDegPerG, turn.NoGradient) switch
    {
        ({ } degrees, _) when Math.Abs(degrees) < NeutralDegPerG => "Taken harder at this radius the car needs as much steer as now (neutral).",
        ( > 0 and var degrees, _) => Prose.Write(UnitSystem.Metric, $"Taken harder at this radius the car needs more steer, about {degrees / 10:deg} for 0.1 g (understeer)."),
        ({ } degrees, _) => Prose.Write(UnitSystem.Metric, $"Taken harder at this radius the car needs less steer, about {-degrees / 10:deg} for 0.1 g (oversteer)."),
        (_, NoGradientReason.NearLimit) => "An understeer gradient tells nothing here: an axle uses more than nine tenths of its grip.",
        (_, NoGradientReason.WheelLifted) => "An understeer gradient tells nothing here: a wheel has left the road.",
        _ => "The understeer gradient has no value here: there is no equilibrium just beside this turn.",
    };

    // The digits in which a lateral acceleration can be measured in a car.
    private static string G2(double lateralG) => FormattableString.Invariant($"{lateralG:0.00} g");

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

    private static string Tyres(HandlingCar car) => (car.Front.CorneringStiffnessNPerDeg is not null, car.Rear.CorneringStiffnessNPerDeg is not null) switch
    {
        (true, true) => "The cornering stiffness is yours; how it falls off towards the peak is a published tyre's, of your sizes.",
        (false, false) => "The tyres are a published one in your sizes: trust differences between settings of this car more than the figures themselves.",
        (true, false) => "The front's cornering stiffness is yours, the rear tyres are a published one in your size: the balance is uncertain.",
        _ => "The rear's cornering stiffness is yours, the front tyres are a published one in your size: the balance is uncertain.",
    };
}
