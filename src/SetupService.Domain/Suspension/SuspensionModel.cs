using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Suspension;

/// <summary>
/// What is known of how the wheels of an axle move. It answers one question: where is the wheel at this travel and rack, which figures
/// follow, how sure are they, and what is unknown and why. Exactly three cases: from hardpoints
/// (<see cref="HardpointSuspension"/>), from readings (<see cref="MeasuredSuspension"/>) and from a few figures (<see cref="FigureSuspension"/>).
/// Immutable and made once per axle; safe for several threads. Left wheel, axes and signs as ISO 8855; a right wheel is its mirror image.
/// </summary>
public abstract class SuspensionModel
{
    private protected SuspensionModel()
    {
    }

    /// <summary>The kind of suspension, by which typical values are chosen; null where nobody said.</summary>
    public abstract SuspensionLayout? Layout { get; }

    /// <summary>Which figures it tells by itself. What it does not tell is taken from <see cref="WheelSetup"/>.</summary>
    public abstract SuspensionFigures Tells { get; }

    /// <summary>Why the points or readings make no suspension, the first to look at first; empty where they do.</summary>
    public abstract IReadOnlyList<Contradiction> Contradictions { get; }

    /// <summary>
    /// Cautions about inputs that can hardly both be right, such as a sign typed wrong; each names both by JSON pointer. Empty where nothing
    /// contradicts.
    /// </summary>
    /// <param name="axle">JSON pointer of what holds <c>suspension</c> and <c>alignment</c>; empty at the top of a body.</param>
    /// <param name="units">Units of the sentences.</param>
    public virtual IReadOnlyList<Caution> Cautions(string axle, UnitSystem units = UnitSystem.Metric) => [];

    /// <summary>True where both wheels moving alike lean otherwise than both moving oppositely: a twist beam.</summary>
    public virtual bool HasTwoMotions => false;

    /// <summary>From the points of the left corner; they may contradict each other.</summary>
    /// <param name="points">The points.</param>
    /// <param name="pointErrorMm">Standard deviation of each coordinate, mm; 0 = the points are exact.</param>
    public static SuspensionModel From(Hardpoints points, double pointErrorMm = 0)
    {
        ArgumentNullException.ThrowIfNull(points);
        return new HardpointSuspension(points, pointErrorMm);
    }

    /// <summary>From what was read of the left corner; the readings may contradict each other.</summary>
    public static SuspensionModel From(CornerReadings readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        return new MeasuredSuspension(readings);
    }

    /// <summary>From nothing but the few figures of <see cref="WheelSetup"/>, of a kind of suspension nobody named.</summary>
    public static SuspensionModel FromFigures { get; } = new FigureSuspension(null);

    /// <summary>From nothing but the few figures of <see cref="WheelSetup"/>, of a known kind of suspension.</summary>
    public static SuspensionModel FromFiguresOf(SuspensionLayout? layout) => layout is null ? FromFigures : new FigureSuspension(layout);

    /// <summary>What it takes although nobody said so, for the calls that work out a corner; of nothing described, nothing.</summary>
    /// <param name="axle">JSON pointer of what holds <c>suspension</c> and <c>alignment</c>.</param>
    /// <param name="setup">How the wheel is set.</param>
    public virtual IReadOnlyList<Assumption> Assumptions(string axle, WheelSetup setup) => [];

    /// <summary>Why nothing is known of the wheel at the ride height asked for, once a sweep or an adjustment has found that so.</summary>
    public abstract RideHeightGap WhyNotAtRide(WheelSetup setup);

    /// <summary>The mechanism of a wheel set in a certain way; null where no points are known.</summary>
    public virtual CornerMechanism? Mechanism(WheelSetup setup) => null;

    /// <summary>Standard deviation of each coordinate of its points, mm; 0 where there are none, or they count as exact.</summary>
    public virtual double PointErrorMm => 0;

    /// <summary>For each coordinate of its points the suspension with it a standard deviation greater, and smaller; none where they count as exact.</summary>
    public virtual IEnumerable<(SuspensionModel More, SuspensionModel Less)> Moved() => [];

    /// <summary>What one standard deviation of a coordinate changes in a figure, from the figure of both of its <see cref="Moved"/> suspensions.</summary>
    public virtual double Deviation(double withMore, double withLess) => 0;

    /// <summary>True where it has a linkage that sets the wheel's toe, so that toe could be reset.</summary>
    public virtual bool HasTieRod => false;

    /// <summary>True where toe at other travels follows from it.</summary>
    public virtual bool TellsToe => true;

    /// <summary>Scrub radius at the ride height the wheel is set to, mm; null where the points do not tell it.</summary>
    public virtual double? ScrubRadiusMm(WheelSetup setup) => null;

    /// <summary>The same suspension with its wheel mounted further out along its spin axis, as another offset or a spacer stands it; travel is then counted at the wheel's new place.</summary>
    /// <param name="outboardMm">How much further out, mm; negative = further in.</param>
    /// <param name="setup">How the wheel is set; of it only camber and toe are looked at.</param>
    public virtual SuspensionModel WithWheelMoved(double outboardMm, WheelSetup setup) => this;

    /// <summary>The same suspension after its camber was set to another value at the stated position: what was read of it was read at the camber before.</summary>
    /// <param name="changeDeg">How much more camber, degrees; negative = further in at the top.</param>
    public virtual SuspensionModel WithCamberSet(double changeDeg) => this;

    /// <summary>JSON pointer within the axle to its readings over travel, as they were sent.</summary>
    public virtual string ReadingsPointer => "/suspension/readings";

    /// <summary>The method page of a sweep over it.</summary>
    public virtual string SweepMethod => "travel-sweep";

    /// <summary>Camber read at the stated position, degrees; null where none was read.</summary>
    public virtual double? ReadCamberDeg => null;

    /// <summary>Toe read at the stated position, degrees; null where none was read.</summary>
    public virtual double? ReadToeDeg => null;

    /// <summary>What it tells of the wheel at the stated position; null where it contradicts itself or does not hold its wheel there.</summary>
    /// <param name="setup">How the wheel is set; of it only camber, toe, loaded radius and motion are looked at.</param>
    public abstract StatedFigures? AtStated(WheelSetup setup);

    /// <summary>
    /// The motion of a wheel set in a certain way, to be asked position by position without allocating; null where the suspension
    /// contradicts itself or does not reach the ride height asked for.
    /// </summary>
    public abstract WheelMotion? MotionOf(WheelSetup setup);

    /// <summary>
    /// The wheel's path between two travels, the rack in the middle: lean and sideways movement at steps of at most
    /// <see cref="WheelPath.LongestStepMm"/>, and what of it is unknown, why, and which inputs would settle it.
    /// </summary>
    /// <param name="setup">How the wheel is set; of it only camber, toe and motion are looked at.</param>
    /// <param name="fromMm">Travel from the stated position the path starts at, mm; positive = bump.</param>
    /// <param name="toMm">Travel it ends at, mm; may be less than <paramref name="fromMm"/>.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    public abstract WheelPath PathOver(WheelSetup setup, double fromMm, double toMm, WorkBudget? budget = null);
}
