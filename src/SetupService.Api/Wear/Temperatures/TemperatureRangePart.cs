using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>The range a figure is held to.</summary>
public sealed record TemperatureRangePart
{
    /// <summary>Lower end.</summary>
    [Sample(-8.0)]
    public required double From { get; init; }

    /// <summary>Upper end.</summary>
    [Sample(-3.0)]
    public required double To { get; init; }

    internal static TemperatureRangePart Of(TemperatureRange range) => new() { From = range.FromC, To = range.ToC };
}
