using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Camber readings of one wheel on a turn plate.</summary>
public sealed record CasterFromReadingsRequest
{
    /// <summary>The side the wheel is on; left where left out.</summary>
    [Sample("left")]
    public WheelSide? Side { get; set; }

    /// <summary>The readings, in any order, at three different steer angles or more; best about 20° to either side and straight ahead.</summary>
    [JsonRequired]
    [Count(3, 200)]
    public SteerReadingDocument[] Readings { get; set; } = [];

    /// <summary>Standard error of one camber reading; 0.1 where left out.</summary>
    [Range(0.001, 2)]
    [Sample(0.1)]
    public double? GaugeErrorDeg { get; set; }
}

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
    public required FittedReadingResponse[] Readings { get; init; }

    /// <summary>How far the readings scatter about the fit, as the standard deviation of one reading; null for three readings, which are met exactly.</summary>
    [Sample(0.05)]
    public required double? ResidualStandardDeviationDeg { get; init; }

    /// <summary>The workshop's short cuts from the same readings, for comparison.</summary>
    public required CasterApproximationsResponse Approximations { get; init; }

    /// <summary>The figures left null, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("caster-from-readings")]
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
}

/// <summary>A camber reading beside what the fitted axis says.</summary>
public sealed record FittedReadingResponse
{
    /// <summary>Steer angle of the reading; positive = left.</summary>
    [Sample(20.0)]
    public required double SteerDeg { get; init; }

    /// <summary>Camber read.</summary>
    [Sample(2.35)]
    public required double CamberDeg { get; init; }

    /// <summary>Camber the fitted axis gives there.</summary>
    [Sample(2.31)]
    public required double FittedCamberDeg { get; init; }

    /// <summary>Camber read less the fitted one.</summary>
    [Sample(0.04)]
    public required double ResidualDeg { get; init; }
}

/// <summary>Short cuts from camber readings at opposite steer angles to caster. They leave out what inclination and camber do; null where no such readings are there.</summary>
public sealed record CasterApproximationsResponse
{
    /// <summary>The workshop's rule, 1.5 × (camber as the inner wheel − camber as the outer one) at 20° ± 1° to either side. Reads some 2 to 4 % high.</summary>
    [Sample(6.57)]
    public required double? WorkshopRuleCasterDeg { get; init; }

    /// <summary>The better factor: the same difference over the sum of both sines, 1 / (2 sin steer), for the widest pair of at least 5° whose sizes differ by no more than 1°.</summary>
    [Sample(6.4)]
    public required double? PairRuleCasterDeg { get; init; }

    /// <summary>Steer angle of that pair to either side.</summary>
    [Sample(20.0)]
    public required double? PairRuleSteerDeg { get; init; }
}
