using SetupService.Domain.Answers;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>The static camber that stands the tread as wanted, and what it rests on.</summary>
public sealed record CamberTargetResult
{
    /// <summary>Static camber of both wheels, degrees, with what the inputs leave open.</summary>
    public required Estimate StaticCamberDeg { get; init; }

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

    /// <summary>How the camber wanted moves with each input that moves it, the most telling first.</summary>
    public required IReadOnlyList<CamberSensitivity> Sensitivities { get; init; }

    /// <summary>Degrees of static camber that one more degree of caster saves, over all corners; null on an axle that does not steer.</summary>
    public required double? SavedPerCasterDeg { get; init; }

    /// <summary>The same in the tightest corner alone.</summary>
    public required double? SavedPerCasterInTightestDeg { get; init; }

    /// <summary>The camber wanted with other casters; empty on an axle that does not steer.</summary>
    public required IReadOnlyList<CamberForCaster> WithCaster { get; init; }

    /// <summary>By what the tyres' peak is scaled; 1 = not.</summary>
    public required double PeakScale { get; init; }
}
