using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>The cautions that go with a car in a turn: what can hurt somebody who acts on it.</summary>
public static class CorneringCautions
{
    /// <summary>Nearer to roll-over than this, g, is known.</summary>
    public const double RollOverMarginG = 0.15;

    private static readonly Caution SteadyTurnOnly = new(
        "steadyTurnOnly",
        "This is a steady turn on a level, even, dry road, without braking, wind or kerbs. A real bend asks more: keep a margin to every limit named here.");

    private static readonly Caution WhereLawful = new(
        "tryOnlyWhereLawful",
        "Try how a car behaves near its limit only where that is lawful and safe, on closed ground and building up step by step; what may be changed on a road car is decided by local law and those licensed to approve it.");

    /// <summary>Those of turns solved, hardest last.</summary>
    /// <param name="turns">The turns.</param>
    /// <param name="rollsOverAtG">Lateral acceleration at which the car rolls over, g, where it is near or was asked beyond; else null.</param>
    /// <param name="heldLateralG">What the tyres are said to hold, g, or null.</param>
    public static IReadOnlyList<Caution> Build(IReadOnlyList<SteadyTurn> turns, double? rollsOverAtG, double? heldLateralG)
    {
        ArgumentNullException.ThrowIfNull(turns);
        var list = new List<Caution>();
        if (rollsOverAtG is { } limitG)
        {
            list.Add(new("nearRollOver",
                $"Stay well below {CorneringWords.G(limitG)}: by this model the car rolls over beyond it. A kerb, a rut, a soft edge or a swerve overturns it sooner."));
        }

        if (First(turns, wheel => wheel.IsLifted) is var (liftedG, lifted))
        {
            list.Add(new("wheelLifted",
                $"At {CorneringWords.G(liftedG)} the {lifted} wheel{(lifted.Contains(" and ") ? "s leave" : " leaves")} the road: the other axle takes all further load transfer, and a lifted wheel cannot drive or brake."));
        }

        if (First(turns, wheel => wheel.IsOnBumpStop) is var (pressedG, pressed))
        {
            list.Add(new("onBumpStop",
                $"At {CorneringWords.G(pressedG)} the {pressed} wheel{(pressed.Contains(" and ") ? "s are on their bump stops" : " is on its bump stop")}; bumps will unsettle the car."));
        }

        if (AtTheirLimit(turns, heldLateralG) is { } usedG)
        {
            list.Add(new("tyresAtTheirLimit",
                $"At {CorneringWords.G(usedG)} the tyres have little grip left: a little more speed, water or a bump, and the car slides."));
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
