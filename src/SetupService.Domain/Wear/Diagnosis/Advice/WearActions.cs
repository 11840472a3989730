using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>What to do about each cause, by itself.</summary>
internal static class WearActions
{
    /// <summary>True where a tyre of an axle came from elsewhere, its history is told and the two are not known to differ.</summary>
    public static bool IsHistoryTold(WearStudy study, CarAxle at) =>
        study.Diagnosis.Mark(at, WearMark.MovedOrTurned) is true && study.Diagnosis.Mark(at, WearMark.TyresDiffer) is not true;

    /// <summary>The actions against a cause.</summary>
    /// <param name="study">The diagnosis.</param>
    /// <param name="finding">The cause.</param>
    /// <param name="units">Units of the texts.</param>
    public static IReadOnlyList<WearAction> Build(WearStudy study, CauseFinding finding, UnitSystem units)
    {
        var (wear, at) = (study.Case, finding.Axle ?? CarAxle.Front);
        var end = at == CarAxle.Rear ? "rear" : "front";
        return finding.Cause switch
        {
            WearCause.LowNegativeCamber => [CamberStep.Build(study, at, isMore: true, units)],
            WearCause.HighNegativeCamber => [CamberStep.Build(study, at, isMore: false, units)],
            WearCause.ToeIn => [ToeStep.Build(study, at, isIn: true, units)],
            WearCause.ToeOut => [ToeStep.Build(study, at, isIn: false, units)],
            WearCause.UnderInflation or WearCause.OverInflation => PressureSteps.Build(wear, finding, units),
            WearCause.WeakDamping => [new($"Have the {end} dampers, their mounts, the wheel bearings and the ball joints tested. Replace dampers in pairs, and cupped tyres if they are loud.")],
            WearCause.Imbalance => [new("Have the wheels balanced and checked for run-out, tyre and rim. Replace a bent rim; do not straighten it.")],
            WearCause.WheelLocking => [new("Have the brakes checked, and the anti-lock system where fitted; release some brake pressure towards the end of braking. Replace a flat-spotted tyre that shows cord or shakes.")],
            WearCause.Wheelspin => [new($"Feed the power in later and more slowly out of corners. A tyre or limited-slip setting with more grip cures what remains; more pressure does not. Swap the {end} tyres with the others where sizes and treads allow.")],
            WearCause.FrontOverdriven => [new("Turn in more slowly and wait for the front: less steering on the way to the apex. If the balance is wrong at the limit too, ask the what-if call for bars, springs and camber before buying.")],
            WearCause.MixedTyres when IsHistoryTold(study, at) => [new("Nothing to do: the history you gave says where this wear happened, and it is read for that place. Read again after some driving here.")],
            WearCause.MixedTyres => [new("Compare make, size, week of manufacture and history of the two tyres, and run a matching pair on an axle. Wear from another position says nothing about this one: read again after some driving here.")],
            WearCause.SideDifference => [new($"Measure camber, caster and toe left and right at the {end}, and look for a bent knuckle, arm or strut, worn bushes and joints, and unequal springs. Replace bent parts, never bend them back; have a workshop inspect them before fast driving.")],
            WearCause.AxleMisaligned => [new($"Have the toe of each {end} wheel measured against the car's centre line and the thrust angle set to zero. Check bushes and joints for wear first.")],
            WearCause.BelowTemperatureWindow => [new("Lower the pressure, within what the load needs, or fit a softer compound: the tyre stays cold. More laps per run warm it too.")],
            WearCause.AboveTemperatureWindow => [new("Drive fewer hot laps per run and let the tyres cool. Correct pressure and camber first; a tyre that blisters again is the wrong compound or too small for the work.")],
            WearCause.RimWidthMismatch => [new("Ask the fitment calls for the permitted rim widths, and choose rim or tyre to suit. A tyre on a rim outside them is not approved and can come off.")],
            _ => [new("Change nothing; read again after the next session.")],
        };
    }
}
