using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>The cautions that go with a car in a turn: what can hurt somebody who acts on it.</summary>
public static class CorneringCautions
{
    /// <summary>Nearer to roll-over than this, g, is told.</summary>
    public const double RollOverMarginG = 0.15;

    private static readonly Caution SteadyTurnOnly = new(
        "steadyTurnOnly",
        "This is a steady turn on a level, even, dry road, without braking, wind or kerbs. A real corner asks more: keep a margin to every limit named here.");

    private static readonly Caution WhereLawful = new(
        "tryOnlyWhereLawful",
        "Try how a car behaves near its limit only where that is lawful and safe, on closed ground and building up step by step; what may be changed on a road car is decided by local law and those licensed to approve it.");

    /// <summary>Those of turns solved, hardest last.</summary>
    /// <param name="turns">The turns.</param>
    /// <param name="rollsOverAtG">Up to which lateral acceleration the car stands, where that is near or was asked beyond; else null.</param>
    /// <param name="heldLateralG">What the tyres are said to hold, g, or null.</param>
    public static IReadOnlyList<Caution> Build(IReadOnlyList<SteadyTurn> turns, double? rollsOverAtG, double? heldLateralG)
    {
        ArgumentNullException.ThrowIfNull(turns);
        var list = new List<Caution>();
        if (rollsOverAtG is { } limitG)
        {
            list.Add(new("nearRollOver",
                $"By this model the car stands up to {CorneringWords.G(limitG)} and would roll over beyond. A kerb, a rut, a soft edge or a swerve overturns the car before; stay well below."));
        }

        if (First(turns, wheel => wheel.IsLifted) is var (liftedG, lifted))
        {
            list.Add(new("wheelLifted",
                $"At {CorneringWords.G(liftedG)} the {lifted} wheel{(lifted.Contains(" and ") ? "s leave" : " leaves")} the road: the other axle carries what is left of the roll, and grip on a driven or braked wheel is gone."));
        }

        if (First(turns, wheel => wheel.IsOnBumpStop) is var (pressedG, pressed))
        {
            list.Add(new("onBumpStop",
                $"At {CorneringWords.G(pressedG)} the {pressed} wheel{(pressed.Contains(" and ") ? "s stand on their bump stops" : " stands on its bump stop")}: a bump there is met by the stop, the load jumps and the balance changes at once."));
        }

        if (AtTheirLimit(turns, heldLateralG) is { } usedG)
        {
            list.Add(new("tyresAtTheirLimit",
                $"At {CorneringWords.G(usedG)} the tyres have little to spare by what is known of them: some more speed, water or a bump, and the car slides."));
        }

        list.Add(SteadyTurnOnly);
        list.Add(WhereLawful);
        return list;
    }

    private static (double LateralG, string Wheels)? First(IReadOnlyList<SteadyTurn> turns, Predicate<WheelAttitude> holds)
    {
        foreach (var turn in turns.OrderBy(turn => turn.Attitude.Demand.LateralG))
        {
            var attitude = turn.Attitude;
            var wheels = Array.FindAll(Enum.GetValues<WheelPosition>(), wheel => holds(attitude.At(wheel)));
            if (wheels.Length > 0) return (attitude.Demand.LateralG, CorneringWords.Wheels(wheels));
        }

        return null;
    }

    private static double? AtTheirLimit(IReadOnlyList<SteadyTurn> turns, double? heldLateralG)
    {
        var used = turns.Select(turn => turn.Attitude)
            .Where(one => heldLateralG is { } held ? one.Demand.LateralG * CorneringSolver.GripReserve >= held : one.PeakScale > 1)
            .Select(one => one.Demand.LateralG).ToList();
        return used.Count > 0 ? used.Min() : null;
    }
}
