using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Handling.CorneringSweep;

/// <summary>Takes a car through a sweep of turns and puts down what it gives.</summary>
internal static class CorneringSweepAnswers
{
    /// <summary>The answer; null where not one turn has an equilibrium, with why the first has none.</summary>
    public static CorneringSweepAnswer? Solve(CorneringEvaluation car, SweepRange range, TurnDetail detail, CancellationToken cancellation, out CorneringObstacle? first)
    {
        var turns = new List<SteadyTurn>(range.Count);
        var missed = new List<CorneringObstacle>();
        var unreachable = new List<UnreachableTurnResponse>();
        for (var i = 0; i < range.Count; i++)
        {
            cancellation.ThrowIfCancellationRequested();

            // 0.1 + 2·0.1 is a little more than 0.3; what is asked stays within what may be asked.
            var lateralG = Math.Clamp(range[i], Math.Min(range.From, range.To), Math.Max(range.From, range.To));
            if (car.Run.At(lateralG, out var obstacle) is { } turn)
            {
                turns.Add(turn);
                continue;
            }

            missed.Add(obstacle!.Value);
            unreachable.Add(new() { LateralG = lateralG, Reason = CorneringWords.Reason(obstacle.Value, car.Units), LimitG = obstacle.Value.LimitG });
        }

        first = missed.Count > 0 ? missed[0] : null;
        return turns.Count > 0 ? Create(car, turns, missed, unreachable, detail) : null;
    }

    private static CorneringSweepAnswer Create(CorneringEvaluation car, List<SteadyTurn> turns, List<CorneringObstacle> missed, List<UnreachableTurnResponse> unreachable, TurnDetail detail)
    {
        var limits = detail == TurnDetail.Full ? car.Limits(turns.Max(turn => turn.Attitude.Demand.LateralG)) : null;
        TurnRow[] rows = [.. turns.Select(turn => TurnAnswers.Row(car, turn, limits))];
        var hardest = Array.IndexOf(rows, rows.MaxBy(row => row.LateralG));
        return new CorneringSweepAnswer
        {
            Rows = rows,
            Unreachable = [.. unreachable],
            Limit = TurnAnswers.Limit(limits),
            Unknown = TurnGaps.Find(car, rows, limits),
            Method = "cornering",
            Edition = Edition.Current,
            Assumptions = TurnAssumptions.List(car, limits, turns[hardest].Attitude, FormattableString.Invariant($"/rows/{hardest}")),
            Cautions = CautionResponse.From([.. CorneringCautions.Build([.. turns.Select(turn => turn.Attitude)], RollsOverAt(car, missed, rows[hardest].LateralG), limits?.Limits), .. car.Stated.SuspensionCautions(car.Units)]),
        };
    }

    private static double? RollsOverAt(CorneringEvaluation car, List<CorneringObstacle> missed, double hardestG)
    {
        var fallen = missed.FindIndex(one => one.Failure == CorneringFailure.RollsOver);
        return fallen >= 0 ? missed[fallen].LimitG : car.Run.RollOverWithin(hardestG, CorneringCautions.RollOverMarginG);
    }
}
