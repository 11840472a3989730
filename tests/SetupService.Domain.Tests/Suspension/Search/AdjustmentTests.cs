using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Tests.Suspension.Corners;
using SetupService.Domain.Tests.Suspension.Points;

namespace SetupService.Domain.Tests.Suspension.Search;

public sealed class AdjustmentTests
{
    private const double Same = 1e-9;

    private static readonly Gen<(CornerSetting Setting, Adjustment[] Adjustments)> Adjusted = PlausibleCorners.Any.SelectMany(setting =>
        PlausibleAdjustments.For(setting.Suspension).Array[1, 3].Select(adjustments => (setting, adjustments)));

    [Fact]
    public void Adjusting_nothing_changes_nothing() =>
        PlausibleCorners.Any.Sample(setting =>
        {
            var before = AdjustedCorner.AsStated(setting)!;
            Adjustment[] none = [.. PlausibleAdjustments.Possible(setting.Suspension).Select(adjuster => new Adjustment(adjuster, 0) { BoltSpacingMm = 60 })];
            AssertSame(before, before.With([], resetToe: false)!);
            AssertSame(before, before.With(none, resetToe: false)!);
            if (setting.Suspension.HasTieRod) AssertSame(before, before.With(none, resetToe: true)!);
        });

    [Fact]
    public void An_adjustment_and_its_opposite_cancel() =>
        Gen.Select(Adjusted, Gen.Bool).Sample((drawn, resets) =>
        {
            var resetToe = resets && drawn.Setting.Suspension.HasTieRod;
            var before = AdjustedCorner.AsStated(drawn.Setting)!;
            var there = before.With(drawn.Adjustments, resetToe)!;
            Adjustment[] back = [.. drawn.Adjustments.Reverse().Select(one => one with { Amount = -one.Amount })];

            AssertSame(before, there.With(back, resetToe)!);
        });

    [Fact]
    public void The_parts_are_held_and_the_wheel_keeps_its_height_but_for_the_ride_height() =>
        Adjusted.Sample(drawn =>
        {
            var after = AdjustedCorner.AsStated(drawn.Setting)!.With(drawn.Adjustments, resetToe: false)!;
            var raisedMm = drawn.Adjustments.Where(one => one.By == Adjuster.RideHeight).Sum(one => one.Amount);

            Assert.InRange(HeldParts.WorstMm(after.Mechanism.Setting, after.State), 0, Same);
            Assert.Equal(drawn.Setting.Suspension.WheelCentre.Z - raisedMm, after.Wheel.Centre.Z, Same);
        });

    [Fact]
    public void Resetting_the_toe_keeps_it_and_tells_the_rods_length_that_does() =>
        PlausibleCorners.WithTieRod.SelectMany(setting =>
            PlausibleAdjustments.For(setting.Suspension).Array[1, 3].Select(adjustments => (Setting: setting, Adjustments: adjustments))).Sample(drawn =>
        {
            var before = AdjustedCorner.AsStated(drawn.Setting)!;
            var after = before.With(drawn.Adjustments, resetToe: true)!;
            Assert.Equal(before.Wheel.ToeDeg, after.Wheel.ToeDeg, Same);

            // The rod of that length, put in by hand, gives the same corner without any reset.
            var plain = before.With(drawn.Adjustments, resetToe: false)!;
            var byHand = plain.With([new(Adjuster.TieRodLength, after.TieRodLengthMm!.Value - plain.TieRodLengthMm!.Value)], resetToe: false)!;
            AssertSame(after, byHand);
        });

    // Far more than a workshop would: either way the parts end in the same place, or one way says that they do not close.
    [Fact]
    public void A_large_adjustment_made_at_once_is_the_same_as_made_bit_by_bit() =>
        PlausibleCorners.Any.SelectMany(setting => Gen.Select(PlausibleAdjustments.For(setting.Suspension), Gen.Double[1, 8], (one, times) =>
            (Setting: setting, Adjustment: one with { Amount = times * one.Amount }))).Sample(drawn =>
        {
            // The eccentric turns by an arc sine, which does not add up.
            if (drawn.Adjustment.By == Adjuster.KnuckleEccentric) return;
            var atOnce = AdjustedCorner.AsStated(drawn.Setting)!.With([drawn.Adjustment], resetToe: false);
            var bitByBit = AdjustedCorner.AsStated(drawn.Setting);
            for (var i = 0; i < 100 && bitByBit is not null; i++)
            {
                bitByBit = bitByBit.With([drawn.Adjustment with { Amount = drawn.Adjustment.Amount / 100 }], resetToe: false);
            }

            if (atOnce is null || bitByBit is null) return;
            Assert.InRange(StateGap.Between(bitByBit.State, atOnce.State), 0, 1e-7);
        });

    // A degree of shim is a degree at the wheel, for it turns the hub in the upright and nothing else.
    [Fact]
    public void A_shim_changes_the_angle_it_is_named_after_by_its_amount() =>
        Gen.Select(PlausibleCorners.Any, Gen.Double[-0.75, 0.75], Gen.Double[-0.75, 0.75]).Sample((setting, camberDeg, toeDeg) =>
        {
            var before = AdjustedCorner.AsStated(setting)!;
            var after = before.With([new(Adjuster.HubShimCamber, camberDeg), new(Adjuster.HubShimToe, toeDeg)], resetToe: false)!;

            Assert.Equal(camberDeg, after.Wheel.CamberDeg - before.Wheel.CamberDeg, Same);
            Assert.Equal(toeDeg, after.Wheel.ToeDeg - before.Wheel.ToeDeg, Same);
        });

    // A spacer at the ride height is travel by another name.
    [Fact]
    public void Raising_the_body_is_drooping_the_wheel() =>
        Gen.Select(PlausibleCorners.Any, Gen.Double[-40, 40]).Sample((setting, raisedMm) =>
        {
            var before = AdjustedCorner.AsStated(setting)!;
            var after = before.With([new(Adjuster.RideHeight, raisedMm)], resetToe: false)!;

            Assert.InRange(StateGap.Between(Walked.To(before.Mechanism, -raisedMm, 0), after.State), 0, Same);
        });

    private static void AssertSame(AdjustedCorner expected, AdjustedCorner actual)
    {
        Assert.Equal(expected.TieRodLengthMm ?? 0, actual.TieRodLengthMm ?? 0, Same);
        foreach (var (name, value) in FigureTable.Of(expected.Figures)) FigureTable.AssertSame(name, value, FigureTable.Value(actual.Figures, name));
    }

    [Fact]
    public void Each_kind_of_suspension_has_its_own_adjusters()
    {
        Hardpoints[] all = [DrawnSuspensions.Strut, DrawnSuspensions.Wishbone, DrawnSuspensions.Five, DrawnSuspensions.Arm];
        Has([true, true, true, true], Adjuster.RideHeight, Adjuster.HubShimCamber, Adjuster.HubShimToe);
        Has([true, true, true, false], Adjuster.TieRodLength, Adjuster.RackHeight);
        Has([true, false, false, false], Adjuster.StrutTopInboard, Adjuster.StrutTopRearward, Adjuster.KnuckleEccentric);
        Has([true, true, false, false], Adjuster.LowerJointOutboard, Adjuster.LowerJointForward, Adjuster.LowerJointSpacer);
        Has([false, true, false, false], Adjuster.UpperJointOutboard, Adjuster.UpperJointForward);
        Has([false, false, true, false], Adjuster.LinkLength);

        void Has(bool[] expected, params Adjuster[] adjusters) =>
            Assert.All(adjusters, adjuster => Assert.Equal(expected, all.Select(suspension => Adjusters.Has(suspension, adjuster))));
    }
}
