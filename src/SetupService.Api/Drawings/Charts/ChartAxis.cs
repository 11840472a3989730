namespace SetupService.Api.Drawings.Charts;

/// <summary>The axis across the picture.</summary>
/// <param name="Name">What runs along it, "wheel travel".</param>
/// <param name="Unit">Its unit, "mm".</param>
public sealed record ChartAxis(string Name, string Unit)
{
    /// <summary>What zero is, "stated position"; null where that goes without saying.</summary>
    public string? Zero { get; init; }

    /// <summary>A word or two for the negative side, "rebound"; null for none.</summary>
    public string? Low { get; init; }

    /// <summary>A word or two for the positive side, "bump"; null for none.</summary>
    public string? High { get; init; }
}
