namespace SetupService.Domain.Handling.Ride;

/// <summary>The damping ratios, bump and rebound averaged, that suit a car.</summary>
/// <param name="From">The lowest that suits.</param>
/// <param name="To">The highest that suits.</param>
/// <param name="Source">Where the range comes from.</param>
public sealed record DampingRange(double From, double To, string Source)
{
    // This near to an end, as a share of it, a damper's own tolerance decides.
    private const double Near = 0.1;

    /// <summary>For a road car that also goes on track: from soft road cars to what is usual on track.</summary>
    public static DampingRange RoadAndTrack { get; } = new(0.25, 0.7,
        "three cars published with DOT HS 807 956 (1992), as reprinted in vehicle models of TU München, 2017: 0.27 to 0.40; sport and track 0.4 to 0.7 from memory (The Shock Absorber Handbook, 2007; Race Car Vehicle Dynamics, 1995)");

    /// <summary>What a ratio says of the dampers.</summary>
    public DamperVerdict Judge(double? ratio) => ratio switch
    {
        null => DamperVerdict.Unknown,
        { } value when value < From || value > To => DamperVerdict.Replace,
        { } value when value < From * (1 + Near) || value > To * (1 - Near) => DamperVerdict.Borderline,
        _ => DamperVerdict.Keep,
    };
}

/// <summary>Whether the dampers fitted serve the springs.</summary>
public enum DamperVerdict
{
    /// <summary>They suit.</summary>
    Keep,

    /// <summary>They suit, close to an end of the range.</summary>
    Borderline,

    /// <summary>They do not.</summary>
    Replace,

    /// <summary>Unknown: the damper's figures are not given.</summary>
    Unknown,
}
