using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension;

/// <summary>
/// A suspension of which only a few figures are known: swing arm, roll centre, motion ratios, caster and inclination, stated or typical, as
/// <see cref="WheelSetup"/> carries them. Good for a car as a whole, whose answers list the typical values; it tells no wheel's path.
/// </summary>
public sealed class FigureSuspension : SuspensionModel
{
    private static readonly SuspensionGap NotDescribed = new(SuspensionGapKind.NotDescribed, ["/suspension"]);

    internal FigureSuspension(SuspensionLayout? layout) => Layout = layout;

    /// <inheritdoc />
    public override SuspensionLayout? Layout { get; }

    /// <inheritdoc />
    public override SuspensionFigures Tells => SuspensionFigures.None;

    /// <inheritdoc />
    public override IReadOnlyList<Contradiction> Contradictions => [];

    /// <inheritdoc />
    public override RideHeightGap WhyNotAtRide(WheelSetup setup) => new(
        SuspensionGapKind.NotDescribed,
        "how the angles change with ride height needs the suspension's points, or readings of it; measure the angles as the car stands and leave rideHeightChangeMm out.",
        "/rideHeightChangeMm");

    /// <inheritdoc />
    public override bool TellsToe => false;

    /// <inheritdoc />
    public override StatedFigures? AtStated(WheelSetup setup) => default(StatedFigures);

    /// <inheritdoc />
    public override WheelMotion? MotionOf(WheelSetup setup) => new TabulatedMotion(setup, null);

    /// <inheritdoc />
    public override WheelPath PathOver(WheelSetup setup, double fromMm, double toMm, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        return new() { Points = [], StatedCamberDeg = setup.CamberDeg ?? 0, Gap = NotDescribed, SidewaysGap = NotDescribed };
    }
}
