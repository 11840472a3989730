using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>How the static camber moves with one input, the others as they are.</summary>
public sealed record SensitivityPart
{
    /// <summary>JSON Pointer to where the input stands in the request.</summary>
    [Sample("/vehicle/front/spring/rateNPerMm")]
    public required string Input { get; init; }

    /// <summary>The input's unit, as the names of members end in it; empty for a pure ratio. Tells the lateral acceleration of a list of corners from their radius.</summary>
    [Sample("NPerMm")]
    public required string Unit { get; init; }

    /// <summary>The input's value, in its unit.</summary>
    [Sample(27.0)]
    public required double Value { get; init; }

    /// <summary>Degrees of static camber per unit of the input.</summary>
    [Sample(0.031)]
    public required double DegPerUnit { get; init; }

    /// <summary>How closely the input is known: one standard error, in its unit.</summary>
    [Sample(0.8)]
    public required double StandardError { get; init; }

    /// <summary>What that leaves open of the static camber, one standard error.</summary>
    [Sample(0.025)]
    public required double LeavesOpenDeg { get; init; }
}
