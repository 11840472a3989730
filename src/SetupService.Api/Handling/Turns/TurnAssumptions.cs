using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.Turns;

/// <summary>What a call on turns assumes, with how far its main outputs move.</summary>
internal static class TurnAssumptions
{
    /// <summary>All of it: the car's scalars, then what is no scalar.</summary>
    /// <param name="car">The car.</param>
    /// <param name="turns">The turns answered, one at least.</param>
    /// <param name="hardest">The one outputs are followed in.</param>
    /// <param name="place">JSON Pointer to it in the answer.</param>
    public static AssumptionResponse[] List(CorneringEvaluation car, IReadOnlyList<SteadyTurn> turns, in CorneringAttitude hardest, string place)
    {
        var (front, rear) = Outer(hardest.Demand.Turn);
        return List(car, turns, hardest, ($"{place}/rollDeg", Inclination(front), Inclination(rear)));

        string Inclination(WheelPosition wheel) => $"{place}/wheels/{EnumNames<WheelPosition>.GetName(wheel)}/inclinationDeg";
    }

    /// <summary>The same for an answer that names these outputs otherwise.</summary>
    public static AssumptionResponse[] List(
        CorneringEvaluation car, IReadOnlyList<SteadyTurn> turns, in CorneringAttitude hardest, (string Roll, string FrontInclination, string RearInclination) outputs)
    {
        var turn = hardest;
        var effects = CorneringEffect.Compute(car.Reading, car.Path, turn.Demand.LateralG, car.HeldLateralG, car.Budget);
        var rest = CorneringAssumptions.Build(
            car.Reading, turns.Min(one => one.Attitude.PeakScale), turns.Max(one => one.Attitude.PeakScale), car.HeldLateralG);
        return [.. effects.Select(one => Effect(one, turn.Demand.Turn, outputs)), .. AssumptionResponse.From(rest)];
    }

    private static AssumptionResponse Effect(CorneringEffect effect, TurnDirection turn, (string Roll, string FrontInclination, string RearInclination) outputs)
    {
        var (front, rear) = Outer(turn);
        return AssumptionResponse.From(effect.Assumed.ToAssumption()) with
        {
            Plausible = new PlausibleResponse { Lower = effect.Assumed.Lower, Upper = effect.Assumed.Upper },
            Moves =
            [
                Move(effect, outputs.Roll, one => one.RollDeg),
                Move(effect, outputs.FrontInclination, one => one.At(front).InclinationAngleDeg),
                Move(effect, outputs.RearInclination, one => one.At(rear).InclinationAngleDeg),
            ],
        };
    }

    private static (WheelPosition Front, WheelPosition Rear) Outer(TurnDirection turn) => turn == TurnDirection.Left
        ? (WheelPosition.FrontRight, WheelPosition.RearRight)
        : (WheelPosition.FrontLeft, WheelPosition.RearLeft);

    private static MoveResponse Move(CorneringEffect effect, string output, Func<CorneringAttitude, double> figure) => new()
    {
        Output = output,
        Lower = effect.AtLower is { } lower ? figure(lower) : null,
        Upper = effect.AtUpper is { } upper ? figure(upper) : null,
    };
}
