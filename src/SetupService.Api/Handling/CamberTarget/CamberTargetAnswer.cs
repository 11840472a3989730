using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>The static camber that stands the outer tyre as wanted, and what it rests on.</summary>
public sealed record CamberTargetAnswer
{
    /// <summary>Static camber of both wheels of the axle, with the range that what the inputs leave open gives.</summary>
    public required UncertaintyResponse StaticCamberDeg { get; init; }

    /// <summary>Static camber the left wheel wants, by right turns alone; null where there are none.</summary>
    [Sample(-2.5)]
    public required double? LeftStaticCamberDeg { get; init; }

    /// <summary>Static camber the right wheel wants, by left turns alone; null where there are none.</summary>
    [Sample(-2.7)]
    public required double? RightStaticCamberDeg { get; init; }

    /// <summary>The camber set now.</summary>
    public required CamberSettingResponse Before { get; init; }

    /// <summary>Whether the adjustment reaches the camber wanted; null where <c>adjustable</c> gives no range.</summary>
    [Sample(false)]
    public required bool? IsReachable { get; init; }

    /// <summary>The setting nearest to the camber wanted that the adjustment reaches; that camber itself where no range is given.</summary>
    public required CamberSettingResponse Nearest { get; init; }

    /// <summary>The static camber with other casters; empty on an axle that does not steer.</summary>
    public required CamberForCasterResponse[] WithCaster { get; init; }

    /// <summary>Static camber each further degree of caster saves, over all corners; null on an axle that does not steer.</summary>
    [Sample(0.06)]
    public required double? CasterSaving { get; init; }

    /// <summary>The same in the tightest corner.</summary>
    [Sample(0.11)]
    public required double? CasterSavingInTightest { get; init; }

    /// <summary>How the static camber moves with each input, the most telling first; inputs that do not move it are left out.</summary>
    public required SensitivityResponse[] Sensitivities { get; init; }

    /// <summary>What the camber wanted does on the straight; null where no tyre is given.</summary>
    public required StraightRunningResponse? Straight { get; init; }

    /// <summary>Each corner with the camber found, the hardest first.</summary>
    public required BendMixResponse[] Corners { get; init; }

    /// <summary>What it means, in at most five sentences.</summary>
    [Sample("−2.6° of static camber keeps the outer front tyre flat on the road, on average over its work (90 % range −3.1° to −2.1°).")]
    public required string Summary { get; init; }

    /// <summary>What is null above, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("camber-target")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>One setting of the static camber, and what it gives.</summary>
public sealed record CamberSettingResponse
{
    /// <summary>Static camber.</summary>
    [Sample(-2.5)]
    public required double StaticCamberDeg { get; init; }

    /// <summary>Mean inclination of the outer wheel to the road, over its work; null where a corner has no equilibrium with this setting.</summary>
    [Sample(0.1)]
    public required double? MeanInclinationDeg { get; init; }

    /// <summary>What the setting does on the straight; null where no tyre is given.</summary>
    public required StraightRunningResponse? Straight { get; init; }
}

/// <summary>The static camber with another caster.</summary>
public sealed record CamberForCasterResponse
{
    /// <summary>Caster.</summary>
    [Sample(7.4)]
    public required double CasterDeg { get; init; }

    /// <summary>Static camber; null where a corner then has no equilibrium.</summary>
    [Sample(-2.5)]
    public required double? StaticCamberDeg { get; init; }
}

/// <summary>How the static camber moves with one input, the others as they are.</summary>
public sealed record SensitivityResponse
{
    /// <summary>JSON Pointer to where the input stands in the request.</summary>
    [Sample("/vehicle/front/spring/rateNPerMm")]
    public required string Input { get; init; }

    /// <summary>The input's unit, as the names of members end in it; empty for a pure ratio. Tells the lateral acceleration of a list of corners from their radius.</summary>
    [Sample("NPerMm")]
    public required string Unit { get; init; }

    /// <summary>The input's value, in its unit.</summary>
    [Sample(27.0)]
    public required double Value { get; init; }

    /// <summary>Degrees of static camber per unit of the input.</summary>
    [Sample(0.031)]
    public required double DegPerUnit { get; init; }

    /// <summary>How closely the input is known: one standard error, in its unit.</summary>
    [Sample(0.8)]
    public required double StandardError { get; init; }

    /// <summary>What that leaves open of the static camber, one standard error.</summary>
    [Sample(0.025)]
    public required double LeavesOpenDeg { get; init; }

    /// <summary>What a step of the input does, as a sentence.</summary>
    [Sample("10 N/mm more front spring rate makes this camber 0.31° less negative.")]
    public required string Text { get; init; }
}

/// <summary>A static camber on the straight, by a tread of springs across its width: an upper bound, as a belt bends.</summary>
public sealed record StraightRunningResponse
{
    /// <summary>Share of the load on the third of the tread towards the car's centre; 33.3 upright.</summary>
    [Sample(39.0)]
    public required double InnerShoulderLoadPct { get; init; }

    /// <summary>Share of the load on the outer third.</summary>
    [Sample(27.0)]
    public required double OuterShoulderLoadPct { get; init; }

    /// <summary>Contact area left to brake on, by that of the tyre upright.</summary>
    [Sample(99.5)]
    public required double BrakingPatchPct { get; init; }

    /// <summary>Road wear of the inner third by the mean of the tread; its range is that of the background slip of a rolling tread.</summary>
    public required UncertaintyResponse InnerShoulderWearRatio { get; init; }
}

/// <summary>The outer wheel in one kind of corner, with the camber found.</summary>
public sealed record BendMixResponse
{
    /// <summary>Lateral acceleration.</summary>
    [Sample(0.95)]
    public required double LateralG { get; init; }

    /// <summary>Radius.</summary>
    [Sample(45.0)]
    public required double CornerRadiusM { get; init; }

    /// <summary>Which way.</summary>
    [Sample("left")]
    public required TurnDirection Turn { get; init; }

    /// <summary>Inclination to the road.</summary>
    [Sample(0.3)]
    public required double InclinationDeg { get; init; }

    /// <summary>Load.</summary>
    [Sample(5600.0)]
    public required double LoadN { get; init; }

    /// <summary>Slip angle; positive = pulling into the turn.</summary>
    [Sample(7.1)]
    public required double SlipDeg { get; init; }

    /// <summary>Share of the tyre's work, load times slip times time, done here.</summary>
    [Sample(48.0)]
    public required double WorkPct { get; init; }
}
