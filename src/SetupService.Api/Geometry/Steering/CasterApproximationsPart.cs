using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Short cuts from camber readings at opposite steer angles to caster. They leave out what inclination and camber do; null where no such readings are there.</summary>
public sealed record CasterApproximationsPart
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
