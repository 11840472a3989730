using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Cornering;

/// <summary>Puts down one turn with all it rests on.</summary>
internal static class CorneringAnswers
{
    /// <summary>The answer of a turn that has an equilibrium.</summary>
    public static CorneringAnswer Create(CorneringEvaluation car, in SteadyTurn turn)
    {
        var row = TurnAnswers.Row(car, turn);
        return new CorneringAnswer
        {
            LateralG = row.LateralG,
            SpeedKmh = row.SpeedKmh,
            CornerRadiusM = row.CornerRadiusM,
            RollDeg = row.RollDeg,
            RollDegPerG = row.RollDegPerG,
            SteerDeg = row.SteerDeg,
            SteeringWheelDeg = row.SteeringWheelDeg,
            TyrePeakScale = row.TyrePeakScale,
            Wheels = row.Wheels,
            Axles = row.Axles,
            RollStiffnessFrontPct = row.RollStiffnessFrontPct,
            Balance = row.Balance,
            Unknown = TurnGaps.Find(car.Reading.Car, [row], car.Units),
            Method = "cornering",
            Edition = Edition.Current,
            Assumptions = TurnAssumptions.List(car, [turn], turn.Attitude, ""),
            Cautions = CautionResponse.From([.. CorneringCautions.Build([turn], car.Run.RollOverWithin(row.LateralG, CorneringCautions.RollOverMarginG), car.HeldLateralG), .. car.Stated.SuspensionCautions(car.Units)]),
        };
    }
}
