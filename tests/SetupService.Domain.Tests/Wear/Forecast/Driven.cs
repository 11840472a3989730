namespace SetupService.Domain.Tests.Wear.Forecast;

/// <summary>Where a simulated tyre was used.</summary>
public enum Driven
{
    Road,
    Track,
    Both,
    InProportion,
}
