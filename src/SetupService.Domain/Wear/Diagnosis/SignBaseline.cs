namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>What a sign is where nothing is wrong.</summary>
/// <param name="Sign">The sign.</param>
/// <param name="Mean">Its mean on a car that sees only the road.</param>
/// <param name="OfTrack">What is added to the mean on a car set up for the track as well.</param>
/// <param name="Spread">Its standard deviation from car to car with no use of the track.</param>
/// <param name="TrackSpread">What the track adds to it, standard deviation, where all wear is of the track.</param>
/// <param name="Source">Where the figures come from.</param>
public readonly record struct SignBaseline(WearSign Sign, double Mean, double OfTrack, double Spread, double TrackSpread, string Source);
