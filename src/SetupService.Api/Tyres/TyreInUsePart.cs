using SetupService.Api.Http.Contract;

namespace SetupService.Api.Tyres;

/// <summary>A tyre on a given rim, at a given pressure, speed or load. What was not asked for is null.</summary>
public sealed record TyreInUsePart
{
    /// <summary>Section width on the rim asked about.</summary>
    [Sample(230.1)]
    public required double? SectionWidthOnRimMm { get; init; }

    /// <summary>The largest section width in service on that rim.</summary>
    [Sample(239.3)]
    public required double? MaximumSectionWidthOnRimMm { get; init; }

    /// <summary>The top speed these figures are for: the one asked about, else the speed symbol's own; null without either.</summary>
    [Sample(228.0)]
    public required double? TopSpeedKmh { get; init; }

    /// <summary>What the tyre carries at the pressure and top speed asked about; null below 150 kPa, where the standard's table begins, where it ties the load to a pressure only the maker states, and beyond the symbol's speed.</summary>
    [Sample(556.8)]
    public required double? LoadCapacityAtPressureKg { get; init; }

    /// <summary>Cold pressure that carries the load asked about, 150 kPa or more; null where none does.</summary>
    [Sample(196.2)]
    public required double? PressureForLoadKpa { get; init; }

    /// <summary>What the handbook adds to that pressure for sustained speed; null where it does not say.</summary>
    [Sample(30.0)]
    public required double? SpeedPressureAdditionKpa { get; init; }

    /// <summary>Radius under the load asked about: from the vertical rate where given, else a static estimate; null where the rate would press the tyre onto its rim.</summary>
    [Sample(307.9)]
    public required double? LoadedRadiusMm { get; init; }

    /// <summary>Distance rolled in one turn at the speed asked about.</summary>
    [Sample(1952.9)]
    public required double? RollingCircumferenceAtSpeedMm { get; init; }
}
