using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>The cautions that go with a car in a turn: what can hurt somebody who acts on it.</summary>
public static class CorneringCautions
{
    /// <summary>Nearer to roll-over than this, g, is known.</summary>
    public const double RollOverMarginG = 0.15;

    // So near to roll-over the grip of another road or day decides which comes first; judgement.
    private const double HardlySoonerG = 0.1;

    private static readonly Caution SteadyTurnOnly = new(
        "steadyTurnOnly",
        "This is a steady turn on a level, even, dry road, without braking, wind or kerbs. A real bend asks more: keep a margin to every limit named here.");

    private static readonly Caution QuasiSteady = new(
        "quasiSteady",
        "This is a turn braked or driven evenly on a level, even, dry road. Turning in, lifting off and a change of pedal upset the car before it settles, brakes fade and bends have bumps: keep a margin to every limit named here.");

    private static readonly Caution WhereLawful = new(
        "tryOnlyWhereLawful",
        "Try how a car behaves near its limit only where that is lawful and safe, on closed ground and building up step by step; what may be changed on a road car is decided by local law and those licensed to approve it.");

    // A road car that rolls more than this, degrees per g, is told wrong or has no roll stiffness left; 3 to 8 are usual (from memory, and cars that were measured).
    private const double ImplausibleRollDegPerG = 8;
    private const double LeastGForRoll = 0.2;
    private const double AtLimit = 0.95;

    // Rounding of a turn asked for right at the limit.
    private const double Beyond = 1 + 1e-6;

    /// <summary>Those of turns solved.</summary>
    /// <param name="attitudes">The car in them.</param>
    /// <param name="rollsOverAtG">Lateral acceleration at which the car rolls over, g, where it is near or was asked beyond; else null.</param>
    /// <param name="limits">What its axles hold; null = not asked for.</param>
    public static IReadOnlyList<Caution> Build(IReadOnlyList<CorneringAttitude> attitudes, double? rollsOverAtG, GripLimits? limits = null)
    {
        var list = new List<Caution>();
        if (rollsOverAtG is { } limitG)
        {
            list.Add(new("nearRollOver",
                $"Stay well below {CorneringWords.G(limitG)}: by this model the car rolls over beyond it.{Before(limitG, limits)} A kerb, a rut, a soft edge or a swerve overturns it sooner."));
        }

        list.AddRange(OfAttitudes(attitudes));
        list.Add(attitudes.Any(one => one.Demand.LongitudinalG != 0) ? QuasiSteady : SteadyTurnOnly);
        list.Add(WhereLawful);
        return list;
    }

    // Which comes first, sliding or rolling over, where the limits tell.
    private static string Before(double rollsOverAtG, GripLimits? limits)
    {
        if (limits is not { } both) return "";
        if (both.LowerG is not { } slidesAtG || slidesAtG >= rollsOverAtG)
            return both.Front.EndedBy is null or CorneringFailure.RollsOver || both.Rear.EndedBy is null or CorneringFailure.RollsOver ? " Its tyres still hold there: it rolls over before it slides." : "";
        var axle = CorneringWords.Name(both.Front.LimitG <= slidesAtG ? CarAxle.Front : CarAxle.Rear);
        return rollsOverAtG - slidesAtG > HardlySoonerG
            ? $" On level, even ground its {axle} tyres slide before that, at about {CorneringWords.G(slidesAtG)}."
            : $" Its {axle} tyres slide hardly sooner, at about {CorneringWords.G(slidesAtG)}: with a little more grip it rolls over instead.";
    }

    /// <summary>Those of the points of an envelope, each at the car's limit: what may surprise there, and that it is one.</summary>
    public static IReadOnlyList<Caution> AtTheLimit(IReadOnlyList<CorneringAttitude> attitudes) =>
        [.. OfAttitudes(attitudes).Where(one => one.Code is "wheelLifted" or "onBumpStop" or "implausibleRoll"), QuasiSteady, WhereLawful];

    /// <summary>What the attitudes themselves warn of, alike in every call that solves turns: lifted wheels, stops reached, implausible roll, grip used up. Each once, of the easiest turn it happens in.</summary>
    /// <param name="attitudes">The car in the turns, or the cars of several changes in one turn.</param>
    public static IReadOnlyList<Caution> OfAttitudes(IReadOnlyList<CorneringAttitude> attitudes)
    {
        ArgumentNullException.ThrowIfNull(attitudes);
        var list = new List<Caution>();
        var turns = attitudes.OrderBy(one => one.Demand.LateralG).ToList();
        if (First(turns, wheel => wheel.IsLifted) is var (liftedIn, lifted))
        {
            list.Add(new("wheelLifted",
                $"{At(liftedIn)} the {lifted} wheel{(lifted.Contains(" and ") ? "s leave" : " leaves")} the road: the other axle takes all further load transfer, and a lifted wheel cannot drive or brake."));
        }

        if (First(turns, wheel => wheel.IsOnBumpStop) is var (pressedIn, pressed))
        {
            list.Add(new("onBumpStop",
                $"{At(pressedIn)} the {pressed} wheel{(pressed.Contains(" and ") ? "s are on their bump stops" : " is on its bump stop")}; bumps will unsettle the car."));
        }

        if (turns.Exists(IsRollImplausible))
        {
            var one = turns.Find(IsRollImplausible);
            list.Add(new("implausibleRoll", FormattableString.Invariant(
                $"The body rolls {one.RollDeg / one.Demand.LateralG:0.0}° per g; road cars roll 3 to 8. Check springs, motion ratios, anti-roll bars and the height of the centre of gravity before you trust this answer.")));
        }

        if (turns.Exists(one => Along(one) > Beyond))
        {
            var one = turns.Find(attitude => Along(attitude) > Beyond);
            var axle = CorneringWords.Name(one.Front.LongitudinalUsed >= one.Rear.LongitudinalUsed ? CarAxle.Front : CarAxle.Rear);
            list.Add(new("beyondLongitudinalGrip", one.Front.LongitudinalN + one.Rear.LongitudinalN < 0
                ? $"{At(one.Demand)} the {axle} tyres cannot brake so hard: they lock, or an anti-lock system lets go, and they steer and hold no more."
                : $"{At(one.Demand)} the {axle} tyres cannot drive so hard as the differential shares it: a wheel spins."));
        }

        if (turns.Exists(one => Used(one) > Beyond))
        {
            var one = turns.Find(attitude => Used(attitude) > Beyond);
            list.Add(new("beyondLimit",
                $"{At(one.Demand)} the {CorneringWords.Name(one.Front.GripUsed >= one.Rear.GripUsed ? CarAxle.Front : CarAxle.Rear)} tyres would have to give more than they have: by this model the car slides before."));
        }
        else if (turns.Exists(one => Used(one) > AtLimit))
        {
            list.Add(new("tyresAtTheirLimit",
                $"{At(turns.Find(one => Used(one) > AtLimit).Demand)} the tyres have little grip left: a little more speed, water or a bump, and the car slides."));
        }

        return list;
    }

    // A wheel that lifts in a braked turn does not lift in the same turn taken evenly.
    private static string At(in CorneringDemand demand) => $"At {CorneringWords.G(demand.LateralG)}" + demand.LongitudinalG switch
    {
        < 0 => $" while braking at {CorneringWords.G(-demand.LongitudinalG)}",
        > 0 => $" while driving at {CorneringWords.G(demand.LongitudinalG)}",
        _ => "",
    };

    private static double Along(CorneringAttitude attitude) => Math.Max(attitude.Front.LongitudinalUsed, attitude.Rear.LongitudinalUsed);

    private static double Used(CorneringAttitude attitude) => Math.Max(attitude.Front.GripUsed, attitude.Rear.GripUsed);

    private static bool IsRollImplausible(CorneringAttitude attitude) =>
        attitude.Demand.LateralG >= LeastGForRoll && Math.Abs(attitude.RollDeg) > ImplausibleRollDegPerG * attitude.Demand.LateralG;

    private static (CorneringDemand Demand, string Wheels)? First(List<CorneringAttitude> turns, Predicate<WheelAttitude> holds)
    {
        foreach (var attitude in turns)
        {
            var wheels = Array.FindAll(Enum.GetValues<WheelPosition>(), wheel => holds(attitude.At(wheel)));
            if (wheels.Length > 0) return (attitude.Demand, CorneringWords.Wheels(wheels));
        }

        return null;
    }
}
