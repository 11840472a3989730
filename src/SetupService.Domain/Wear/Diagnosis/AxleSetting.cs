using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>What decides what is ordinary on an axle: which it is, how much of its wear comes of the track, and whether it is driven.</summary>
/// <param name="Axle">Which axle.</param>
/// <param name="Track">The track's share of the wear.</param>
/// <param name="Driven">Which axle the engine drives; null = not known.</param>
internal sealed record AxleSetting(CarAxle Axle, TrackShare Track, DrivenAxle? Driven)
{
    /// <summary>The setting of an axle of a case.</summary>
    public static AxleSetting From(WearCase wear, CarAxle at) => new(at, TrackShare.Compute(wear.Use), wear.Vehicle.DrivenAxle);

    /// <summary>How likely a cause is here before anything is read, from 0 to 1.</summary>
    public double Prior(in CausePrior prior)
    {
        var chance = Axle == CarAxle.Front ? prior.Front : prior.Rear;
        chance *= Track.SeesTrack + ((1 - Track.SeesTrack) * prior.RoadOnly);
        if (prior.IsOfDrive) chance *= IsDriven switch { true => 1, false => 0, null => 0.5 };
        return chance;
    }

    /// <summary>What a sign is here where nothing is wrong: mean, and variance with what an untold clock leaves open.</summary>
    public (double Mean, double Variance) Baseline(in SignBaseline baseline)
    {
        var (sees, share) = (Track.SeesTrack, Track.Value);
        var mean = baseline.Mean + (sees * baseline.OfTrack);
        if (baseline.Sign == WearSign.AxleWearRatio) mean += Axle == CarAxle.Front ? WearTable.FrontByRear(Driven) : -WearTable.FrontByRear(Driven);
        var ofShare = ((share * share) + (Track.Spread * Track.Spread)) * baseline.TrackSpread * baseline.TrackSpread;
        return (mean, (baseline.Spread * baseline.Spread) + ofShare + (sees * (1 - sees) * baseline.OfTrack * baseline.OfTrack));
    }

    private bool? IsDriven => Driven switch
    {
        null => null,
        DrivenAxle.Both => true,
        DrivenAxle.Front => Axle == CarAxle.Front,
        _ => Axle == CarAxle.Rear,
    };
}
