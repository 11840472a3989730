using SetupService.Domain.Answers;

namespace SetupService.Domain.Geometry;

/// <summary>The cautions that go with suspension geometry: what can hurt somebody who acts on it.</summary>
public static class GeometryCautions
{
    private static readonly Caution SteeringParts = new(
        "steeringAndSuspensionParts",
        "Ball joints, tie rods, clamp bolts and top mounts hold the wheel on. Use parts made for the load, new fasteners where the vehicle maker asks for them and his torques, keep the least thread engagement of a tie rod, and have the work inspected.");

    private static readonly Caution Clearance = new(
        "clearance",
        "What moves the wheel moves it against arch, strut, hoses and shafts. Turn and lift it by hand over the whole travel and lock before driving.");

    private static readonly Caution Alignment = new(
        "alignAfterwards",
        "Have the alignment measured after any such work, and the steering wheel set straight; drive carefully until that is done.");

    private static readonly Caution LocalLaw = new(
        "localLaw",
        "Whether a changed suspension is allowed on the road is decided by local law and by whoever is licensed to approve changes; this answer is not an approval.");

    private static readonly Caution PointsAsGiven = new(
        "pointsAsGiven",
        "Every figure is as good as the points: stiff parts and free joints are assumed, so rubber bushes that give, and points that are slightly off, show on the car and not here.");

    /// <summary>With a sweep: it changes nothing on a car.</summary>
    public static IReadOnlyList<Caution> ForSweep { get; } = [PointsAsGiven];

    /// <summary>With what a workshop is to adjust.</summary>
    public static IReadOnlyList<Caution> ForAdjustment { get; } = [CommonCautions.SpringsUnderLoad, SteeringParts, Clearance, Alignment, LocalLaw, PointsAsGiven];
}
