namespace SetupService.Domain.Wear.Forecast;

/// <summary>Whether readings carry a forecast.</summary>
public enum ForecastStatus
{
    /// <summary>They do.</summary>
    Estimated,

    /// <summary>They do not: only the wear so far is told.</summary>
    Unknown,
}
