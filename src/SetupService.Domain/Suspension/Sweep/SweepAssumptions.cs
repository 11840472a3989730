using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>What the calls that move both wheels of an axle use although nobody gave it.</summary>
public static class SweepAssumptions
{
    /// <summary>The diameter toe in mm is measured at.</summary>
    public static Assumption MeasuringDiameter { get; } = new(
        "/measuringDiameterMm", AxleInputs.DefaultMeasuringDiameterMm, null, "common practice, no source",
        "Toe as a length depends on the diameter it is measured at; degrees do not.");

    /// <summary>A twist beam of which nobody said how its wheels move.</summary>
    public static Assumption Parallel { get; } = new(
        "/motion", null, "parallel", "the contract's default", "A twist beam moves otherwise in roll than in heave; both wheels are taken to move alike.");

    /// <summary>A motion that was given and means nothing.</summary>
    private static readonly Assumption UnusedMotion = new("/motion", null, "not used", "the points given", "Only a twist beam moves its wheel otherwise in roll than in heave.");

    /// <summary>Adds what is to be said of the motion, so that none that is given is passed over in silence.</summary>
    /// <param name="list">The list.</param>
    /// <param name="suspension">The suspension.</param>
    /// <param name="motion">The motion as given; null where it was not.</param>
    /// <param name="parallel">What is said where it was not, and matters.</param>
    public static void AddMotion(ICollection<Assumption> list, SuspensionModel suspension, AxleMotion? motion, Assumption parallel)
    {
        ArgumentNullException.ThrowIfNull(list);
        ArgumentNullException.ThrowIfNull(suspension);
        if (motion is null && suspension.HasTwoMotions) list.Add(parallel);
        if (motion is not null && !suspension.HasTwoMotions) list.Add(UnusedMotion);
    }
}
