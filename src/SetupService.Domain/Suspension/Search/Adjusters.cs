using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Search;

/// <summary>What each adjuster changes of a corner's points.</summary>
public static class Adjusters
{
    /// <summary>Whether a kind of suspension has the adjuster.</summary>
    public static bool Has(Hardpoints suspension, Adjuster adjuster) => adjuster switch
    {
        Adjuster.RideHeight or Adjuster.HubShimCamber or Adjuster.HubShimToe => true,
        Adjuster.TieRodLength or Adjuster.RackHeight => suspension is MacPhersonStrut or DoubleWishbone or FiveLink,
        Adjuster.StrutTopInboard or Adjuster.StrutTopRearward or Adjuster.KnuckleEccentric => suspension is MacPhersonStrut,
        Adjuster.LowerJointOutboard or Adjuster.LowerJointForward or Adjuster.LowerJointSpacer => suspension is MacPhersonStrut or DoubleWishbone,
        Adjuster.UpperJointOutboard or Adjuster.UpperJointForward => suspension is DoubleWishbone,
        Adjuster.LinkLength => suspension is FiveLink,
        _ => suspension is TrailingArm,
    };

    /// <summary>The corner with an adjustment made; one that the suspension has not changes nothing.</summary>
    public static AdjustedSetting Apply(in AdjustedSetting corner, in Adjustment adjustment)
    {
        var (setting, amount) = (corner.Setting, adjustment.Amount);
        return adjustment.By switch
        {
            Adjuster.RideHeight => corner with { TravelMm = corner.TravelMm - amount },
            Adjuster.HubShimCamber => corner with { Setting = setting with { CamberDeg = setting.CamberDeg + amount } },
            Adjuster.HubShimToe => corner with { Setting = setting with { ToeDeg = setting.ToeDeg + amount } },
            _ => corner with { Setting = setting with { Suspension = Changed(setting.Suspension, adjustment) } },
        };
    }

    /// <summary>The suspension with its tie rod or toe link made anew, mm long.</summary>
    public static Hardpoints WithTieRodLength(Hardpoints suspension, double lengthMm) => suspension switch
    {
        MacPhersonStrut strut => strut with { TieRod = strut.TieRod with { LengthMm = lengthMm } },
        DoubleWishbone wishbone => wishbone with { TieRod = wishbone.TieRod with { LengthMm = lengthMm } },
        FiveLink links => links.WithLink(4, links.TieRod with { LengthMm = lengthMm }),
        _ => suspension,
    };

    /// <summary>The tie rod or toe link; null where there is none.</summary>
    public static Link? TieRod(Hardpoints suspension) => suspension switch
    {
        MacPhersonStrut strut => strut.TieRod,
        DoubleWishbone wishbone => wishbone.TieRod,
        FiveLink links => links.TieRod,
        _ => null,
    };

    private static Hardpoints Changed(Hardpoints suspension, in Adjustment adjustment) => suspension switch
    {
        MacPhersonStrut strut => Changed(strut, adjustment),
        DoubleWishbone wishbone => Changed(wishbone, adjustment),
        FiveLink links => Changed(links, adjustment),
        TrailingArm arm => Changed(arm, adjustment),
        _ => suspension,
    };

    private static MacPhersonStrut Changed(MacPhersonStrut strut, in Adjustment adjustment) => adjustment.By switch
    {
        Adjuster.StrutTopInboard => strut with { StrutTop = strut.StrutTop - (adjustment.Amount * Vector3.Left) },
        Adjuster.StrutTopRearward => strut with { StrutTop = strut.StrutTop - (adjustment.Amount * Vector3.Forward) },
        Adjuster.KnuckleEccentric => Turned(strut, adjustment),
        Adjuster.TieRodLength or Adjuster.RackHeight => strut with { TieRod = Changed(strut.TieRod, adjustment) },
        _ => strut with { LowerArm = Changed(strut.LowerArm, adjustment) },
    };

    private static DoubleWishbone Changed(DoubleWishbone wishbone, in Adjustment adjustment) => adjustment.By switch
    {
        Adjuster.UpperJointOutboard or Adjuster.UpperJointForward => wishbone with { UpperArm = Changed(wishbone.UpperArm, adjustment) },
        Adjuster.TieRodLength or Adjuster.RackHeight => wishbone with { TieRod = Changed(wishbone.TieRod, adjustment) },
        _ => wishbone with { LowerArm = Changed(wishbone.LowerArm, adjustment) },
    };

    private static FiveLink Changed(FiveLink links, in Adjustment adjustment) => adjustment.By == Adjuster.LinkLength
        ? links.WithLink(adjustment.LinkIndex, Changed(links.Links[adjustment.LinkIndex], adjustment))
        : links.WithLink(4, Changed(links.TieRod, adjustment));

    private static TrailingArm Changed(TrailingArm arm, in Adjustment adjustment) => arm with
    {
        Outer = arm.Outer + (adjustment.Amount * (adjustment.By == Adjuster.OuterPivotUp ? Vector3.Up : Vector3.Forward)),
    };

    private static ControlArm Changed(ControlArm arm, in Adjustment adjustment) => adjustment.By switch
    {
        Adjuster.LowerJointSpacer => arm with { Joint = arm.Joint - (adjustment.Amount * Vector3.Up) },
        Adjuster.LowerJointOutboard or Adjuster.UpperJointOutboard => arm with { Seat = arm.Seat + (adjustment.Amount * Vector3.Left) },
        _ => arm with { Seat = arm.Seat + (adjustment.Amount * Vector3.Forward) },
    };

    private static Link Changed(Link link, in Adjustment adjustment) => adjustment.By == Adjuster.RackHeight
        ? link with { Inner = link.Inner + (adjustment.Amount * Vector3.Up) }
        : link with { LengthMm = link.LengthMm + adjustment.Amount };

    /// <summary>
    /// The wheel's top goes inboard against the strut, so seen from the upright the strut turns the other way about the bolt that
    /// stays.
    /// </summary>
    private static MacPhersonStrut Turned(MacPhersonStrut strut, in Adjustment adjustment)
    {
        var pivot = adjustment.Pivot ?? strut.StrutLower;
        var turn = Rotation.About(Vector3.Forward, -Math.Asin(Math.Clamp(adjustment.Amount / adjustment.BoltSpacingMm, -1, 1)));
        return strut with { StrutLower = pivot + turn.Apply(strut.StrutLower - pivot), StrutAxis = turn.Apply(strut.StrutAxis) };
    }
}
