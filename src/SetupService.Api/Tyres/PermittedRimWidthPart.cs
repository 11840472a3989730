using SetupService.Api.Http.Contract;

namespace SetupService.Api.Tyres;

/// <summary>The rim widths a tyre may be fitted to.</summary>
public sealed record PermittedRimWidthPart
{
    /// <summary>The narrowest rim, inches.</summary>
    [Sample(7.0)]
    public required double From { get; init; }

    /// <summary>The widest rim, inches.</summary>
    [Sample(8.5)]
    public required double To { get; init; }

    /// <summary>Where the two come from.</summary>
    [Sample("listed, from memory")]
    public required string Source { get; init; }
}
