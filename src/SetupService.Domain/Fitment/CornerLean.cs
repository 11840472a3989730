using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>
/// How far the points of a suspension let the wheel lean between ride height and the bump travel, found by moving the corner; or why
/// they do not tell it.
/// </summary>
internal sealed record CornerLean
{
    /// <summary>The greatest change of camber towards either side, degrees; null where <see cref="Missing"/> says why.</summary>
    public CamberExtremes? Extremes { get; private init; }

    /// <summary>Why the lean is not known.</summary>
    public Finding Missing { get; private init; }

    /// <summary>The point to look at first where points contradict each other, as the contract names it.</summary>
    public string? ContradictingPoint { get; private init; }

    /// <summary>Where the parts stop short, the last travel at which they close, mm.</summary>
    public double ReachedMm { get; private init; }

    /// <summary>Whether it is the greater of two motions that both wheels of a twist beam can make.</summary>
    public bool IsOfBothMotions { get; private init; }

    /// <summary>
    /// Moves the left corner to the bump travel, mm. Static camber and toe that are not known are taken as 0: the change of camber
    /// hardly depends on them.
    /// </summary>
    public static CornerLean Of(Axle axle, double bumpMm)
    {
        var lean = Of(axle, bumpMm, AxleMotion.Parallel);
        if (!axle.Suspension.HasTwoMotions || lean.Extremes is not { } alike) return lean;
        var opposite = Of(axle, bumpMm, AxleMotion.Opposite);
        return opposite.Extremes is { } unlike ? new() { Extremes = alike.Or(unlike), IsOfBothMotions = true } : opposite;
    }

    private static CornerLean Of(Axle axle, double bumpMm, AxleMotion motion)
    {
        var path = axle.Suspension.PathOver(new() { CamberDeg = axle.Left.CamberDeg ?? 0, ToeDeg = axle.Left.ToeDeg ?? 0, Motion = motion }, 0, bumpMm);
        if (path.Gap is not { } gap) return new() { Extremes = new(path.InboardLeanDeg, path.OutboardLeanDeg) };
        return gap.Kind switch
        {
            SuspensionGapKind.Contradicts => new() { Missing = Finding.PointsContradict, ContradictingPoint = gap.Member },
            SuspensionGapKind.TravelNotReached => new() { Missing = Finding.TravelNotReached, ReachedMm = gap.ReachedMm ?? 0 },
            SuspensionGapKind.DoesNotHold => new() { Missing = Finding.PointsDoNotHold },
            _ => new() { Missing = Finding.CamberCurveMissing },
        };
    }
}
