using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>
/// How far each wheel angle can be set with the parts fitted: a range, or null where it cannot be set at all. Left out, the kind of suspension tells: a twist beam and a trailing arm have
/// nothing to set, of other kinds nobody knows.
/// </summary>
public sealed record AdjustableDocument
{
    private CamberRangeDocument? _camberDeg;
    private ToeRangeDocument? _toeDeg;
    private CasterRangeDocument? _casterDeg;

    /// <summary>Camber; null = not at all.</summary>
    public CamberRangeDocument? CamberDeg
    {
        get => _camberDeg;
        set => (_camberDeg, IsCamberSaid) = (value, true);
    }

    /// <summary>Toe of each wheel; null = not at all.</summary>
    public ToeRangeDocument? ToeDeg
    {
        get => _toeDeg;
        set => (_toeDeg, IsToeSaid) = (value, true);
    }

    /// <summary>Caster; null = not at all.</summary>
    public CasterRangeDocument? CasterDeg
    {
        get => _casterDeg;
        set => (_casterDeg, IsCasterSaid) = (value, true);
    }

    /// <summary>Whether camber was sent, as a range or as null.</summary>
    internal bool IsCamberSaid { get; private set; }

    /// <summary>Whether toe was sent.</summary>
    internal bool IsToeSaid { get; private set; }

    /// <summary>Whether caster was sent.</summary>
    internal bool IsCasterSaid { get; private set; }
}

/// <summary>Ends of a camber setting.</summary>
public sealed record CamberRangeDocument
{
    /// <summary>The most negative.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(-3.0)]
    public double From { get; set; }

    /// <summary>The least negative.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(0.0)]
    public double To { get; set; }
}

/// <summary>Ends of a toe setting of each wheel; positive = toe-in.</summary>
public sealed record ToeRangeDocument
{
    /// <summary>The lowest.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(-0.5)]
    public double From { get; set; }

    /// <summary>The highest.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(0.5)]
    public double To { get; set; }
}

/// <summary>Ends of a caster setting.</summary>
public sealed record CasterRangeDocument
{
    /// <summary>Least.</summary>
    [JsonRequired]
    [Range(-5, 20)]
    [Sample(5.0)]
    public double From { get; set; }

    /// <summary>Most.</summary>
    [JsonRequired]
    [Range(-5, 20)]
    [Sample(8.0)]
    public double To { get; set; }
}

/// <summary>Wheel and steering-axis angles at ride height: the left wheel's, and the right's where they differ.</summary>
public sealed record AlignmentDocument : AlignmentAnglesDocument
{
    /// <summary>The right wheel's angles, only where they differ from the left's.</summary>
    [JsonPropertyOrder(1)]
    public AlignmentAnglesDocument? Right { get; set; }
}

/// <summary>Wheel and steering-axis angles of one wheel at ride height; those of a right wheel only where they differ from the left's.</summary>
public record AlignmentAnglesDocument
{
    /// <summary>Camber as a gauge on the wheel reads it; negative = top leaning to the car's centre.</summary>
    [Range(-15, 15)]
    [Sample(-0.7)]
    public double? CamberDeg { get; set; }

    /// <summary>Caster; positive = steering axis' top rearward.</summary>
    [Range(-5, 20)]
    [Sample(6.4)]
    public double? CasterDeg { get; set; }

    /// <summary>Toe of this wheel; positive = toe-in.</summary>
    [Range(-5, 5)]
    [Sample(0.08)]
    public double? ToeDeg { get; set; }

    /// <summary>Steering-axis inclination; positive = top inboard.</summary>
    [Range(-10, 40)]
    [Sample(13.1)]
    public double? SteeringAxisInclinationDeg { get; set; }
}
