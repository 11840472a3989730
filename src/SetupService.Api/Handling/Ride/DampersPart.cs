using SetupService.Api.Http.Contract;
using SetupService.Domain.Handling.Ride;

namespace SetupService.Api.Handling.Ride;

/// <summary>Whether an axle's dampers can stay.</summary>
public sealed record DampersPart
{
    /// <summary>The verdict on keeping them.</summary>
    [Sample("keep")]
    public required DamperVerdict Verdict { get; init; }

    /// <summary>The verdict as a sentence, with its numbers.</summary>
    [Sample("The mean damping ratio is 0.41, before 0.50; 0.25 to 0.70 serves.")]
    public required string Text { get; init; }

    /// <summary>What a person in the car would feel; null where the damper is not known.</summary>
    [Sample("It settles at once and answers the wheel promptly.")]
    public required string? Feel { get; init; }

    /// <summary>Least mean damping ratio that serves.</summary>
    [Sample(0.25)]
    public required double LeastRatio { get; init; }

    /// <summary>Most mean damping ratio that serves.</summary>
    [Sample(0.7)]
    public required double MostRatio { get; init; }

    /// <summary>Where that range comes from.</summary>
    [Sample("the request")]
    public required string RangeSource { get; init; }
}
