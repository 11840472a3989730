using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Cornering;

/// <summary>Puts down one turn with all it rests on.</summary>
internal static class CorneringAnswers
{
    /// <summary>The answer of a turn that has an equilibrium.</summary>
    public static CorneringAnswer Create(CorneringEvaluation car, in SteadyTurn turn, TurnDetail detail)
    {
        var limits = detail == TurnDetail.Full ? car.Limits(turn.Attitude.Demand.LateralG) : null;
        var row = TurnAnswers.Row(car, turn, limits);
        return new CorneringAnswer
        {
            LateralG = row.LateralG,
            SpeedKmh = row.SpeedKmh,
            CornerRadiusM = row.CornerRadiusM,
            LongitudinalG = row.LongitudinalG,
            PitchDeg = row.PitchDeg,
            RollDeg = row.RollDeg,
            RollDegPerG = row.RollDegPerG,
            SteerDeg = row.SteerDeg,
            SteeringWheelDeg = row.SteeringWheelDeg,
            Wheels = row.Wheels,
            Axles = row.Axles,
            RollStiffnessFrontPct = row.RollStiffnessFrontPct,
            Balance = row.Balance,
            Limit = TurnAnswers.Limit(limits),
            Unknown = TurnGaps.Find(car, [row], limits),
            Method = "cornering",
            Edition = Edition.Current,
            Next = NextCalls.AfterCornering,
            Assumptions = TurnAssumptions.List(car, limits, turn.Attitude, ""),
            Cautions = CautionResponse.From([.. CorneringCautions.Build([turn.Attitude], car.Run.RollOverWithin(row.LateralG, CorneringCautions.RollOverMarginG), limits?.Limits), .. car.Stated.SuspensionCautions(car.Units)]),
        };
    }
}
