using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>The static camber that gives the wanted inclination, and what it depends on.</summary>
public sealed record CamberTargetResult
{
    /// <summary>Static camber of both wheels that gives the inclination wanted, degrees, with the 90 % range the inputs leave, skewed where theirs are.</summary>
    public required Uncertainty StaticCamberDeg { get; init; }

    /// <summary>
    /// Static camber of both wheels at which the axle's tyres give most side force over the same bends, degrees, in half degrees: judgement, as nobody has published a best inclination
    /// of road tyres.
    /// </summary>
    public required Uncertainty BestGripCamberDeg { get; init; }

    /// <summary>The camber set now, mean of both wheels, degrees.</summary>
    public required double SetCamberDeg { get; init; }

    /// <summary>What to do first.</summary>
    public required CamberAdvice Advice { get; init; }

    /// <summary>The axle's grip over the same bends at any static camber.</summary>
    public required CamberGrip Grip { get; init; }

    /// <summary>Static camber by right turns alone, which load the left wheel, degrees; null where there are none.</summary>
    public required double? LeftDeg { get; init; }

    /// <summary>Static camber by left turns alone, which load the right wheel, degrees; null where there are none.</summary>
    public required double? RightDeg { get; init; }

    /// <summary>Mean inclination with the camber set now, degrees.</summary>
    public required double MeanInclinationNowDeg { get; init; }

    /// <summary>The static camber nearest to the one wanted that the adjustment reaches, degrees.</summary>
    public required double NearestCamberDeg { get; init; }

    /// <summary>Mean inclination with that, degrees; null where a corner has no equilibrium then.</summary>
    public required double? MeanInclinationAtNearestDeg { get; init; }

    /// <summary>Every corner with the camber wanted, the hardest first.</summary>
    public required IReadOnlyList<BendWork> Corners { get; init; }

    /// <summary>How the camber wanted moves with each input that moves it, the largest effect first.</summary>
    public required IReadOnlyList<CamberSensitivity> Sensitivities { get; init; }

    /// <summary>Degrees of static camber that one more degree of caster saves, over all corners; null on an axle that does not steer.</summary>
    public required double? SavedPerCasterDeg { get; init; }

    /// <summary>The same in the tightest corner alone.</summary>
    public required double? SavedPerCasterInTightestDeg { get; init; }

    /// <summary>The camber wanted with other casters; empty on an axle that does not steer.</summary>
    public required IReadOnlyList<CamberForCaster> WithCaster { get; init; }
}

/// <summary>What the outer wheel does in one kind of corner.</summary>
/// <param name="Corner">The corner.</param>
/// <param name="Attitude">The car in it.</param>
/// <param name="InclinationAngleDeg">Inclination to the road, degrees.</param>
/// <param name="LoadN">Load, N.</param>
/// <param name="SlipDeg">Slip angle, degrees.</param>
/// <param name="Work">Share of the whole work, load times slip times time, 0 to 1.</param>
public readonly record struct BendWork(BendShare Corner, CorneringAttitude Attitude, double InclinationAngleDeg, double LoadN, double SlipDeg, double Work)
{
    /// <summary>The direction of turn.</summary>
    public TurnDirection Turn => Corner.Demand.Turn;
}

/// <summary>The static camber wanted with another caster.</summary>
/// <param name="CasterDeg">Caster, degrees.</param>
/// <param name="StaticCamberDeg">Static camber, degrees; null where a corner has no equilibrium.</param>
public readonly record struct CamberForCaster(double CasterDeg, double? StaticCamberDeg);

/// <summary>How the static camber wanted moves with one input.</summary>
/// <param name="Place">The input: a JSON Pointer into the request.</param>
/// <param name="Unit">Its unit, as a member's name ends in it.</param>
/// <param name="Value">Its value.</param>
/// <param name="DegPerUnit">Change of the camber wanted per unit of it, degrees.</param>
/// <param name="StandardError">How closely the input is known, in its unit.</param>
public sealed record CamberSensitivity(string Place, string Unit, double Value, double DegPerUnit, double StandardError)
{
    /// <summary>Change of the camber wanted, degrees, with the input at the lower end of its 90 % range.</summary>
    public double AtLowerDeg { get; init; } = -Uncertainty.StandardErrorsAtNinetyPct * StandardError * DegPerUnit;

    /// <summary>The same with the input at the upper end.</summary>
    public double AtUpperDeg { get; init; } = Uncertainty.StandardErrorsAtNinetyPct * StandardError * DegPerUnit;

    /// <summary>What that leaves uncertain of the camber wanted, degrees, one standard error: the mean of both sides.</summary>
    public double LeavesOpenDeg => (Math.Abs(AtLowerDeg) + Math.Abs(AtUpperDeg)) / (2 * Uncertainty.StandardErrorsAtNinetyPct);
}

/// <summary>Why no static camber is found.</summary>
/// <param name="Reason">Why; null where the search for the camber itself came to no end within ±<see cref="CamberTargetSearch.LargestDeg"/>.</param>
/// <param name="Corner">The corner that has no equilibrium.</param>
public readonly record struct CamberTargetFailure(CorneringFailure? Reason, CorneringDemand Corner);
