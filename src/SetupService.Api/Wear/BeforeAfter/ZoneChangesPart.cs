namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>The three zones across the tread.</summary>
public sealed record ZoneChangesPart
{
    /// <summary>The outer shoulder.</summary>
    public required ZoneChangePart Outer { get; init; }

    /// <summary>The middle.</summary>
    public required ZoneChangePart Centre { get; init; }

    /// <summary>The inner shoulder.</summary>
    public required ZoneChangePart Inner { get; init; }
}
