using SetupService.Api.Http.Contract;

namespace SetupService.Api.Tyres;

/// <summary>One speed symbol.</summary>
public sealed record SpeedSymbolRow
{
    /// <summary>The symbol.</summary>
    [Sample("W")]
    public required string SpeedSymbol { get; init; }

    /// <summary>The speed it stands for.</summary>
    [Sample(270.0)]
    public required double MaximumSpeedKmh { get; init; }

    /// <summary>Where the figure comes from.</summary>
    [Sample("handbook table of load capacity against top speed")]
    public required string Source { get; init; }
}
