using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Domain.Tests.Fitment;

public sealed class OffsetWindowTests
{
    private const double StepMm = 0.01;

    // The window and the check must tell the same story at the window's ends, to a hundredth of a millimetre.
    [Fact]
    public void Just_inside_fails_no_check_of_room_and_just_outside_fails_one() =>
        Gen.Select(Gen.Double[0, 40], Gen.Double[0, 40], Gen.Double[0, 40], Gen.Double[5, 60], Gen.Int[14, 17].Select(halves => halves / 2.0), Gen.Double[-3, 3]).Sample(
            (inboard, outboard, seat, lock_, width, camber) =>
            {
                var axle = DemoCar.Axle();
                axle = axle with
                {
                    Clearance = axle.Clearance with { InboardMm = inboard, OutboardMm = outboard, SpringSeatMm = seat, InboardAtFullLockMm = lock_ },
                };
                var settings = new CheckSettings { CamberChange = new CamberChange(camber, CamberChangePlace.StrutToKnuckle, 200, 400) };
                var car = DemoCar.Front(axle, settings);
                var window = OffsetWindow.Compute(car, DemoCar.Tyre("235/45R17 94W"), width);
                if (window.Status == WindowStatus.Fail) return window.BlockedBy is not null || AnyFails(car, width, (window.FromOffsetMm!.Value + window.ToOffsetMm!.Value) / 2);
                var (from, to) = (window.FromOffsetMm!.Value, window.ToOffsetMm!.Value);
                if (to - from < 2 * StepMm) return true;
                return !AnyFails(car, width, from + StepMm) && !AnyFails(car, width, to - StepMm)
                    && AnyFails(car, width, from - StepMm) && AnyFails(car, width, to + StepMm);
            });

    [Fact]
    public void An_end_not_known_is_null()
    {
        var axle = DemoCar.Axle();
        var noInboard = axle with { Clearance = axle.Clearance with { InboardMm = null, InboardAtFullLockMm = null, SpringSeatMm = null } };
        var nothing = noInboard with { Clearance = noInboard.Clearance with { OutboardMm = null } };

        var half = OffsetWindow.Compute(DemoCar.Front(noInboard), DemoCar.Tyre(), 8);
        var none = OffsetWindow.Compute(DemoCar.Front(nothing), DemoCar.Tyre(), 8);

        Assert.Equal(WindowStatus.Pass, half.Status);
        Assert.NotNull(half.FromOffsetMm);
        Assert.Null(half.ToOffsetMm);
        Assert.Equal(WindowStatus.Unknown, none.Status);
    }

    [Fact]
    public void A_tyre_too_tall_for_the_arch_fits_at_no_offset()
    {
        var window = OffsetWindow.Compute(DemoCar.Front(), DemoCar.Tyre("225/65R17 102H"), 7.5);

        Assert.Equal(WindowStatus.Fail, window.Status);
        Assert.Equal(CheckId.RadialClearance, window.BlockedBy);
    }

    private static bool AnyFails(FitmentContext car, double widthIn, double offsetMm)
    {
        var tyre = DemoCar.Tyre("235/45R17 94W");
        var sheet = DemoCar.Check(car, new Domain.Fitment.Fitting(DemoCar.Wheel(widthIn, offsetMm), tyre));
        return Enumerable.Range(0, CheckIdSet.ClearanceCount).Any(id => sheet[(CheckId)id].Status == CheckStatus.Fail);
    }
}
