using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>
/// Follows one wheel from position to position and tells what its suspension knows there. Keeps the last position, so it is not safe for several
/// threads; nothing is allocated between positions.
/// </summary>
public abstract class SuspensionTracker
{
    private protected SuspensionTracker()
    {
    }

    /// <summary>The wheel at the present ride height, the rack in the middle; null where what is known of it does not reach that height.</summary>
    public abstract SuspensionPosition? AtRide { get; }

    /// <summary>Whether steer is known at all, so that both wheels of the axle can be told of together.</summary>
    public abstract bool TellsSteer { get; }

    /// <summary>Distance from the steering axis at the ground outboard to the contact at ride height, mm; null where it is not known.</summary>
    public virtual double? AxisOffsetMm => null;

    /// <summary>The ends of the travel from the present ride height, mm, the rack in the middle.</summary>
    public abstract (double FromMm, double ToMm) Reach { get; }

    /// <summary>Starts at the present ride height; null where the suspension contradicts itself, does not hold its wheel or does not reach it.</summary>
    /// <param name="suspension">What is known of the suspension.</param>
    /// <param name="setup">How the wheel is set.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    public static SuspensionTracker? Start(SuspensionModel suspension, WheelSetup setup, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(suspension);
        ArgumentNullException.ThrowIfNull(setup);
        return suspension switch
        {
            _ when suspension.Contradictions.Count > 0 => null,
            HardpointSuspension points => HardpointTracker.Start(points.Mechanism(setup), setup.RideHeightChangeMm, budget),
            MeasuredSuspension { Corner: { } corner } => new TabulatedTracker(corner, setup, budget),
            _ => null,
        };
    }

    /// <summary>Goes to a wheel travel from the present ride height and a rack travel, mm.</summary>
    /// <returns>False where it cannot be there, or nothing is known of it there; <see cref="WhyNot"/> then tells why.</returns>
    public abstract bool TryReach(double travelMm, double rackMm, out SuspensionPosition position);

    /// <summary>Why the position last asked for was not reached.</summary>
    public abstract UnreachablePosition WhyNot(double travelMm, double rackMm);

    /// <summary>The figures left out at every position, and why.</summary>
    /// <param name="axle">What is known of the whole axle.</param>
    public abstract IReadOnlyList<FigureGap> Gaps(in AxleInputs axle);
}
