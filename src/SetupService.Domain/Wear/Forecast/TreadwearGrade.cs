using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>
/// What a treadwear grade says: 100 × the miles to worn out projected on the government's course over 30 000, rounded down to a
/// multiple of 20 (49 CFR 575.104 as NHTSA's interpretation letter 10811 of 1995). Every maker grades its own tyres, on the road
/// and not on a track; between makers the same grade wears differently (Atmospheric Environment 182, 2018, 200-212, abstract).
/// </summary>
public static class TreadwearGrade
{
    /// <summary>Grades are rounded down to multiples of this.</summary>
    public const int Step = 20;

    /// <summary>How far the life two grades promise may be off, as a factor either way, at best: judgement, no source.</summary>
    public const double LeastFactor = 1.5;

    /// <summary>The same at worst, in nine cases of ten: judgement, no source.</summary>
    public const double MostFactor = 2;

    private const double MilesPerPoint = 300;
    private const double KmPerMile = 1.609344;

    /// <summary>The least life on the course that gets a grade, km.</summary>
    public static double CourseKm(double grade) => grade * MilesPerPoint * KmPerMile;

    /// <summary>The expected life of a tyre of another grade over that of this one, in the same use, with its 90 % range by <see cref="MostFactor"/>.</summary>
    public static Uncertainty LifeRatio(double grade, double otherGrade)
    {
        var ratio = otherGrade / grade;
        return new(ratio, ratio / MostFactor, ratio * MostFactor, Uncertainty.NinetyPct);
    }
}

/// <summary>Says what a treadwear grade is and is not.</summary>
public static class TreadwearWords
{
    /// <summary>The sentences as one text.</summary>
    /// <param name="grade">The tyre's grade.</param>
    /// <param name="otherGrade">The grade of one thought of in its place; null where there is none.</param>
    /// <param name="units">Units of the text.</param>
    public static string Describe(double grade, double? otherGrade, UnitSystem units)
    {
        var rounded = grade % TreadwearGrade.Step == 0 ? "" : Prose.Write(units, $" Grades are multiples of {TreadwearGrade.Step}, which {grade:n} is not: read the sidewall again.");
        var text = Prose.Write(units, $"A grade of {grade:n} stands for a projected life of at least {TreadwearGrade.CourseKm(grade):km} on the government's road course (100 times the projected miles over 30,000, rounded down to a multiple of {TreadwearGrade.Step}). Makers grade their own tyres; the grade is no promise of distance and says nothing about track use.{rounded}");
        if (otherGrade is not { } other) return text;
        var ratio = TreadwearGrade.LifeRatio(grade, other).Value;
        return Prose.Write(units, $"{text} Grade {other:n} against {grade:n} promises {ratio:n} times the life in the same use. Expect it to be off by a factor of {TreadwearGrade.LeastFactor:n} to {TreadwearGrade.MostFactor:n} either way (judgement), most of all between makers.");
    }
}
