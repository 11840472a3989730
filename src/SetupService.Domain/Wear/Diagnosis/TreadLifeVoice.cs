using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>By what an axle's treads tell how a change of its camber, degrees, multiplies the life of their fastest-worn place: by the wear model learned from them, or by the shoulders as read.</summary>
public static class TreadLifeVoice
{
    // A step that shows at the tyres, degrees; judgement.
    private const double StepDeg = 0.5;

    /// <summary>
    /// True where the model expects a step toward what uneven shoulders ask for to wear them out sooner: it contradicts what was read, and its word on the life of these treads does not count.
    /// </summary>
    /// <param name="study">The diagnosis.</param>
    /// <param name="at">Which axle.</param>
    public static bool ModelContradictsShoulders(WearStudy study, CarAxle at)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.ShortAt(at) is not { IsEven: false, ByTreads: { } asked }) return false;
        var stepDeg = -Math.Clamp(asked.Value, -StepDeg, StepDeg);
        return ByShoulders(study, at, stepDeg) > 1 && ByModel(study, at, stepDeg) < 1;
    }

    /// <summary>By the model, the car solved anew with that camber; null where there is none, or no equilibrium.</summary>
    public static double? ByModel(WearStudy study, CarAxle at, double changeDeg)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.At(at) is { HasUse: true, ReadingCount: > 0 } learned && study.UseWith(at, changeDeg) is { } set ? learned.LifeRatio(set) : null;
    }

    /// <summary>By the shoulders; null where they were not read.</summary>
    public static double? ByShoulders(WearStudy study, CarAxle at, double changeDeg)
    {
        ArgumentNullException.ThrowIfNull(study);
        var voices = study.ShortAt(at);
        return voices.Shoulders is { } shoulders
            ? EvenWear.LifeRatio(shoulders.Value, study.Diagnosis.Sign(at, WearSign.CrownDifference)?.Value ?? 0, voices.DifferencePerDeg, changeDeg)
            : null;
    }
}
