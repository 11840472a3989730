using SetupService.Api.Http.Contract;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>A cause, with how likely it is. Causes may hold together, so probabilities need not add up to 1.</summary>
public sealed record CausePart
{
    /// <summary>Which.</summary>
    [Sample("lowNegativeCamber")]
    public required WearCause Cause { get; init; }

    /// <summary>The axle it holds of; null for normal.</summary>
    [Sample("front")]
    public required CarAxle? Axle { get; init; }

    /// <summary>How likely it is, from 0 to 1.</summary>
    [Sample(0.86)]
    public required double Probability { get; init; }

    /// <summary>The same in plain words.</summary>
    [Sample("too little negative camber at the front for the cornering done")]
    public required string Meaning { get; init; }

    /// <summary>The tyres that show it; those of its axle where none shows it alone.</summary>
    public required WheelPosition[] Tyres { get; init; }

    /// <summary>What speaks for and against it, the heaviest first.</summary>
    public required EvidencePart[] Evidence { get; init; }

    /// <summary>What to do about it.</summary>
    public required ActionPart[] Actions { get; init; }
}
