using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>The static camber with another caster.</summary>
public sealed record CamberForCasterPart
{
    /// <summary>Caster.</summary>
    [Sample(7.4)]
    public required double CasterDeg { get; init; }

    /// <summary>Static camber; null where a corner then has no equilibrium.</summary>
    [Sample(-2.5)]
    public required double? StaticCamberDeg { get; init; }
}
