using SetupService.Api.Http.Contract;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>What changes when a candidate takes the place of the present wheel and tyre; nominal figures.</summary>
public record ComparisonPart
{
    /// <summary>Movement of the outermost edge; positive = outboard.</summary>
    [Sample(14.9)]
    public required double OutboardChangeMm { get; init; }

    /// <summary>Movement of the innermost edge; positive = inboard.</summary>
    [Sample(4.9)]
    public required double InboardChangeMm { get; init; }

    /// <summary>Change of the axle's track, both wheels together.</summary>
    [Sample(10.0)]
    public required double TrackChangeMm { get; init; }

    /// <summary>Change of the scrub radius, positive = the axis meets the ground further inboard of the contact; null where the diameter changes and no inclination is known.</summary>
    [Sample(4.2)]
    public required double? ScrubRadiusChangeMm { get; init; }

    /// <summary>Change of the tyre's overall diameter.</summary>
    [Sample(10.0)]
    public required double OverallDiameterChangeMm { get; init; }

    /// <summary>The same, as a share of the present diameter.</summary>
    [Sample(1.6)]
    public required double OverallDiameterChangePct { get; init; }

    /// <summary>Change of ride height: half the diameter's.</summary>
    [Sample(5.0)]
    public required double RideHeightChangeMm { get; init; }

    /// <summary>Change of overall gearing; positive = fewer turns per kilometre.</summary>
    [Sample(1.6)]
    public required double GearingChangePct { get; init; }

    /// <summary>Change of mass per wheel, wheel and tyre together; null where one of the four masses is not given.</summary>
    [Sample(-1.2)]
    public required double? MassChangeKg { get; init; }

    /// <summary>What the speedometer shows and what is true.</summary>
    public required SpeedometerPart Speedometer { get; init; }

    /// <summary>The part that shows a comparison.</summary>
    internal static ComparisonPart Of(in Comparison comparison) => new()
    {
        OutboardChangeMm = comparison.OutboardChangeMm,
        InboardChangeMm = comparison.InboardChangeMm,
        TrackChangeMm = comparison.TrackChangeMm,
        ScrubRadiusChangeMm = comparison.ScrubRadiusChangeMm,
        OverallDiameterChangeMm = comparison.OverallDiameterChangeMm,
        OverallDiameterChangePct = comparison.OverallDiameterChangePct,
        RideHeightChangeMm = comparison.RideHeightChangeMm,
        GearingChangePct = comparison.GearingChangePct,
        MassChangeKg = comparison.MassChangeKg,
        Speedometer = new SpeedometerPart { IndicatedKmh = comparison.IndicatedKmh, TrueKmh = comparison.TrueKmh },
    };
}
