namespace SetupService.Api.Wear.Forecast;

/// <summary>The three zones across the tread.</summary>
public sealed record ForecastZonesPart
{
    /// <summary>The outer shoulder.</summary>
    public required ForecastZonePart Outer { get; init; }

    /// <summary>The middle.</summary>
    public required ForecastZonePart Centre { get; init; }

    /// <summary>The inner shoulder.</summary>
    public required ForecastZonePart Inner { get; init; }
}
