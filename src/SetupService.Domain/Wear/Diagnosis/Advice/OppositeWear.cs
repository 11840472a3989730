using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>
/// The two tyres of an axle worn at opposite shoulders, one outside and one inside: their mean looks even and says nothing. No camber or toe alike on both does that (derived): one was
/// read from the wrong side or turned on its rim, or the wheels run slanted to the car.
/// </summary>
/// <param name="Axle">Which axle.</param>
/// <param name="IsLeftOuter">True where the left tyre is worn outside and the right one inside.</param>
internal sealed record OppositeWear(CarAxle Axle, bool IsLeftOuter)
{
    /// <summary>Finds it at each axle; both axles alike on a car that sees a track tell of a track that turns one way.</summary>
    public static IReadOnlyList<OppositeWear> Find(WearStudy study)
    {
        OppositeWear[] found = [.. ((CarAxle[])[CarAxle.Front, CarAxle.Rear]).Select(at => Find(study, at)).OfType<OppositeWear>()];
        return found is [var front, var rear] && front.IsLeftOuter == rear.IsLeftOuter && study.Case.Use.TrackLaps is not 0 ? [] : found;
    }

    /// <summary>Finds it; null where the two are worn alike, or were not read closely enough to tell.</summary>
    private static OppositeWear? Find(WearStudy study, CarAxle at) =>
        ShouldersApart.Compute(study, at) is not { } sides || ShouldersApart.IsOrdinary(sides.Left) || ShouldersApart.IsOrdinary(sides.Right) || ShouldersApart.IsOuter(sides.Left) == ShouldersApart.IsOuter(sides.Right)
            ? null : new(at, ShouldersApart.IsOuter(sides.Left));

    /// <summary>The study without what the mean of the two says of the camber.</summary>
    public WearStudy WithoutMean(WearStudy study) => Axle == CarAxle.Front
        ? study with { FrontShort = study.FrontShort with { Shoulders = null, ByTreads = null } }
        : study with { RearShort = study.RearShort with { Shoulders = null, ByTreads = null } };

    /// <summary>What to look at before anything is set.</summary>
    public ReadingContradiction Contradiction()
    {
        var end = Axle == CarAxle.Front ? "front" : "rear";
        var (left, right) = IsLeftOuter ? ("outer", "inner") : ("inner", "outer");
        return new(
            null, ContradictionOf.Shoulders,
            $"The {end} left tyre is worn at its {left} shoulder, the {end} right one at its {right} shoulder: no camber or toe set alike on both does that. " +
            "Check that one was not read from the wrong side, or turned on its rim. If both are right, have the thrust line and the toe of each wheel against it measured, and look for bent parts.")
        { Axle = Axle };
    }
}

/// <summary>How unevenly the shoulders of an axle's two tyres are worn, where they differ by more than the other axle and the gauge explain.</summary>
/// <param name="Left">Wear of the left tyre's outer shoulder less that of its inner one, by the mean wear.</param>
/// <param name="Right">The right tyre's.</param>
internal readonly record struct ShouldersApart(double Left, double Right)
{
    /// <summary>Compares them; null where both are worn alike, were not read closely enough to tell, or are known not to be a pair.</summary>
    public static ShouldersApart? Compute(WearStudy study, CarAxle at)
    {
        if (Array.Find(study.Diagnosis.Axles, axle => axle.Axle == at)?.Signs is not { } signs || signs[WearMark.TyresDiffer] is true) return null;
        if ((signs[WearSign.ShoulderDifference], signs[WearSign.ShoulderDifferenceAcrossAxle]) is not ({ } mean, { } across)) return null;
        var (usual, variance) = AxleSetting.From(study.Case, at).Baseline(WearTable.BaselineOf(WearSign.ShoulderDifferenceAcrossAxle), signs.Other?[WearSign.ShoulderDifferenceAcrossAxle]);
        var open = Math.Sqrt(variance + (across.StandardError * across.StandardError));
        if (Math.Abs(across.Value - usual) <= Uncertainty.StandardErrorsAtNinetyPct * open) return null;
        return new(mean.Value + (across.Value / 2), mean.Value - (across.Value / 2));
    }

    /// <summary>True where a tyre is worn as a sound car's use wears it.</summary>
    public static bool IsOrdinary(double difference) => Math.Abs(difference - EvenWear.Usual.Value) <= Uncertainty.StandardErrorsAtNinetyPct * EvenWear.Usual.StandardError;

    /// <summary>True where it is worn outside more than that.</summary>
    public static bool IsOuter(double difference) => difference > EvenWear.Usual.Value;
}
