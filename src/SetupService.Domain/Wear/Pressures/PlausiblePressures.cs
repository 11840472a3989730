namespace SetupService.Domain.Wear.Pressures;

/// <summary>The gauge pressures that are told; what comes out beyond them is no setting for a car's tyre.</summary>
public static class PlausiblePressures
{
    /// <summary>The least, kPa.</summary>
    public const double LeastKpa = 80;

    /// <summary>The most, kPa.</summary>
    public const double MostKpa = 500;

    /// <summary>Whether a pressure is told.</summary>
    public static bool Include(double kpa) => kpa is >= LeastKpa and <= MostKpa;
}
