using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Words;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Fitment;

/// <summary>What takes no more room than the wheel and tyre fitted now fits where they fit, measured or not; what takes more says by how much.</summary>
public sealed class InsidePresentTests
{
    private static readonly CheckId[] Places = [CheckId.InboardClearance, CheckId.OutboardClearance, CheckId.RadialClearance, CheckId.FullLockClearance, CheckId.SpringSeatClearance];

    private static FitmentContext Unmeasured => DemoCar.Front(DemoCar.Axle() with { Clearance = new Clearance() });

    [Fact]
    public void A_set_like_the_present_one_passes_every_room_without_a_single_gap()
    {
        var sheet = DemoCar.Check(Unmeasured, DemoCar.Fitting());

        Assert.All(Places, place => Assert.Equal((CheckStatus.Pass, UnknownReason.InsidePresent), (sheet[place].Status, sheet[place].Reason)));
        Assert.All(Places, place => Assert.Null(sheet[place].Margin));
        Assert.Equal(CheckStatus.Pass, sheet[CheckId.ArchCover].Status);
        Assert.Equal(CheckStatus.Pass, sheet.Verdict);
    }

    // 225 on 8 in is 5.08 mm wider than on 7.5, half of it on either side; 5 mm less offset moves that out: +7.5 outboard, −2.5 inboard (by hand, 0.4 of a half inch of rim).
    [Fact]
    public void Further_out_passes_inboard_and_is_unknown_at_the_arch_by_the_millimetres_it_stands_out()
    {
        var car = Unmeasured;
        var candidate = DemoCar.Fitting(widthIn: 8, offsetMm: 40);
        var sheet = DemoCar.Check(car, candidate);

        Assert.Equal(CheckStatus.Unknown, sheet.Verdict);
        Assert.Equal([CheckId.OutboardClearance], sheet.DecidedBy.ToArray());
        Assert.Equal(7.54, sheet[CheckId.OutboardClearance].MoreRoomMm!.Value, 0.01);
        Assert.Equal(-2.46, sheet[CheckId.InboardClearance].MoreRoomMm!.Value, 0.01);
        Assert.Contains("takes 7.5 mm more room to the arch lip than what is fitted now", SummaryWords.Write(car, candidate, sheet, UnitSystem.Metric), StringComparison.Ordinal);
    }

    // The gap named in the sentence is the one at which it passes, and half a millimetre less is a caution.
    [Fact]
    public void The_gap_wanted_is_the_one_that_passes()
    {
        var candidate = DemoCar.Fitting(widthIn: 8, offsetMm: 40);
        var text = CheckWords.Explanation(Unmeasured, candidate, CheckId.OutboardClearance, DemoCar.Check(Unmeasured, candidate)[CheckId.OutboardClearance], UnitSystem.Metric);
        var wantedMm = double.Parse(text.Split("with a gap of ")[1].Split(" mm")[0], System.Globalization.CultureInfo.InvariantCulture);

        Assert.Equal(CheckStatus.Pass, At(wantedMm + 0.06));
        Assert.Equal(CheckStatus.Caution, At(wantedMm - 0.5));

        CheckStatus At(double gapMm) => DemoCar.Check(DemoCar.Front(DemoCar.Axle() with { Clearance = new Clearance { OutboardMm = gapMm } }), candidate)[CheckId.OutboardClearance].Status;
    }

    // A gap too small for the tolerances fails any wheel that uses it; the wheel it was measured with drives there every day.
    [Fact]
    public void A_tight_gap_passes_what_is_fitted_now_and_fails_what_takes_more()
    {
        var car = DemoCar.Front(DemoCar.Axle() with { Clearance = DemoCar.Axle().Clearance with { OutboardMm = 2 } });

        Assert.Equal(CheckStatus.Pass, DemoCar.Check(car, DemoCar.Fitting())[CheckId.OutboardClearance].Status);
        Assert.Equal(CheckStatus.Fail, DemoCar.Check(car, DemoCar.Fitting(offsetMm: 44))[CheckId.OutboardClearance].Status);
    }

    // A snow tyre may grow by 1 % more (from memory, UN Regulation No. 30): the same size is not inside.
    [Fact]
    public void What_may_grow_further_is_not_inside()
    {
        var sheet = DemoCar.Check(Unmeasured, DemoCar.Fitting(marking: "225/45R17 91V M+S 3PMSF"));

        Assert.Equal(CheckStatus.Unknown, sheet[CheckId.RadialClearance].Status);
        Assert.Equal(0, sheet[CheckId.RadialClearance].MoreRoomMm!.Value, 9);
        Assert.Equal(CheckStatus.Pass, sheet[CheckId.InboardClearance].Status);
    }

    [Fact]
    public void A_camber_change_takes_room_of_its_own()
    {
        var change = new CamberChange(-1.5, CamberChangePlace.StrutToKnuckle, 240, 430);
        var car = DemoCar.Front(DemoCar.Axle() with { Clearance = new Clearance() }, new CheckSettings { CamberChange = change });

        var result = DemoCar.Check(car, DemoCar.Fitting())[CheckId.InboardClearance];
        Assert.Equal(CheckStatus.Unknown, result.Status);
        Assert.Equal(190 * Math.Tan(double.DegreesToRadians(1.5)), result.MoreRoomMm!.Value, 9);
    }

    [Fact]
    public void Without_the_present_fitting_nothing_is_inside()
    {
        var car = DemoCar.Front(DemoCar.Axle() with { Clearance = new Clearance(), Tyre = null });

        Assert.All(Places, place => Assert.Equal((CheckStatus.Unknown, (double?)null), (DemoCar.Check(car, DemoCar.Fitting())[place].Status, DemoCar.Check(car, DemoCar.Fitting())[place].MoreRoomMm)));
    }

    [Fact]
    public void Less_room_taken_never_fails_whatever_the_gap() =>
        Gen.Select(Gen.Double[0, 60], Gen.Double[0, 12], Gen.Int[0, 2].Select(i => new[] { 6.5, 7.0, 7.5 }[i]), Gen.Int[0, 2].Select(i => new[] { "225/45R17 91W", "215/45R17 91W", "225/40R17 90W" }[i])).Sample((gapMm, fromEdgeMm, widthIn, marking) =>
        {
            var clearance = new Clearance { InboardMm = gapMm, OutboardMm = gapMm, RadialMm = gapMm, InboardAtFullLockMm = gapMm, SpringSeatMm = gapMm };
            var car = DemoCar.Front(DemoCar.Axle() with { Clearance = clearance });
            var candidate = DemoCar.Fitting(widthIn, 45, marking);
            var narrowerMm = (Envelope.Compute(DemoCar.Fitting()).HalfWidthMm - Envelope.Compute(candidate).HalfWidthMm) * (fromEdgeMm / 12);
            var moved = candidate with { Wheel = candidate.Wheel with { OffsetMm = 45 + narrowerMm } };

            Assert.All(Places, place => Assert.Equal(CheckStatus.Pass, DemoCar.Check(car, moved)[place].Status));
        });
}
