using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Parts;

/// <summary>The range nine cases in ten lie in, in the unit of the input it stands beside.</summary>
public sealed record PlausiblePart
{
    /// <summary>Lower end.</summary>
    [Sample(0.5)]
    public required double Lower { get; init; }

    /// <summary>Upper end.</summary>
    [Sample(2.0)]
    public required double Upper { get; init; }
}
