namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>How often a cause holds on an axle of the cars whose owners ask, before anything is read.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Front">On a front axle of a car that sees the track.</param>
/// <param name="Rear">On a rear axle of one.</param>
/// <param name="RoadOnly">By how much less often where the car never sees the track; 0 = never.</param>
/// <param name="IsOfDrive">True when only driven wheels can have it.</param>
/// <param name="Source">Where the figure comes from.</param>
public readonly record struct CausePrior(WearCause Cause, double Front, double Rear, double RoadOnly, bool IsOfDrive, string Source);

/// <summary>What a sign is where nothing is wrong.</summary>
/// <param name="Sign">The sign.</param>
/// <param name="Mean">Its mean on a car that sees only the road.</param>
/// <param name="OfTrack">What is added to the mean on a car set up for the track as well.</param>
/// <param name="Spread">Its standard deviation from car to car with no use of the track.</param>
/// <param name="TrackSpread">What the track adds to it, standard deviation, where all wear is of the track.</param>
/// <param name="Source">Where the figures come from.</param>
public readonly record struct SignBaseline(WearSign Sign, double Mean, double OfTrack, double Spread, double TrackSpread, string Source)
{
    /// <summary>Standard deviation of what both axles of a car have alike, with any use: its kind of tyre, its driver, how it was read.</summary>
    public double Shared { get; init; }

    /// <summary>The same of what the track adds, where all wear is of the track: its bends, most of them one way.</summary>
    public double SharedOfTrack { get; init; }

    /// <summary>How many times as likely the sign makes a cause at most, and as unlikely: a reading can be of another day or taken wrongly. Without a limit unless given.</summary>
    public double MostTimes { get; init; } = double.PositiveInfinity;
}

/// <summary>By how much a cause moves a sign.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Sign">The sign.</param>
/// <param name="Mean">Mean of the shift.</param>
/// <param name="Spread">Its standard deviation: causes are stronger on one car than on another, and some can go either way.</param>
/// <param name="By">With which use the shift grows.</param>
/// <param name="Source">Where it comes from.</param>
public readonly record struct SignShift(WearCause Cause, WearSign Sign, double Mean, double Spread, UseShare By, string Source);

/// <summary>How likely a cause makes a mark that a person who looks also reports.</summary>
/// <param name="Cause">The cause; <see cref="WearCause.Normal"/> = without any.</param>
/// <param name="Mark">The mark.</param>
/// <param name="Probability">The chance by that cause alone.</param>
/// <param name="Source">Where it comes from.</param>
public readonly record struct MarkChance(WearCause Cause, WearMark Mark, double Probability, string Source);

/// <summary>How likely a cause has the outer edge of a tread dragged in bends.</summary>
/// <param name="Cause">The cause; <see cref="WearCause.Normal"/> = without any, on a car that sees the track.</param>
/// <param name="Probability">The chance by that cause alone.</param>
/// <param name="Source">Where it comes from.</param>
public readonly record struct EdgeChance(WearCause Cause, double Probability, string Source);

/// <summary>With which use an effect on wear grows.</summary>
public enum UseShare
{
    /// <summary>With any use.</summary>
    Any,

    /// <summary>With the share of wear that comes of the track.</summary>
    Track,

    /// <summary>With the share of wear that comes of the road.</summary>
    Road,
}
