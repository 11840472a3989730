using System.ComponentModel.DataAnnotations;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment.Compare;

/// <summary>Two fittings to be compared on one hub.</summary>
public sealed record ComparisonRequest
{
    /// <summary>The wheel and tyre fitted now.</summary>
    [JsonRequired]
    public FittingDocument Current { get; set; } = null!;

    /// <summary>The wheel and tyre that would take their place.</summary>
    [JsonRequired]
    public FittingDocument Candidate { get; set; } = null!;

    /// <summary>Steering-axis inclination, positive = top inboard; without it a change of diameter leaves the scrub radius unknown.</summary>
    [Range(-10, 40)]
    [Sample(13.1)]
    public double? SteeringAxisInclinationDeg { get; set; }

    /// <summary>Speed shown for which the true speed is worked out; 100 km/h where left out.</summary>
    [Range(1, 500)]
    [Sample(100.0)]
    public double? IndicatedKmh { get; set; }
}

/// <summary>The answer to a comparison.</summary>
public sealed record ComparisonAnswer : ComparisonResponse
{
    [SetsRequiredMembers]
    private ComparisonAnswer(ComparisonResponse figures, UnitSystem units)
        : base(figures)
    {
        Method = "fitment-comparison";
        Edition = Domain.Answers.Edition.Current;
        Next = NextCalls.AfterComparison;
        Assumptions = AssumptionResponse.From(FitmentAssumptions.ForComparison(units));
        Cautions = CautionResponse.From(FitmentCautions.ForComparison);
    }

    /// <summary>The page under /docs/methods that derives the figures.</summary>
    [Sample("fitment-comparison")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }

    /// <summary>The answer that shows a comparison.</summary>
    internal static ComparisonAnswer From(in Comparison comparison, UnitSystem units) => new(ComparisonResponse.From(comparison), units);
}

/// <summary>What changes when a candidate takes the place of the present wheel and tyre; nominal figures.</summary>
public record ComparisonResponse
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
    public required SpeedometerResponse Speedometer { get; init; }

    /// <summary>The part that shows a comparison.</summary>
    internal static ComparisonResponse From(in Comparison comparison) => new()
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
        Speedometer = new SpeedometerResponse { IndicatedKmh = comparison.IndicatedKmh, TrueKmh = comparison.TrueKmh },
    };
}

/// <summary>What the speedometer shows and what is true, if the present fitting would read exactly.</summary>
public sealed record SpeedometerResponse
{
    /// <summary>The speed shown.</summary>
    [Sample(100.0)]
    public required double IndicatedKmh { get; init; }

    /// <summary>The true speed then.</summary>
    [Sample(101.8)]
    public required double TrueKmh { get; init; }
}
