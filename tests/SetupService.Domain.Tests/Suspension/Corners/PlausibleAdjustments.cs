using CsCheck;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Domain.Tests.Suspension.Corners;

/// <summary>Generates what a workshop may adjust at a corner, as far as it may.</summary>
internal static class PlausibleAdjustments
{
    public static Gen<Adjustment> For(Hardpoints suspension)
    {
        var possible = Possible(suspension);
        return Gen.Select(Gen.Int[0, possible.Length - 1], Gen.Double[-1, 1], Gen.Int[0, 4], Gen.Double[50, 70], (which, share, link, boltsMm) =>
            new Adjustment(possible[which], share * Most(possible[which])) { LinkIndex = link, BoltSpacingMm = boltsMm });
    }

    /// <summary>Every adjuster that the kind has.</summary>
    public static Adjuster[] Possible(Hardpoints suspension) => [.. Enum.GetValues<Adjuster>().Where(adjuster => Adjusters.Has(suspension, adjuster))];

    /// <summary>How far an adjuster goes either way, mm or degrees.</summary>
    public static double Most(Adjuster adjuster) => adjuster switch
    {
        Adjuster.KnuckleEccentric => 1.5,
        Adjuster.LowerJointSpacer => 15,
        Adjuster.LinkLength => 3,
        Adjuster.TieRodLength => 2,
        Adjuster.HubShimCamber or Adjuster.HubShimToe => 0.75,
        Adjuster.RideHeight => 30,
        _ => 8,
    };
}
