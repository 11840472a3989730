using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>Says what readings do not tell, and what is wrong with them.</summary>
public static class MeasuredWords
{
    /// <summary>Why something is not known.</summary>
    public static string Reason(MeasuredGap gap) => gap switch
    {
        MeasuredGap.ToeNotRead => "toe was not read at two different heights",
        MeasuredGap.CasterNotKnown => "needs alignment.casterDeg, or steerReadings at three different steer angles",
        MeasuredGap.InclinationNotKnown => "needs alignment.steeringAxisInclinationDeg, or steerReadings at three different steer angles",
        MeasuredGap.TopMountNotRead => "needs topMountReadings: camber at two different places of the top mount",
        MeasuredGap.TopMountMovedTooLittle => "in topMountReadings the mount was moved too little for the gauge to tell its effect",
        MeasuredGap.TopMountWrongWay => "in topMountReadings camber goes up with the mount moved inboard, which a strut cannot do; look at the signs",
        _ => "needs the points of the suspension",
    };

    /// <summary>The inputs that would make it known, as JSON Pointers within the axle.</summary>
    public static IReadOnlyList<string> Needs(MeasuredGap gap) => gap switch
    {
        MeasuredGap.ToeNotRead => ["/suspension/readings"],
        MeasuredGap.CasterNotKnown => ["/alignment/casterDeg", "/suspension/steerReadings"],
        MeasuredGap.InclinationNotKnown => ["/alignment/steeringAxisInclinationDeg", "/suspension/steerReadings"],
        MeasuredGap.TopMountNotRead or MeasuredGap.TopMountMovedTooLittle or MeasuredGap.TopMountWrongWay => ["/suspension/topMountReadings"],
        _ => ["/suspension/points"],
    };

    /// <summary>What is wrong with readings, and the member to look at.</summary>
    public static (string Member, string Message) Fault(CornerReadingsFault fault) => fault switch
    {
        CornerReadingsFault.TooFewHeights => ("readings", "camber is read at one height only (within 1 mm); two different heights are needed for a curve."),
        CornerReadingsFault.CamberContradicts => ("readings", "readings at one height (within 1 mm) have cambers further apart than the gauge's error allows (2.5 times gaugeErrorDeg from their mean); keep the one that is right, and check the signs of travelMm and camberDeg."),
        CornerReadingsFault.ToeContradicts => ("readings", "readings at one height (within 1 mm) have toes further apart than the gauge's error allows (2.5 times gaugeErrorDeg from their mean); keep the one that is right."),
        CornerReadingsFault.TopMountContradicts => ("topMountReadings", "readings at one place of the top mount (within 1 mm) have cambers further apart than the gauge's error allows (2.5 times gaugeErrorDeg from their mean); keep the one that is right."),
        _ => ("readings", "a reading is no finite number."),
    };

    /// <summary>Why a wheel travel is not told.</summary>
    public static string BeyondReadings(double travelMm, double fromMm, double toMm, UnitSystem units = UnitSystem.Metric) => Prose.Write(
        units,
        $"the readings go from {fromMm:mm} to {toMm:mm} of travel and are carried on for {TravelCurve.ExtensionMm:mm} at most; {travelMm:mm} is beyond.");
}
