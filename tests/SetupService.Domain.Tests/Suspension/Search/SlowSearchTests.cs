using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Tests.Oracle;

namespace SetupService.Domain.Tests.Suspension.Search;

/// <summary>
/// Adjusters that do little to the angle beside what they do in the second order: the least movement swings to and fro, and must still
/// end on the target. The corners are the second working's.
/// </summary>
public sealed class SlowSearchTests
{
    [Theory]
    [InlineData("ST1", false, false, Adjuster.LowerJointForward, -7.3, Adjuster.LowerJointSpacer, -9.2, null, 0)]
    [InlineData("DW1", false, false, Adjuster.LowerJointForward, -5.4, Adjuster.LowerJointSpacer, -7.6, null, 0)]
    [InlineData("DW1", true, false, Adjuster.LowerJointForward, -6.5, Adjuster.LowerJointSpacer, -8.5, null, 0)]
    [InlineData("high caster", true, true, Adjuster.LowerJointOutboard, -4.6, Adjuster.HubShimCamber, 0.6, Adjuster.UpperJointOutboard, 7.8)]
    [InlineData("negative scrub", false, true, Adjuster.StrutTopInboard, 5.8, Adjuster.KnuckleEccentric, 1, Adjuster.HubShimCamber, -0.6)]
    public void A_search_that_does_not_come_to_rest_ends_on_the_target(
        string name, bool resetToe, bool withCaster, Adjuster first, double firstAmount, Adjuster second, double secondAmount, Adjuster? third, double thirdAmount)
    {
        var start = AdjustedCorner.AsStated(OracleCorner.Setting(GeometryCases.Named("corners", name).GetProperty("request")))!;
        Adjustment[] moved = [Read(first, firstAmount), Read(second, secondAmount), .. third is { } last ? new[] { Read(last, thirdAmount) } : []];
        var wanted = start.With(moved, resetToe)!;

        LeastMovementTests.AssertReached(start, moved, new(wanted.CamberDeg, withCaster ? wanted.CasterDeg : null), resetToe);
    }

    private static Adjustment Read(Adjuster adjuster, double amount) => new(adjuster, amount) { BoltSpacingMm = 55 };
}
