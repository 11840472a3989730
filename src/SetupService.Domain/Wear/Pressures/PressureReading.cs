using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>What is known of one tyre's pressure; gauge, kPa; what is not known is null.</summary>
/// <param name="Position">Whose tyre.</param>
/// <param name="ColdKpa">Set cold, before the session.</param>
/// <param name="HotKpa">Read hot, right after it.</param>
/// <param name="AimColdKpa">Wanted cold.</param>
/// <param name="AimHotKpa">Wanted hot.</param>
public readonly record struct PressureReading(WheelPosition Position, double? ColdKpa, double? HotKpa, double? AimColdKpa, double? AimHotKpa)
{
    /// <summary>Least and most gauge pressure that is told, kPa; what comes out beyond is not.</summary>
    public static (double LeastKpa, double MostKpa) Told => (80, 500);

    /// <summary>Whether a pressure is one that is told.</summary>
    public static bool IsTold(double kpa) => kpa >= Told.LeastKpa && kpa <= Told.MostKpa;
}
