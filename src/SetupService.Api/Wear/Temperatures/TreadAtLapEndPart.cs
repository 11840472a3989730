using SetupService.Api.Http.Shared;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What the tread was like when the lap ended, from how long it cooled; a rough estimate with a wide range.</summary>
public sealed record TreadAtLapEndPart
{
    /// <summary>At the outer shoulder.</summary>
    public required UncertaintyResponse Outer { get; init; }

    /// <summary>In the middle.</summary>
    public required UncertaintyResponse Centre { get; init; }

    /// <summary>At the inner shoulder.</summary>
    public required UncertaintyResponse Inner { get; init; }
}
