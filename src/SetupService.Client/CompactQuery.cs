namespace SetupService.Client;

/// <summary>The query of the pictures for an <c>&lt;img&gt;</c>: what is fitted now, what is to be fitted, and what was measured.</summary>
public sealed record CompactQuery
{
    /// <summary>Wheel and tyre to be checked: both markings with a comma between.</summary>
    public required string New { get; init; }

    /// <summary>Wheel and tyre fitted now: both markings with a comma between.</summary>
    public string? Now { get; init; }

    /// <summary>Which axle; front where left out.</summary>
    public Axle? Axle { get; init; }

    /// <summary>Gap inboard of what is fitted now, mm.</summary>
    public double? InMm { get; init; }

    /// <summary>Gap outboard of it, mm.</summary>
    public double? OutMm { get; init; }

    /// <summary>Gap above it, mm.</summary>
    public double? OverMm { get; init; }

    /// <summary>Greatest load of the axle, kg.</summary>
    public double? MaximumAxleLoadKg { get; init; }

    /// <summary>Lowest load index the car's papers allow.</summary>
    public int? MinimumLoadIndex { get; init; }

    /// <summary>Top speed, km/h.</summary>
    public double? TopSpeedKmh { get; init; }

    /// <summary>Diameter of the hub's spigot, mm.</summary>
    public double? CentreBoreMm { get; init; }

    /// <summary>Units of the texts.</summary>
    public Units? Units { get; init; }
}
