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
        var (effects, others) = (car.Run.Effects(car.Reading, hardest.Demand.LateralG), CorneringAssumptions.Build(car.Reading, car.Scale));
        var parts = new AssumptionResponse[effects.Count + others.Count];
        for (var i = 0; i < effects.Count; i++) parts[i] = Effect(effects[i], limits, hardest.Demand.Turn, outputs);
        for (var i = 0; i < others.Count; i++) parts[effects.Count + i] = AssumptionResponse.From(others[i]);
        return parts;
    }

    private static AssumptionResponse Effect(CorneringEffect effect, LimitStudy limits, TurnDirection turn, TurnOutputs outputs)
    {
        var (front, rear) = Outer(turn);
        var moved = limits.EffectOf(effect.Assumed.Input);
        var moves = new MoveResponse[moved is null ? 3 : 5];
        moves[0] = new() { Output = outputs.Roll, Lower = effect.AtLower?.RollDeg, Upper = effect.AtUpper?.RollDeg };
        moves[1] = Inclination(outputs.FrontInclination, front);
        moves[2] = Inclination(outputs.RearInclination, rear);
        if (moved is not null)
        {
            var (frontG, rearG) = (limits.Limits.Front.LimitG, limits.Limits.Rear.LimitG);
            moves[3] = new() { Output = outputs.FrontLimit, Lower = frontG + moved.AtLower.Front, Upper = frontG + moved.AtUpper.Front };
            moves[4] = new() { Output = outputs.RearLimit, Lower = rearG + moved.AtLower.Rear, Upper = rearG + moved.AtUpper.Rear };
        }

        return WithRange(effect.Assumed, moves);

        MoveResponse Inclination(string output, WheelPosition wheel) =>
            new() { Output = output, Lower = effect.AtLower?.InclinationAngleDeg(wheel), Upper = effect.AtUpper?.InclinationAngleDeg(wheel) };
    }

    private static AssumptionResponse WithRange(AssumedInput assumed, MoveResponse[]? moves = null) => AssumptionResponse.From(assumed.ToAssumption()) with
    {
        Plausible = new PlausibleResponse { Lower = assumed.Lower, Upper = assumed.Upper },
        Moves = moves,
    };

    private static (WheelPosition Front, WheelPosition Rear) Outer(TurnDirection turn) => turn == TurnDirection.Left
        ? (WheelPosition.FrontRight, WheelPosition.RearRight)
        : (WheelPosition.FrontLeft, WheelPosition.RearLeft);
}

/// <summary>JSON Pointers to the outputs of an answer that assumptions are followed in.</summary>
internal sealed record TurnOutputs(string Roll, string FrontInclination, string RearInclination, string FrontLimit, string RearLimit);
