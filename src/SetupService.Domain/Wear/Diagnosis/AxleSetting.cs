using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>What decides what is ordinary on an axle: which it is, how much of its wear comes of the track, and whether it is driven.</summary>
/// <param name="Axle">Which axle.</param>
/// <param name="Track">The track's share of the wear.</param>
/// <param name="Driven">Which axle the engine drives; null = not known.</param>
internal sealed record AxleSetting(CarAxle Axle, TrackShare Track, DrivenAxle? Driven)
{
    private const double MostOrdinary = 2;

    /// <summary>The setting of an axle of a case.</summary>
    public static AxleSetting From(WearCase wear, CarAxle at) => new(at, TrackShare.Compute(wear.Use), wear.Vehicle.DrivenAxle);

    /// <summary>How likely a cause is here before anything is read, from 0 to 1.</summary>
    public double Prior(in CausePrior prior)
    {
        var chance = Axle == CarAxle.Front ? prior.Front : prior.Rear;
        chance *= Track.SeesTrack + ((1 - Track.SeesTrack) * prior.RoadOnly);
        if (prior.Cause == WearCause.LowNegativeCamber && Axle == CarAxle.Rear) chance *= 1 - (WearTable.RearCamberByTrackShare * (1 - Track.Value));
        if (prior.Cause == WearCause.LowNegativeCamber) chance *= WearTable.LowCamberByDrive(IsDriven, Driven is DrivenAxle.Both);
        if (prior.IsOfDrive) chance *= IsDriven switch { true => 1, false => 0, null => 0.5 };
        return chance;
    }

    /// <summary>What a sign is here where nothing is wrong: mean, and variance with what an untold clock leaves open.</summary>
    /// <param name="baseline">The table's row.</param>
    /// <param name="other">The same sign of the other axle: what both have alike is no fault of one of them; null = not read.</param>
    public (double Mean, double Variance) Baseline(in SignBaseline baseline, in Estimate? other = null)
    {
        var (sees, share) = (Track.SeesTrack, Track.Value);
        var mean = baseline.Mean + (sees * baseline.OfTrack);
        mean += (Axle == CarAxle.Front ? 1 : -1) * FrontByRear(baseline.Sign);
        var ofShare = ((share * share) + (Track.Spread * Track.Spread)) * baseline.TrackSpread * baseline.TrackSpread;
        var own = (baseline.Spread * baseline.Spread) + ofShare + (sees * (1 - sees) * baseline.OfTrack * baseline.OfTrack);
        var shared = (baseline.Shared * baseline.Shared) + (((share * share) + (Track.Spread * Track.Spread)) * baseline.SharedOfTrack * baseline.SharedOfTrack);
        if (shared == 0 || other is not { } read) return (mean, own + shared);
        var ofOtherMean = mean - (2 * (Axle == CarAxle.Front ? 1 : -1) * FrontByRear(baseline.Sign));

        // The other axle tells the shared part, as far as its own scatter and gauge let it; a fault of its own does not count for more than twice all that is ordinary.
        var ofOther = shared + own + (read.StandardError * read.StandardError);
        var most = MostOrdinary * Math.Sqrt(ofOther);
        var gain = shared / ofOther;
        return (mean + (gain * Math.Clamp(read.Value - ofOtherMean, -most, most)), own + (shared * (1 - gain)));
    }

    /// <summary>By how much a sign of a sound front axle is above the mean of both.</summary>
    private double FrontByRear(WearSign sign) => sign switch
    {
        WearSign.AxleWearRatio => WearTable.FrontByRear(Driven),
        WearSign.ToeSet => -WearTable.ToeRearByFrontDeg / 2,
        WearSign.ShoulderDifference => WearTable.ShoulderFrontByRear / 2,
        WearSign.ShoulderTemperatureDifference => WearTable.ShoulderTemperatureFrontByRearC / 2,
        WearSign.CamberSet => WearTable.CamberFrontByRearDeg / 2,
        _ => 0,
    };

    private bool? IsDriven => Driven switch
    {
        null => null,
        DrivenAxle.Both => true,
        DrivenAxle.Front => Axle == CarAxle.Front,
        _ => Axle == CarAxle.Rear,
    };
}
