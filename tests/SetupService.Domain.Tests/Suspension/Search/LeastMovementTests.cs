using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Search;

public sealed class LeastMovementTests
{
    private const double AngleDeg = 1e-6;

    // Where a movement leads to is asked for: the answer leads there too, and is no longer a way. What does next to nothing to an
    // angle is left out, for there the way back need not be the same one.
    [Fact]
    public void The_camber_that_a_movement_gives_is_reached_again_by_no_greater_movement() =>
        PlausibleCorners.Any.SelectMany(setting => Moved(setting, OfCamber(setting.Suspension), [])).Sample(drawn =>
        {
            var start = AdjustedCorner.AsStated(drawn.Setting)!;
            var wanted = start.With(drawn.Adjustments, drawn.ResetToe)!;
            var answered = AssertReached(start, drawn.Adjustments, new(wanted.CamberDeg, null), drawn.ResetToe);

            Assert.InRange(SizeMm(answered), 0, SizeMm(drawn.Adjustments) + 1e-3);
        });

    [Fact]
    public void Camber_and_caster_that_a_movement_gives_are_reached_again_by_no_greater_movement() =>
        Gen.OneOf(PlausibleCorners.Struts, PlausibleCorners.Wishbones)
            .SelectMany(setting => Moved(setting, OfCamber(setting.Suspension), OfCaster(setting.Suspension))).Sample(drawn =>
            {
                var start = AdjustedCorner.AsStated(drawn.Setting)!;
                var wanted = start.With(drawn.Adjustments, drawn.ResetToe)!;
                var answered = AssertReached(start, drawn.Adjustments, new(wanted.CamberDeg, wanted.CasterDeg), drawn.ResetToe);

                Assert.InRange(SizeMm(answered), 0, SizeMm(drawn.Adjustments) + 1e-3);
            });

    // Toe too, by a shim: three angles by three adjusters, or toe alone.
    [Fact]
    public void Camber_caster_and_toe_that_a_movement_gives_are_reached_again() =>
        Gen.Select(PlausibleCorners.Struts, Gen.Double[-1, 1].Array[3], Gen.Bool).Sample((setting, shares, isToeAlone) =>
        {
            var start = AdjustedCorner.AsStated(setting)!;
            Adjustment[] moved = [new(Adjuster.HubShimCamber, 0.5 * shares[0]), new(Adjuster.StrutTopRearward, 6 * shares[1]), new(Adjuster.HubShimToe, 0.5 * shares[2])];
            if (isToeAlone) moved = moved[2..];
            var wanted = start.With(moved, resetToe: false)!;
            var target = isToeAlone ? new AngleTarget(null, null, wanted.ToeDeg) : new AngleTarget(wanted.CamberDeg, wanted.CasterDeg, wanted.ToeDeg);

            var found = LeastMovement.Find(start, [.. moved.Select(one => new AdjusterRoom(one, -20, 20))], target, archGapMm: null, resetToe: false)!;

            Assert.True(found.IsReached);
            for (var i = 0; i < moved.Length; i++) Assert.Equal(moved[i].Amount, found.Amounts[i], 1e-3);
            Assert.Equal(wanted.ToeDeg!.Value, found.After.ToeDeg!.Value, AngleDeg);
        });

    [Theory]
    [InlineData(2, 1)]
    [InlineData(-2, -0.5)]
    public void Toe_out_of_reach_leaves_its_shim_at_the_limit(double awayDeg, double atDeg) =>
        PlausibleCorners.Any.Sample(setting =>
        {
            var start = AdjustedCorner.AsStated(setting)!;
            var found = LeastMovement.Find(start, [new(new(Adjuster.HubShimToe, 0), -0.5, 1)], new(null, null, start.ToeDeg + awayDeg), archGapMm: null, resetToe: false)!;

            Assert.False(found.IsReached);
            Assert.Equal([new BindingLimit(Obstacle.Limit, 0)], found.BindingLimits);
            Assert.Equal(atDeg, found.Amounts[0], 1e-9);
        });

    [Fact]
    public void Out_of_reach_the_adjuster_stands_at_its_limit_and_is_named() =>
        PlausibleCorners.Any.Sample(setting =>
        {
            var start = AdjustedCorner.AsStated(setting)!;
            var found = LeastMovement.Find(
                start, [new(new(Adjuster.HubShimCamber, 0), -0.5, 0.25)], new(start.CamberDeg + 3, null), archGapMm: null, resetToe: false)!;

            Assert.False(found.IsReached);
            Assert.Equal([new BindingLimit(Obstacle.Limit, 0)], found.BindingLimits);
            Assert.Equal(0.25, found.Amounts[0], 1e-9);
            Assert.Equal(start.CamberDeg + 0.25, found.After.CamberDeg, AngleDeg);
        });

    // A little out of reach on the other side: the error is 0.1°, and the limit is named all the same.
    [Fact]
    public void A_little_out_of_reach_the_limit_is_named_too() =>
        PlausibleCorners.Any.Sample(setting =>
        {
            var start = AdjustedCorner.AsStated(setting)!;
            var found = LeastMovement.Find(
                start, [new(new(Adjuster.HubShimCamber, 0), -0.5, 0.25)], new(start.CamberDeg - 0.6, null), archGapMm: null, resetToe: false)!;

            Assert.False(found.IsReached);
            Assert.Equal([new BindingLimit(Obstacle.Limit, 0)], found.BindingLimits);
            Assert.Equal(-0.5, found.Amounts[0], 1e-9);
        });

    // More caster than the top mount's slot gives, and less.
    [Theory]
    [InlineData(4)]
    [InlineData(-4)]
    public void Caster_out_of_reach_is_not_reached(double awayDeg) =>
        PlausibleCorners.Struts.Sample(setting =>
        {
            var start = AdjustedCorner.AsStated(setting)!;
            var found = LeastMovement.Find(
                start, [new(new(Adjuster.StrutTopRearward, 0), -2, 2)], new(null, start.CasterDeg + awayDeg), archGapMm: null, resetToe: false)!;

            Assert.False(found.IsReached);
        });

    [Fact]
    public void What_does_not_move_the_angle_is_said_to_have_no_effect_and_is_not_moved() =>
        PlausibleCorners.Any.Sample(setting =>
        {
            var start = AdjustedCorner.AsStated(setting)!;
            var found = LeastMovement.Find(
                start, [new(new(Adjuster.HubShimToe, 0), -1, 1)], new(start.CamberDeg + 0.2, null), archGapMm: null, resetToe: false)!;

            Assert.False(found.IsReached);
            Assert.Equal([new BindingLimit(Obstacle.NoEffect, null)], found.BindingLimits);
            Assert.Equal(0, found.Amounts[0]);
        });

    // With the toe reset a rod's length and its inner end's height come out as they must: whatever is asked of them changes nothing.
    [Fact]
    public void A_rod_that_is_set_again_has_no_effect_and_is_not_moved() =>
        Gen.Select(PlausibleCorners.WithTieRod, Gen.Bool.Select(isRack => isRack ? Adjuster.RackHeight : Adjuster.TieRodLength), Gen.Double[-1, 1]).Sample((setting, adjuster, awayDeg) =>
        {
            if (Math.Abs(awayDeg) < 0.01) return;
            var start = AdjustedCorner.AsStated(setting)!;
            var found = LeastMovement.Find(start, [new(new(adjuster, 0), -5, 4)], new(start.CamberDeg + awayDeg, null), archGapMm: null, resetToe: true)!;

            Assert.False(found.IsReached);
            Assert.Equal([new BindingLimit(Obstacle.NoEffect, null)], found.BindingLimits);
            Assert.Equal(0, found.Amounts[0]);
        });

    [Fact]
    public void A_target_that_is_already_met_moves_nothing() =>
        PlausibleCorners.Any.Sample(setting =>
        {
            var start = AdjustedCorner.AsStated(setting)!;
            AdjusterRoom[] rooms = [.. PlausibleAdjustments.Possible(setting.Suspension).Take(4).Select(adjuster =>
                new AdjusterRoom(new(adjuster, 0) { BoltSpacingMm = 60 }, -5, 5))];
            var found = LeastMovement.Find(start, rooms, new(start.CamberDeg, start.CasterDeg), archGapMm: null, resetToe: false)!;

            Assert.True(found.IsReached);
            Assert.Empty(found.BindingLimits);
            Assert.All(found.Amounts, amount => Assert.Equal(0, amount, 1e-6));
        });

    /// <summary>Finds the movement within twice what is usual, holds it to the target, and gives it.</summary>
    internal static Adjustment[] AssertReached(AdjustedCorner start, Adjustment[] moved, AngleTarget target, bool resetToe)
    {
        AdjusterRoom[] rooms = [.. moved.Select(one => new AdjusterRoom(one, -2 * PlausibleAdjustments.Most(one.By), 2 * PlausibleAdjustments.Most(one.By)))];
        var found = LeastMovement.Find(start, rooms, target, archGapMm: null, resetToe)!;

        Assert.True(found.IsReached, $"{target} is not reached: {string.Join(", ", found.BindingLimits)}, {string.Join(", ", found.Amounts)}");
        Assert.Empty(found.BindingLimits);

        // Forward again with the amounts answered.
        Adjustment[] answered = [.. moved.Zip(found.Amounts, (one, amount) => one with { Amount = amount })];
        var after = start.With(answered, resetToe)!;
        Assert.Equal(target.CamberDeg!.Value, after.CamberDeg, AngleDeg);
        if (target.CasterDeg is { } caster) Assert.Equal(caster, after.CasterDeg!.Value, AngleDeg);
        if (resetToe) Assert.Equal(start.Wheel.ToeDeg, after.Wheel.ToeDeg, 1e-9);
        return answered;
    }

    /// <summary>A movement of one or two of the first adjusters and, where there are any, one of the second, each at most once.</summary>
    private static Gen<(CornerSetting Setting, Adjustment[] Adjustments, bool ResetToe)> Moved(CornerSetting setting, Adjustment[] first, Adjustment[] second) =>
        Gen.Select(Gen.Int[0, first.Length - 1], Gen.Int[0, first.Length - 1], Gen.Int[0, Math.Max(0, second.Length - 1)], Gen.Double[-1, 1].Array[3], Gen.Bool, (a, b, c, shares, resets) =>
        {
            Adjustment[] chosen = [.. new[] { first[a], first[b] }.Distinct(), .. second.Skip(c).Take(1)];
            return (setting, chosen.Select((one, i) => one with { Amount = shares[i] * PlausibleAdjustments.Most(one.By) }).ToArray(), resets && setting.Suspension.HasTieRod);
        });

    private static Adjustment[] OfCamber(Hardpoints suspension) => suspension switch
    {
        MacPhersonStrut => [new(Adjuster.StrutTopInboard, 0), new(Adjuster.KnuckleEccentric, 0) { BoltSpacingMm = 60 }, new(Adjuster.LowerJointOutboard, 0)],
        DoubleWishbone => [new(Adjuster.UpperJointOutboard, 0), new(Adjuster.LowerJointOutboard, 0), new(Adjuster.HubShimCamber, 0)],
        FiveLink => [new(Adjuster.LinkLength, 0), new(Adjuster.LinkLength, 0) { LinkIndex = 1 }, new(Adjuster.HubShimCamber, 0)],
        TrailingArm => [new(Adjuster.OuterPivotUp, 0), new(Adjuster.HubShimCamber, 0)],
        _ => [new(Adjuster.HubShimCamber, 0)],
    };

    private static Adjustment[] OfCaster(Hardpoints suspension) => suspension is MacPhersonStrut
        ? [new(Adjuster.StrutTopRearward, 0), new(Adjuster.LowerJointForward, 0)]
        : [new(Adjuster.UpperJointForward, 0), new(Adjuster.LowerJointForward, 0)];

    private static double SizeMm(Adjustment[] adjustments) => Math.Sqrt(adjustments.Sum(one => one.Amount * one.WeightMm * one.Amount * one.WeightMm));
}
