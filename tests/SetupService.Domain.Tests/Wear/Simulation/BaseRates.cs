using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>How often each fault is drawn, per axle. Judgement, no source.</summary>
internal static class BaseRates
{
    public const double LowCamberRoad = 0.05;
    public const double HighCamber = 0.08;
    public const double ToeIn = 0.08;
    public const double ToeOut = 0.08;
    public const double UnderInflation = 0.12;
    public const double OverInflation = 0.08;
    public const double WeakDamping = 0.05;
    public const double Imbalance = 0.04;
    public const double Wheelspin = 0.06;
    public const double FrontOverdriven = 0.1;
    public const double MixedTyres = 0.05;
    public const double SideDifference = 0.05;
    public const double OutsideWindow = 0.06;
    public const double RimWidthMismatch = 0.04;

    public static double LowCamber(CarAxle axle, bool hasTrack) => !hasTrack ? LowCamberRoad : axle == CarAxle.Front ? 0.36 : 0.24;

    public static double WheelLocking(CarAxle axle) => axle == CarAxle.Front ? 0.07 : 0.01;

    public static double AxleMisaligned(CarAxle axle) => axle == CarAxle.Front ? 0.02 : 0.08;
}
