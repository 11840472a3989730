using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>One place of the wheel's path.</summary>
/// <param name="TravelMm">Wheel travel from ride height, mm; positive = bump.</param>
/// <param name="LeanPerMm">Movement inboard that the change of camber adds, per mm of height above the wheel centre; negative = outboard.</param>
/// <param name="InboardMm">Movement of the wheel centre inboard, mm; negative = outboard.</param>
internal readonly record struct PathPlace(double TravelMm, double LeanPerMm, double InboardMm);

/// <summary>The wheel's path from ride height to a travel as the suspension gives it, or why it is not known. Computed once for a car.</summary>
internal sealed record WheelTravelPath
{
    /// <summary>The places beyond ride height, in order; empty where <see cref="Missing"/> says why, and where there is no travel.</summary>
    public IReadOnlyList<PathPlace> Places { get; private init; } = [];

    /// <summary>Why the path is not known; <see cref="UnknownReason.Computed"/> where it is.</summary>
    public UnknownReason Missing { get; private init; }

    /// <summary>The inputs that would settle what is missing, as JSON Pointers within the axle.</summary>
    public IReadOnlyList<string> Needs { get; private init; } = [];

    /// <summary>The point or reading to look at first where they contradict each other, as the contract names it.</summary>
    public string? ContradictingPoint { get; private init; }

    /// <summary>Where the parts stop short, the last travel at which they close, mm.</summary>
    public double ReachedMm { get; private init; }

    /// <summary>True where the movement of the wheel centre sideways is known.</summary>
    public bool IsSidewaysKnown { get; private init; }

    /// <summary>True when both motions of a twist beam, both wheels alike and against each other, are in it.</summary>
    public bool IsOfBothMotions { get; private init; }

    /// <summary>True when readings were extrapolated beyond their ends.</summary>
    public bool IsExtrapolated { get; private init; }

    /// <summary>
    /// The path of an axle's left wheel from ride height to a travel, mm; positive = bump. Static camber and toe that are not known are those read, else 0: the change
    /// of camber hardly depends on them.
    /// </summary>
    public static WheelTravelPath Over(Axle axle, double toMm)
    {
        var path = Over(axle, toMm, AxleMotion.Parallel);
        if (!axle.Suspension.HasTwoMotions || path.Missing != UnknownReason.Computed) return path;
        var opposite = Over(axle, toMm, AxleMotion.Opposite);
        return opposite.Missing == UnknownReason.Computed ? path with { Places = [.. path.Places, .. opposite.Places], IsOfBothMotions = true } : opposite;
    }

    /// <summary>The place of one travel, mm, both wheels alike; null where it is not known.</summary>
    public static PathPlace? At(Axle axle, double travelMm) => Over(axle, travelMm, AxleMotion.Parallel).Places is [.., var place] ? place : null;

    private static WheelTravelPath Over(Axle axle, double toMm, AxleMotion motion)
    {
        var path = axle.Suspension.PathOver(
            new()
            {
                CamberDeg = axle.Left.CamberDeg ?? axle.Suspension.ReadCamberDeg ?? 0,
                ToeDeg = axle.Left.ToeDeg ?? axle.Suspension.ReadToeDeg ?? 0,
                Motion = motion,
            },
            0,
            toMm);
        if (path.Gap is { } gap)
        {
            return new()
            {
                Missing = gap.Kind switch
                {
                    SuspensionGapKind.Contradicts => UnknownReason.PointsContradict,
                    SuspensionGapKind.TravelNotReached => UnknownReason.TravelNotReached,
                    SuspensionGapKind.DoesNotHold => UnknownReason.PointsDoNotHold,
                    _ => UnknownReason.CamberCurveMissing,
                },
                Needs = gap.Needs,
                ContradictingPoint = gap.Member,
                ReachedMm = gap.ReachedMm ?? 0,
            };
        }

        var places = new List<PathPlace>(path.Points.Count);
        var stated = SinDeg(path.StatedCamberDeg);
        foreach (var point in path.Points)
        {
            if (point.TravelMm != 0) places.Add(new(point.TravelMm, stated - SinDeg(point.CamberDeg), -(point.OutboardMm ?? 0)));
        }

        return new() { Places = places, IsSidewaysKnown = path.SidewaysGap is null, IsExtrapolated = path.IsExtrapolated };
    }

    /// <summary>Sine of an angle in degrees, limited to ±90°: extrapolated readings may go beyond.</summary>
    private static double SinDeg(double angleDeg) => Math.Sin(double.DegreesToRadians(Math.Clamp(angleDeg, -90, 90)));
}
