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

    /// <summary>The depths of <see cref="Zones"/> at each place round the tyre where they were read at several; empty = at one or not known.</summary>
    public IReadOnlyList<AcrossTread<double>> AroundMm { get; init; } = [];

    /// <summary>What eye and hand find; null = not looked at; empty = looked and found nothing.</summary>
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

    /// <summary>Standard deviation of one depth reading, mm; null = not known.</summary>
    public double? GaugeErrorMm { get; init; }

    /// <summary>The stretches of its life, oldest first; empty = not known.</summary>
    public IReadOnlyList<HistoryLeg> History { get; init; } = [];

    /// <summary>Year and week of making, as a count of weeks since the year 2000 (negative before); null = not known.</summary>
    public int? MadeInWeek { get; init; }

    /// <summary>Which axle it is on.</summary>
    public CarAxle Axle => WheelPositions.AxleOf(Position);

    /// <summary>True when it is on the left.</summary>
    public bool IsLeft => Position is WheelPosition.FrontLeft or WheelPosition.RearLeft;
}

/// <summary>One stretch of a tyre's life, oldest first.</summary>
/// <param name="Position">Where on the car it was.</param>
/// <param name="RoadKm">Kilometres of road there; null = not known.</param>
/// <param name="TrackLaps">Laps there; null = not known.</param>
/// <param name="TurnedOnRim">Whether it was mounted with its sides changed over against now.</param>
public sealed record HistoryLeg(WheelPosition Position, double? RoadKm, double? TrackLaps, bool TurnedOnRim);

/// <summary>What a tread's temperature is read with.</summary>
public enum Thermometer
{
    /// <summary>A needle pushed into the rubber.</summary>
    Probe,

    /// <summary>An infrared thermometer, which sees the surface.</summary>
    Infrared,
}

/// <summary>Gauge pressures of one tyre, kPa; what is not known is null.</summary>
/// <param name="ColdKpa">As set, cold.</param>
/// <param name="HotKpa">Straight after driving.</param>
/// <param name="AimColdKpa">What it should be cold.</param>
/// <param name="AimHotKpa">What it should be hot.</param>
public readonly record struct TyrePressures(double? ColdKpa, double? HotKpa, double? AimColdKpa, double? AimHotKpa)
{
    /// <summary>How much more than its aim it is, as a share of the aim; hot where that is known; null where neither is.</summary>
    public double? OffShare => HotKpa is { } hot && AimHotKpa is { } aimHot ? (hot - aimHot) / aimHot
        : ColdKpa is { } cold && AimColdKpa is { } aimCold ? (cold - aimCold) / aimCold : null;
}
