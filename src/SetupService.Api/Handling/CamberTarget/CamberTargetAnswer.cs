using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>The static camber to run, by three answers side by side, the first step to take, and what all rests on.</summary>
public sealed record CamberTargetAnswer
{
    /// <summary>The first step to take.</summary>
    public required CamberStepResponse Recommended { get; init; }

    /// <summary>Static camber of both wheels of the axle with which the outer tyre is flat on the road, or leans as targetInclinationDeg asks; the range is what the inputs leave open.</summary>
    public required UncertaintyResponse StaticCamberDeg { get; init; }

    /// <summary>Static camber at which the axle's tyres give most side force over the same corners, in half degrees. Judgement: nobody has published at which lean a road tyre grips best, so the range is wide.</summary>
    public required UncertaintyResponse BestGripCamberDeg { get; init; }

    /// <summary>What each camber does to grip and braking, against the camber as set; the most negative first.</summary>
    public required TradeOffResponse[] TradeOff { get; init; }

    /// <summary>Static camber the left wheel wants, by right turns alone; null where there are none.</summary>
    [Sample(-2.5)]
    public required double? LeftStaticCamberDeg { get; init; }

    /// <summary>Static camber the right wheel wants, by left turns alone; null where there are none.</summary>
    [Sample(-2.7)]
    public required double? RightStaticCamberDeg { get; init; }

    /// <summary>The camber set now.</summary>
    public required CamberSettingResponse Before { get; init; }

    /// <summary>Whether the adjustment reaches the flat camber; null where neither <c>adjustable</c> nor the kind of suspension tells.</summary>
    [Sample(false)]
    public required bool? IsReachable { get; init; }

    /// <summary>The setting nearest to the flat camber that the adjustment reaches; that camber itself where nothing tells how far it reaches, the camber set where it cannot be set.</summary>
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

    /// <summary>What to do and why, in at most five sentences.</summary>
    [Sample("Set the front camber to −2.2°, 1.5° more negative than now.")]
    public required string Summary { get; init; }

    /// <summary>What is null above, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("camber-target")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>The first step to take with the camber, and what to read before the next.</summary>
public sealed record CamberStepResponse
{
    /// <summary>What to set both wheels to; what is set now where it is to be left. Null where that was not measured.</summary>
    [Sample(-2.2)]
    public required double? CamberDeg { get; init; }

    /// <summary>Change from the camber set now, at most 1.5°; 0 = leave it. Null where that was not measured.</summary>
    [Sample(-1.5)]
    public required double? StepDeg { get; init; }

    /// <summary>What to do, what to read before the next step, and what limits it.</summary>
    [Sample("Set the front camber to −2.2°, 1.5° more negative than now. The outer tyre is flat on the road at −3.7° (−4.2° to −3.2°).")]
    public required string Text { get; init; }
}

/// <summary>What one static camber of both wheels does, against the camber as set.</summary>
public sealed record TradeOffResponse
{
    /// <summary>Static camber.</summary>
    [Sample(-2.5)]
    public required double StaticCamberDeg { get; init; }

    /// <summary>Change of the most side force the axle's tyres give in these corners; the range follows the tyre's inclination effect, which is judgement beyond a few degrees.</summary>
    public required UncertaintyResponse GripChangePct { get; init; }

    /// <summary>Change of the most the axle's tyres can brake with on the straight; judgement, and the range includes none. Null where no tyre is given.</summary>
    public required UncertaintyResponse? BrakingChangePct { get; init; }

    /// <summary>Whether it can be set; null where neither <c>adjustable</c> nor the kind of suspension tells.</summary>
    [Sample(true)]
    public required bool? IsReachable { get; init; }
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

    /// <summary>What that leaves open of the static camber, one standard error: the mean of both sides where an assumed range is skewed.</summary>
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
