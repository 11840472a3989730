using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Readings;

/// <summary>What was read of one tyre; what is not known is null.</summary>
public sealed record TyreReading
{
    /// <summary>Where it is on the car now.</summary>
    public required WheelPosition Position { get; init; }

    /// <summary>Depth when new, mm.</summary>
    public double? NewDepthMm { get; init; }

    /// <summary>Depths across the tread from the outer edge inwards, the mean of all places round the tyre; empty = not read.</summary>
    public IReadOnlyList<TreadZone> Zones { get; init; } = [];

    /// <summary>The depths of <see cref="Zones"/> at each place round the tyre where they were read at several; empty = at one or not told.</summary>
    public IReadOnlyList<AcrossTread<double>> AroundMm { get; init; } = [];

    /// <summary>What eye and hand find; null = nobody looked; empty = looked and found nothing.</summary>
    public IReadOnlyList<TreadPattern>? Patterns { get; init; }

    /// <summary>Tread temperatures, °C.</summary>
    public AcrossTread<double>? TemperatureC { get; init; }

    /// <summary>What they were read with.</summary>
    public Thermometer? TemperatureBy { get; init; }

    /// <summary>How long after driving they were read, s.</summary>
    public double? SecondsAfterLap { get; init; }

    /// <summary>Between which tread temperatures the tyre works, °C.</summary>
    public (double FromC, double ToC)? TemperatureWindowC { get; init; }

    /// <summary>Pressures.</summary>
    public TyrePressures Pressure { get; init; }

    /// <summary>Standard deviation of one depth reading, mm; null = not told.</summary>
    public double? GaugeErrorMm { get; init; }

    /// <summary>The stretches of its life, oldest first; empty = not told.</summary>
    public IReadOnlyList<HistoryLeg> History { get; init; } = [];

    /// <summary>Year and week of making, as a count of weeks since the year 2000 (negative before); null = not told.</summary>
    public int? MadeInWeek { get; init; }

    /// <summary>Which axle it is on.</summary>
    public CarAxle Axle => WheelPositions.AxleOf(Position);

    /// <summary>Whether it is on the left.</summary>
    public bool IsLeft => Position is WheelPosition.FrontLeft or WheelPosition.RearLeft;
}
