namespace SetupService.Domain.Wear.Forecast;

/// <summary>
/// What a treadwear grade says: 100 × the miles to worn out projected on the government's course over 30 000, rounded down to a
/// multiple of 20 (49 CFR 575.104 as NHTSA's interpretation letter 10811 of 1995 tells it). Every maker grades its own tyres, on the road
/// and not on a track; between makers the same grade wears differently (Atmospheric Environment 182, 2018, 200-212, abstract).
/// </summary>
public static class TreadwearGrade
{
    /// <summary>Grades are rounded down to multiples of this.</summary>
    public const int Step = 20;

    /// <summary>How far the life two grades promise may be off, as a factor either way, at best: judgement, no source.</summary>
    public const double LeastFactor = 1.5;

    /// <summary>The same at worst: judgement, no source.</summary>
    public const double MostFactor = 2;

    private const double MilesPerPoint = 300;
    private const double KmPerMile = 1.609344;

    /// <summary>The least life on the course that gets a grade, km.</summary>
    public static double CourseKm(double grade) => grade * MilesPerPoint * KmPerMile;

    /// <summary>The expected life of a tyre of another grade over that of this one, in the same use.</summary>
    public static double LifeRatio(double grade, double otherGrade) => otherGrade / grade;
}
