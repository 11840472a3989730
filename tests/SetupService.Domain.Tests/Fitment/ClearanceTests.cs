using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Fitment;

public sealed class ClearanceTests
{
    [Fact]
    public void The_present_fitting_keeps_the_gaps_it_was_measured_with()
    {
        var sheet = DemoCar.Check(DemoCar.Front(), DemoCar.Fitting());

        Assert.Equal(14, sheet[CheckId.InboardClearance].Margin!.Value.NominalMm, 9);
        Assert.Equal(18, sheet[CheckId.OutboardClearance].Margin!.Value.NominalMm, 9);
        Assert.Equal(22, sheet[CheckId.RadialClearance].Margin!.Value.NominalMm, 9);
        Assert.Equal(16, sheet[CheckId.FullLockClearance].Margin!.Value.NominalMm, 9);
        Assert.Equal(20, sheet[CheckId.SpringSeatClearance].Margin!.Value.NominalMm, 9);
    }

    // Growth to 1.04 of the section (UN R30 6.1.4, from memory) is 225 · 0.04 / 2 = 4.5 mm an edge; a tyre one
    // percent narrow (common practice) 1.125 mm; the ruler 1 mm.
    [Fact]
    public void Probable_takes_the_root_sum_square_and_worst_case_the_sum()
    {
        var margin = DemoCar.Check(DemoCar.Front(), DemoCar.Fitting())[CheckId.InboardClearance].Margin!.Value;

        Assert.Equal(14 - Math.Sqrt((4.5 * 4.5) + (1.125 * 1.125) + 1), margin.ProbableMm, 9);
        Assert.Equal(14 - (4.5 + 1.125 + 1), margin.WorstCaseMm, 9);
    }

    // The three-way rule at its ends: a probable margin of nothing is still free, a worst case that leaves just the margin wanted passes.
    [Theory]
    [InlineData(0, -3, CheckStatus.Caution)]
    [InlineData(-1e-9, -3, CheckStatus.Fail)]
    [InlineData(5, 3, CheckStatus.Pass)]
    [InlineData(5, 3 - 1e-9, CheckStatus.Caution)]
    public void A_margin_is_judged_at_its_ends(double probableMm, double worstCaseMm, CheckStatus expected) =>
        Assert.Equal(expected, ClearanceBudget.Judge(new Margin(10, probableMm, worstCaseMm), 3));

    [Theory]
    [InlineData(45, CheckStatus.Pass)]
    [InlineData(50, CheckStatus.Caution)]
    [InlineData(54.5, CheckStatus.Fail)]
    public void Inboard_room_falls_with_offset(double offsetMm, CheckStatus expected)
    {
        var sheet = DemoCar.Check(DemoCar.Front(), DemoCar.Fitting(offsetMm: offsetMm));

        Assert.Equal(expected, sheet[CheckId.InboardClearance].Status);
        Assert.Equal(14 - (offsetMm - 45), sheet[CheckId.InboardClearance].Margin!.Value.NominalMm, 9);
    }

    // Trade arithmetic worked by hand: 1.5° turned on the strut at 150 to 250 mm above the pivot takes
    // 150 · tan 1.5° = 3.93 to 250 · tan 1.5° = 6.55 mm.
    [Theory]
    [InlineData(150, 3.928)]
    [InlineData(250, 6.546)]
    public void A_knuckle_turned_on_the_strut_takes_its_height_times_the_tangent(double aboveMm, double takesMm)
    {
        var change = new CamberChange(-1.5, CamberChangePlace.StrutToKnuckle, 400, 400 + aboveMm);
        var car = DemoCar.Front(settings: new CheckSettings { CamberChange = change });

        var sheet = DemoCar.Check(car, DemoCar.Fitting());

        Assert.Equal(14 - takesMm, sheet[CheckId.InboardClearance].Margin!.Value.NominalMm, 3);
        Assert.Equal(16 - takesMm, sheet[CheckId.FullLockClearance].Margin!.Value.NominalMm, 3);
    }

    [Fact]
    public void A_strut_top_moved_in_keeps_the_gap_at_the_strut_and_gives_room_at_the_arch()
    {
        var change = new CamberChange(-1.5, CamberChangePlace.StrutTop, null, null);
        var car = DemoCar.Front(settings: new CheckSettings { CamberChange = change });

        var sheet = DemoCar.Check(car, DemoCar.Fitting());

        Assert.Equal(14, sheet[CheckId.InboardClearance].Margin!.Value.NominalMm, 9);
        Assert.True(sheet[CheckId.OutboardClearance].Margin!.Value.NominalMm > 18);
        Assert.True(sheet[CheckId.RadialClearance].Margin!.Value.NominalMm < 22);
    }

    [Fact]
    public void A_knuckle_turned_at_an_unknown_height_is_unknown_not_guessed()
    {
        var change = new CamberChange(-1.5, CamberChangePlace.StrutToKnuckle, null, null);
        var car = DemoCar.Front(settings: new CheckSettings { CamberChange = change });

        var sheet = DemoCar.Check(car, DemoCar.Fitting());

        Assert.Equal(CheckStatus.Unknown, sheet[CheckId.InboardClearance].Status);
        Assert.Equal(UnknownReason.PivotHeightMissing, sheet[CheckId.InboardClearance].Reason);
        Assert.Equal(CheckStatus.Unknown, sheet.Verdict);
    }

    [Fact]
    public void Gaps_at_ride_height_lose_the_travel()
    {
        var axle = DemoCar.Axle();
        axle = axle with
        {
            BumpStop = new BumpStop { LengthMm = 45, CompressedLengthMm = 18, MotionRatio = 0.9 },
            Clearance = axle.Clearance with { MeasuredAt = ClearanceMeasuredAt.RideHeight, RadialMm = 110 },
            Suspension = Read([(0, -0.7), (98, -2.2)]),
        };

        var sheet = DemoCar.Check(DemoCar.Front(axle), DemoCar.Fitting());

        // To the stop 68 mm, and 27 mm of stop at 0.9 mm a millimetre of travel: 98 mm.
        Assert.Equal(110 - 98, sheet[CheckId.RadialClearance].Margin!.Value.NominalMm, 9);
        Assert.Equal(18, sheet[CheckId.OutboardClearance].Margin!.Value.NominalMm, 9);
        Assert.Equal(14 - (317 * (Math.Sin(2.2 * Math.PI / 180) - Math.Sin(0.7 * Math.PI / 180))), sheet[CheckId.InboardClearance].Margin!.Value.NominalMm, 9);
    }

    [Fact]
    public void Gaps_at_ride_height_without_travel_or_curve_are_unknown()
    {
        var axle = DemoCar.Axle();
        axle = axle with { Clearance = axle.Clearance with { MeasuredAt = ClearanceMeasuredAt.RideHeight, RadialMm = 110 } };

        // Wider and taller than the present one: what takes no more room than that needs no gap.
        var candidate = DemoCar.Fitting(widthIn: 8.5, marking: "235/45R17 94W");
        var withTravel = DemoCar.Check(DemoCar.Front(axle), candidate);
        var without = DemoCar.Check(DemoCar.Front(axle with { BumpTravelMm = null }), candidate);

        Assert.Equal(UnknownReason.CamberCurveMissing, withTravel[CheckId.InboardClearance].Reason);
        Assert.NotNull(withTravel[CheckId.RadialClearance].Margin);
        Assert.Equal(UnknownReason.BumpTravelMissing, without[CheckId.RadialClearance].Reason);
    }

    [Fact]
    public void The_lock_is_left_out_on_an_unsteered_axle()
    {
        var rear = FitmentContext.Prepare(DemoCar.Vehicle(), CarAxle.Rear, new CheckSettings());

        Assert.False(DemoCar.Check(rear, DemoCar.Fitting()).Applicable.Contains(CheckId.FullLockClearance));
    }

    [Fact]
    public void More_travel_or_tolerance_never_raises_a_margin() =>
        Gen.Select(Gen.Double[0, 120], Gen.Double[0, 40], Gen.Double[0, 10], Gen.Double[0, 10], Gen.Double[-3, 3], Gen.Double[20, 60]).Sample(
            (travel, more, error, moreError, lean, offset) =>
            {
                var small = Margins(travel, error, lean, offset);
                var large = Margins(travel + more, error + moreError, lean, offset);
                return small.Zip(large).All(pair =>
                    pair.Second.NominalMm <= pair.First.NominalMm + 1e-9
                    && pair.Second.ProbableMm <= pair.First.ProbableMm + 1e-9
                    && pair.Second.WorstCaseMm <= pair.First.WorstCaseMm + 1e-9);
            });

    [Fact]
    public void Worst_case_is_never_more_than_probable_and_probable_never_more_than_nominal() =>
        Gen.Select(Gen.Double[0, 120], Gen.Double[0, 10], Gen.Double[-3, 3], Gen.Double[-60, 90]).Sample(
            (travel, error, lean, offset) => Margins(travel, error, lean, offset)
                .All(margin => margin.WorstCaseMm <= margin.ProbableMm && margin.ProbableMm <= margin.NominalMm));

    private static SuspensionModel Read((double TravelMm, double CamberDeg)[] readings) => SuspensionModel.From(
        new CornerReadings { Travel = [.. readings.Select(reading => new TravelReading(reading.TravelMm, reading.CamberDeg, null))] });

    private static List<Margin> Margins(double bumpTravelMm, double errorMm, double leanDeg, double offsetMm)
    {
        var axle = DemoCar.Axle();
        axle = axle with
        {
            BumpTravelMm = bumpTravelMm,
            BumpStop = new BumpStop { LengthMm = 45, CompressedLengthMm = 18, MotionRatio = 0.9 },
            Clearance = axle.Clearance with { InboardMm = 60, InboardAtFullLockMm = 60, OutboardMm = 60, RadialMm = 200, MeasuredAt = ClearanceMeasuredAt.RideHeight, UncertaintyMm = errorMm },
            Suspension = Read([(0, -0.7), (220, -0.7 + leanDeg)]),
        };
        var sheet = DemoCar.Check(DemoCar.Front(axle), DemoCar.Fitting(offsetMm: offsetMm));
        return [.. Enumerable.Range(0, CheckIdSet.ClearanceCount).Select(id => sheet[(CheckId)id].Margin!.Value)];
    }
}
