using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Cornering.Effects;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.Turns;

/// <summary>What a call on turns assumes, with how far its main outputs move.</summary>
internal static class TurnAssumptions
{
    /// <summary>All of it: the car's scalars, then what is no scalar.</summary>
    /// <param name="car">The car.</param>
    /// <param name="limits">Its limits with what moves them; null where only what was assumed is asked for.</param>
    /// <param name="hardest">The turn outputs are followed in.</param>
    /// <param name="place">JSON Pointer to it in the answer.</param>
    public static AssumptionResponse[] List(CorneringEvaluation car, LimitStudy? limits, in CorneringAttitude hardest, string place)
    {
        if (limits is null) return [.. car.Reading.Assumed.Select(one => WithRange(one)), .. AssumptionResponse.From(CorneringAssumptions.Build(car.Reading, car.Scale))];
        var (front, rear) = Outer(hardest.Demand.Turn);
        return List(car, limits, hardest, new TurnOutputs($"{place}/rollDeg", Inclination(front), Inclination(rear), "/limit/front/value", "/limit/rear/value"));

        string Inclination(WheelPosition wheel) => $"{place}/wheels/{EnumNames<WheelPosition>.GetName(wheel)}/inclinationDeg";
    }

    /// <summary>The same for an answer that names these outputs otherwise.</summary>
    public static AssumptionResponse[] List(CorneringEvaluation car, LimitStudy limits, in CorneringAttitude hardest, TurnOutputs outputs)
    {
        var turn = hardest;
        var effects = car.Run.Effects(car.Reading, turn.Demand.LateralG);
        return [.. effects.Select(one => Effect(one, limits, turn.Demand.Turn, outputs)), .. AssumptionResponse.From(CorneringAssumptions.Build(car.Reading, car.Scale))];
    }

    private static AssumptionResponse Effect(CorneringEffect effect, LimitStudy limits, TurnDirection turn, TurnOutputs outputs)
    {
        var (front, rear) = Outer(turn);
        MoveResponse[] moves =
        [
            Move(effect, outputs.Roll, one => one.RollDeg),
            Move(effect, outputs.FrontInclination, one => one.InclinationAngleDeg(front)),
            Move(effect, outputs.RearInclination, one => one.InclinationAngleDeg(rear)),
        ];
        if (limits.Effects.FirstOrDefault(one => ReferenceEquals(one.Input, effect.Assumed.Input)) is { } moved)
        {
            var (frontG, rearG) = (limits.Limits.Front.LimitG, limits.Limits.Rear.LimitG);
            moves =
            [
                .. moves,
                new() { Output = outputs.FrontLimit, Lower = frontG + moved.AtLower.Front, Upper = frontG + moved.AtUpper.Front },
                new() { Output = outputs.RearLimit, Lower = rearG + moved.AtLower.Rear, Upper = rearG + moved.AtUpper.Rear },
            ];
        }

        return WithRange(effect.Assumed, moves);
    }

    private static AssumptionResponse WithRange(AssumedInput assumed, MoveResponse[]? moves = null) => AssumptionResponse.From(assumed.ToAssumption()) with
    {
        Plausible = new PlausibleResponse { Lower = assumed.Lower, Upper = assumed.Upper },
        Moves = moves,
    };

    private static (WheelPosition Front, WheelPosition Rear) Outer(TurnDirection turn) => turn == TurnDirection.Left
        ? (WheelPosition.FrontRight, WheelPosition.RearRight)
        : (WheelPosition.FrontLeft, WheelPosition.RearLeft);

    private static MoveResponse Move(CorneringEffect effect, string output, Func<TurnFigures, double> figure) => new()
    {
        Output = output,
        Lower = effect.AtLower is { } lower ? figure(lower) : null,
        Upper = effect.AtUpper is { } upper ? figure(upper) : null,
    };
}

/// <summary>JSON Pointers to the outputs of an answer that assumptions are followed in.</summary>
internal sealed record TurnOutputs(string Roll, string FrontInclination, string RearInclination, string FrontLimit, string RearLimit);
