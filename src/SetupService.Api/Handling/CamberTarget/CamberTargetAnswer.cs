using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>The static camber that stands the outer tyre as wanted, and what it rests on.</summary>
public sealed record CamberTargetAnswer
{
    /// <summary>Static camber of both wheels of the axle.</summary>
    [Sample(-2.6)]
    public required double StaticCamberDeg { get; init; }

    /// <summary>The range it lies in by what the inputs leave open.</summary>
    public required UncertaintyResponse Interval { get; init; }

    /// <summary>The left wheel by right turns alone; null where there are none.</summary>
    [Sample(-2.5)]
    public required double? LeftByRightTurnsDeg { get; init; }

    /// <summary>The right wheel by left turns alone; null where there are none.</summary>
    [Sample(-2.7)]
    public required double? RightByLeftTurnsDeg { get; init; }

    /// <summary>Mean inclination with the camber set now.</summary>
    [Sample(1.9)]
    public required double MeanInclinationNowDeg { get; init; }

    /// <summary>Whether the adjustment reaches it; null where no range is given.</summary>
    [Sample(false)]
    public required bool? IsWithinRange { get; init; }

    /// <summary>The setting nearest to it within the range; itself where none is given.</summary>
    [Sample(-2.5)]
    public required double NearestCamberDeg { get; init; }

    /// <summary>Mean inclination with that setting; null where a corner has no equilibrium then.</summary>
    [Sample(0.1)]
    public required double? MeanInclinationAtNearestDeg { get; init; }

    /// <summary>The static camber with other casters; empty on an axle that does not steer.</summary>
    public required CamberForCasterPart[] WithCaster { get; init; }

    /// <summary>Static camber each further degree of caster saves, over all corners; null on an axle that does not steer.</summary>
    [Sample(0.06)]
    public required double? CasterSaving { get; init; }

    /// <summary>The same in the tightest corner.</summary>
    [Sample(0.11)]
    public required double? CasterSavingInTightest { get; init; }

    /// <summary>How the static camber moves with each input, the most telling first; inputs that do not move it are left out.</summary>
    public required SensitivityPart[] Sensitivities { get; init; }

    /// <summary>What the camber does on the straight; null where no tyre is given.</summary>
    public required StraightPart? Straight { get; init; }

    /// <summary>The same of the camber set now.</summary>
    public required StraightPart? StraightNow { get; init; }

    /// <summary>Each corner with the camber found, the hardest first.</summary>
    public required BendMixResponse[] Corners { get; init; }

    /// <summary>What it means, in sentences.</summary>
    public required string[] Summary { get; init; }

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
