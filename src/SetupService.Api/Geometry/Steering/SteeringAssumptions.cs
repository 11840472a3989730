using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>What the calls on steering take although nobody gave it.</summary>
internal static class SteeringAssumptions
{
    private static readonly Assumption LeftWheel = new(
        "/side", null, "left", "the contract's default", "Steer is positive to the left on both sides, so a right wheel leans the other way with it.");

    private static readonly Assumption GaugeError = new(
        "/gaugeErrorDeg", CasterReadings.DefaultGaugeErrorDeg, null, "common practice, no source",
        "Standard error of one camber reading; every standard error and range grows with it in proportion, the angles themselves do not change.");

    /// <summary>Of a steer sweep.</summary>
    public static List<Assumption> Of(SteerSweepRequest request)
    {
        var list = new List<Assumption>();
        if (request.Side is null) list.Add(LeftWheel);
        if (SteerSweepReading.Missing(request).Length == 0) list.Add(GeometryAssumptions.ThinTyre);
        return list;
    }

    /// <summary>Of readings on turn plates.</summary>
    public static List<Assumption> Of(CasterFromReadingsRequest request)
    {
        var list = new List<Assumption>();
        if (request.Side is null) list.Add(LeftWheel);
        if (request.GaugeErrorDeg is null) list.Add(GaugeError);
        return list;
    }
}
