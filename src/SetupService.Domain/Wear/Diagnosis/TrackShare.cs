using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>How much of a tyre's wear comes of the track.</summary>
public readonly record struct TrackShare
{
    /// <summary>
    /// How many times as fast a kilometre of track wears as one of road: judgement, no source. Work of side force grows with its square, and a lap is driven at some
    /// three times the road's.
    /// </summary>
    public const double TrackByRoad = 10;

    /// <summary>Length of a lap where none is stated, km; judgement.</summary>
    public const double UsualLapKm = 3;

    /// <summary>The share where nothing is known of the use.</summary>
    public const double Unknown = 0.4;

    private TrackShare(double value, bool? seesTrack) => (Value, SeesTrack) = (value, seesTrack);

    /// <summary>The share, from 0 to 1.</summary>
    public double Value { get; }

    /// <summary>True when the car sees the track; null = not known.</summary>
    public bool? SeesTrack { get; }

    /// <summary>By the use stated.</summary>
    public static TrackShare Compute(in WearUse use)
    {
        if (use.TrackLaps is not { } laps) return use.RoadKm is null ? new(Unknown, null) : new(Unknown / 2, null);
        if (laps <= 0) return new(0, false);
        if (use.RoadKm is not { } roadKm) return new(0.8, true);
        var track = laps * (use.LapKm ?? UsualLapKm) * TrackByRoad;
        return new(track / (track + roadKm), true);
    }
}
