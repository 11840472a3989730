using SetupService.Api.Http.Contract;

namespace SetupService.Api.Fitment;

/// <summary>What the speedometer shows and what is true, if the present fitting would read exactly.</summary>
public sealed record SpeedometerPart
{
    /// <summary>The speed shown.</summary>
    [Sample(100.0)]
    public required double IndicatedKmh { get; init; }

    /// <summary>The true speed then.</summary>
    [Sample(101.8)]
    public required double TrueKmh { get; init; }
}
