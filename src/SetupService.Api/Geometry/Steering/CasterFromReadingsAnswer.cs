using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Geometry.Steering;

/// <summary>The steering axis that explains camber readings best.</summary>
public sealed record CasterFromReadingsAnswer
{
    /// <summary>Caster; positive = the axis' top rearward.</summary>
    [Sample(6.38)]
    public required double CasterDeg { get; init; }

    /// <summary>Standard error of the caster that the gauge's error leaves.</summary>
    [Sample(0.19)]
    public required double CasterStandardErrorDeg { get; init; }

    /// <summary>The caster with its 90 % range.</summary>
    public required UncertaintyResponse CasterRangeDeg { get; init; }

    /// <summary>Steering-axis inclination; positive = the axis' top inboard.</summary>
    [Sample(12.9)]
    public required double SteeringAxisInclinationDeg { get; init; }

    /// <summary>Standard error of the inclination that the gauge's error leaves: some ten times the caster's.</summary>
    [Sample(1.6)]
    public required double SteeringAxisInclinationStandardErrorDeg { get; init; }

    /// <summary>The inclination with its 90 % range.</summary>
    public required UncertaintyResponse SteeringAxisInclinationRangeDeg { get; init; }

    /// <summary>Camber with the wheel straight ahead, by the fit; negative = top leaning to the car's centre.</summary>
    [Sample(-0.71)]
    public required double CamberAheadDeg { get; init; }

    /// <summary>Standard error of the camber straight ahead.</summary>
    [Sample(0.06)]
    public required double CamberAheadStandardErrorDeg { get; init; }

    /// <summary>The camber straight ahead with its 90 % range.</summary>
    public required UncertaintyResponse CamberAheadRangeDeg { get; init; }

    /// <summary>Each reading beside what the fit says, in the order sent.</summary>
    public required FittedReadingPart[] Readings { get; init; }

    /// <summary>How far the readings scatter about the fit, as the standard deviation of one reading; null for three readings, which are met exactly.</summary>
    [Sample(0.05)]
    public required double? ResidualStandardDeviationDeg { get; init; }

    /// <summary>The workshop's short cuts from the same readings, for comparison.</summary>
    public required CasterApproximationsPart Approximations { get; init; }

    /// <summary>The figures left null, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("caster-from-readings")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
