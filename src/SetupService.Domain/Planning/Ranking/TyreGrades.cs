using SetupService.Domain.Tyres;

namespace SetupService.Domain.Planning.Ranking;

/// <summary>Traction grade on the sidewall (49 CFR 575.104): braking on wet asphalt and concrete.</summary>
public enum TractionGrade
{
    /// <summary>Above 0.54 on asphalt and 0.38 on concrete.</summary>
    AA,

    /// <summary>Above 0.47 and 0.35.</summary>
    A,

    /// <summary>Above 0.38 and 0.26.</summary>
    B,

    /// <summary>Less.</summary>
    C,
}

/// <summary>Temperature grade on the sidewall (49 CFR 575.104): the speed a tyre stands on the laboratory's wheel.</summary>
public enum TemperatureGrade
{
    /// <summary>Above 115 mph.</summary>
    A,

    /// <summary>100 to 115 mph.</summary>
    B,

    /// <summary>85 to 100 mph.</summary>
    C,
}

/// <summary>Class on the label for wet grip and rolling resistance (Regulation (EU) 2020/740).</summary>
public enum LabelClass
{
    /// <summary>The best.</summary>
    A,

    /// <summary>The second.</summary>
    B,

    /// <summary>The middle.</summary>
    C,

    /// <summary>The fourth.</summary>
    D,

    /// <summary>The last.</summary>
    E,
}

/// <summary>Class on the label for noise outside the car (Regulation (EU) 2020/740).</summary>
public enum NoiseClass
{
    /// <summary>3 dB or more below the limit.</summary>
    A,

    /// <summary>Up to 3 dB below the limit.</summary>
    B,

    /// <summary>Above the limit.</summary>
    C,
}

/// <summary>What is told of a tyre on offer; null where it is not.</summary>
public sealed record TyreOffer
{
    /// <summary>What the caller calls it.</summary>
    public required string Id { get; init; }

    /// <summary>What it is made for.</summary>
    public TyreCategory? Category { get; init; }

    /// <summary>Price of one, in the list's currency, above 0.</summary>
    public double? Price { get; init; }

    /// <summary>Treadwear grade, above 0.</summary>
    public double? TreadwearGrade { get; init; }

    /// <summary>Traction grade.</summary>
    public TractionGrade? Traction { get; init; }

    /// <summary>Temperature grade.</summary>
    public TemperatureGrade? Temperature { get; init; }

    /// <summary>Wet grip class.</summary>
    public LabelClass? WetGrip { get; init; }

    /// <summary>Rolling resistance class.</summary>
    public LabelClass? RollingResistance { get; init; }

    /// <summary>Noise class.</summary>
    public NoiseClass? Noise { get; init; }

    /// <summary>Score of one test of dry handling and braking, percent of its best tyre; the list's scores are of the same test.</summary>
    public double? DryTestPct { get; init; }

    /// <summary>Score of one test in the wet, percent of its best tyre.</summary>
    public double? WetTestPct { get; init; }

    /// <summary>Road life known of it, km.</summary>
    public double? LifeKm { get; init; }

    /// <summary>Track life known of it, laps.</summary>
    public double? LifeLaps { get; init; }
}
