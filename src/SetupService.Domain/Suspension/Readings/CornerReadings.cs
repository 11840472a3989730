using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>What a person with a jack, a ruler and gauges knows of a left corner. Lists in any order; all angles in degrees.</summary>
public sealed record CornerReadings
{
    /// <summary>Camber, and toe where read, over wheel travel.</summary>
    public required IReadOnlyList<TravelReading> Travel { get; init; }

    /// <summary>True where they came as one table of text, whose lines have no JSON pointer of their own.</summary>
    public bool IsTable { get; init; }

    /// <summary>The member of a request they came in.</summary>
    public string TravelMember => IsTable ? "table" : "readings";

    /// <summary>True where <see cref="GaugeErrorDeg"/> is the usual one, because nobody gave it.</summary>
    public bool IsGaugeErrorAssumed { get; init; }

    /// <summary>Camber on turn plates; empty where none was read.</summary>
    public IReadOnlyList<SteerReading> Steer { get; init; } = [];

    /// <summary>Camber with the top mount moved, the place it has now being 0; empty where none was read.</summary>
    public IReadOnlyList<TopMountReading> TopMount { get; init; } = [];

    /// <summary>Caster at ride height; positive = top rearward. Null where it is not known.</summary>
    public double? CasterDeg { get; init; }

    /// <summary>Steering-axis inclination at ride height; positive = top inboard. Null where it is not known.</summary>
    public double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Camber stated for ride height beside the readings, degrees: one reading more, of the same gauge. Null where none is stated.</summary>
    public double? StatedCamberDeg { get; init; }

    /// <summary>Standard error of one camber reading, 0 or more.</summary>
    public double GaugeErrorDeg { get; init; } = CasterReadings.DefaultGaugeErrorDeg;

    /// <summary>Standard error of one toe reading, 0 or more; null = as of a camber reading.</summary>
    public double? ToeErrorDeg { get; init; }
}
