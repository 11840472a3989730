using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Fitment.Checks;

public sealed class HubAndLoadTests
{
    // LI 91 is 615 kg (French order of 24 Oct 1994, Annex I); the pressure formula after the ETRTO table printed in
    // Reimpell gives 615 · (230/250)^0.8 = 575.3 kg; half of 870 kg is 435 kg.
    [Fact]
    public void Capacity_at_the_pressure_is_held_against_half_the_axle()
    {
        var result = DemoCar.Check(DemoCar.Front(), DemoCar.Fitting())[CheckId.LoadCapacity];

        Assert.Equal(CheckStatus.Pass, result.Status);
        Assert.Equal(575.3, result.Value!.Value, 1);
        Assert.Equal(435, result.Limit!.Value, 9);
    }

    // Reimpell, Fig. 10.1-14: a V tyre carries 94 % at 230 km/h: 615 · 0.94 = 578.1 kg.
    [Fact]
    public void A_v_tyre_carries_less_above_210()
    {
        var car = FitmentContext.Prepare(DemoCar.Vehicle() with { TopSpeedKmh = 230 }, CarAxle.Front, new CheckSettings());
        var candidate = new Domain.Fitment.Fitting(DemoCar.Wheel(), DemoCar.Tyre("225/45R17 91V", 250));

        Assert.Equal(578.1, DemoCar.Check(car, candidate)[CheckId.LoadCapacity].Value!.Value, 1);
    }

    [Theory]
    [InlineData("225/45R17 86W", 250, CheckStatus.Fail, UnknownReason.IndexBelowMinimum)]
    [InlineData("225/45R17 91W", 140, CheckStatus.Fail, UnknownReason.Computed)]
    [InlineData("225/45R17 94V", 165, CheckStatus.Caution, UnknownReason.SpeedAdditionShort)]
    [InlineData("225/45R17 99V", 140, CheckStatus.Unknown, UnknownReason.PressureBelowTable)]
    [InlineData("225/45ZR17", 250, CheckStatus.Unknown, UnknownReason.MarkingSilent)]
    [InlineData("225/45R17 91T", 250, CheckStatus.Unknown, UnknownReason.BeyondSpeedSymbol)]
    public void Capacity_tells_its_cases_apart(string marking, double pressureKpa, CheckStatus status, UnknownReason reason)
    {
        var candidate = new Domain.Fitment.Fitting(DemoCar.Wheel(), DemoCar.Tyre(marking, pressureKpa));

        var result = DemoCar.Check(DemoCar.Front(), candidate)[CheckId.LoadCapacity];

        Assert.Equal((status, reason), (result.Status, result.Reason));
    }

    [Theory]
    [InlineData("225/45R17 91W", CheckStatus.Pass)]
    [InlineData("225/45R17 91H", CheckStatus.Fail)]
    [InlineData("225/45R17 91H M+S", CheckStatus.Caution)]
    [InlineData("225/45R17 91N M+S", CheckStatus.Fail)]
    [InlineData("225/45ZR17", CheckStatus.Pass)]
    public void The_speed_symbol_is_held_against_the_top_speed(string marking, CheckStatus expected) =>
        Assert.Equal(expected, DemoCar.Check(DemoCar.Front(), DemoCar.Fitting(marking: marking))[CheckId.SpeedRating].Status);

    // A symbol allows its own speed (Y: 300 km/h, from memory, UN Regulation No. 30); in brackets it leaves open what lies above.
    [Theory]
    [InlineData("225/45R17 91Y", 300, CheckStatus.Pass)]
    [InlineData("225/45R17 91Y", 300.5, CheckStatus.Fail)]
    [InlineData("225/45ZR17 (91Y)", 300, CheckStatus.Pass)]
    [InlineData("225/45ZR17 (91Y)", 300.5, CheckStatus.Unknown)]
    public void A_symbol_allows_the_very_speed_it_stands_for(string marking, double topSpeedKmh, CheckStatus expected)
    {
        var car = FitmentContext.Prepare(DemoCar.Vehicle() with { TopSpeedKmh = topSpeedKmh }, CarAxle.Front, new CheckSettings());

        Assert.Equal(expected, DemoCar.Check(car, DemoCar.Fitting(marking: marking))[CheckId.SpeedRating].Status);
    }

    [Theory]
    [InlineData(63.4, CheckStatus.Pass)]
    [InlineData(63.3, CheckStatus.Fail)]
    [InlineData(72.6, CheckStatus.Caution)]
    public void A_bore_smaller_than_the_hub_fails_and_a_larger_one_needs_rings(double boreMm, CheckStatus expected)
    {
        var candidate = DemoCar.Fitting();
        candidate = candidate with { Wheel = candidate.Wheel with { CentreBoreMm = boreMm } };

        Assert.Equal(expected, DemoCar.Check(DemoCar.Front(), candidate)[CheckId.CentreBore].Status);
    }

    // One thread diameter of engagement: common practice, no source.
    [Theory]
    [InlineData(0, 12, CheckStatus.Pass)]
    [InlineData(2, 12, CheckStatus.Pass)]
    [InlineData(2.1, 12, CheckStatus.Fail)]
    [InlineData(0, 9, CheckStatus.Caution)]
    public void Thread_engaged_is_length_less_pad_less_spacer(double spacerMm, double padMm, CheckStatus expected)
    {
        var candidate = DemoCar.Fitting(spacerMm: spacerMm);
        candidate = candidate with { Wheel = candidate.Wheel with { PadThicknessMm = padMm } };

        var result = DemoCar.Check(DemoCar.Front(), candidate)[CheckId.Fastener];

        Assert.Equal(28 - padMm - spacerMm, result.Value!.Value, 9);
        Assert.Equal(expected, result.Status);
    }

    [Fact]
    public void Seats_that_differ_fail_even_where_lengths_are_not_known()
    {
        var candidate = DemoCar.Fitting();
        candidate = candidate with { Wheel = candidate.Wheel with { FastenerSeat = FastenerSeat.Ball13, PadThicknessMm = null } };

        Assert.Equal(UnknownReason.SeatMismatch, DemoCar.Check(DemoCar.Front(), candidate)[CheckId.Fastener].Reason);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    public void Brake_room_is_the_least_distance_of_the_outlines(double spacerMm)
    {
        var axle = DemoCar.Axle();
        axle = axle with { Hub = axle.Hub with { CaliperProfile = [new(-40, 160), new(10, 165), new(20, 165)] } };
        var candidate = DemoCar.Fitting(spacerMm: spacerMm);

        // The barrel narrows outboard: radius 186 at −100 to 176 at +20, then straight; a spacer carries it outboard.
        candidate = candidate with { Wheel = candidate.Wheel with { InnerProfile = [new(-100, 186), new(20, 176), new(60, 176)] } };
        var nominal = DemoCar.Check(DemoCar.Front(axle), candidate)[CheckId.BrakeClearance].Margin!.Value.NominalMm;

        // With the spacer the station at +20 mm of the hub is +10 mm of the wheel: 176 + 10/12 − 165 up, and so much less to the slope of 1 in 12.
        Assert.Equal(spacerMm == 0 ? 11 : (11 + (10.0 / 12)) * 12 / Math.Sqrt(145), nominal, 9);
    }

    [Theory]
    [InlineData("225/45R17 86T", 87, CheckStatus.Fail, UnknownReason.IndexBelowMinimum)]
    [InlineData("225/45R17 76T", null, CheckStatus.Fail, UnknownReason.BeyondSpeedSymbol)]
    public void An_index_too_low_fails_though_the_car_is_faster_than_the_symbol(string marking, int? lowest, CheckStatus status, UnknownReason reason)
    {
        var car = DemoCar.Front(DemoCar.Axle() with { MinimumLoadIndex = lowest });

        var result = DemoCar.Check(car, DemoCar.Fitting(marking: marking))[CheckId.LoadCapacity];

        Assert.Equal((status, reason), (result.Status, result.Reason));
    }

    [Theory]
    [InlineData(690, CheckStatus.Unknown)]
    [InlineData(1200, CheckStatus.Fail)]
    public void The_lowest_index_allowed_is_no_load_the_axle_is_known_to_have(double drivenKg, CheckStatus expected)
    {
        // A car on its own tyres at its own 230 kPa: 91 stands for 615 kg at 250 kPa, and 575 kg at 230.
        var car = DemoCar.Front(DemoCar.Axle() with { MaximumLoadKg = null, MinimumLoadIndex = 91, LoadKg = drivenKg });

        Assert.Equal(expected, DemoCar.Check(car, DemoCar.Fitting())[CheckId.LoadCapacity].Status);
    }

    [Fact]
    public void As_far_apart_as_now_is_no_wider_than_now()
    {
        // 637 and 653 mm beside 645: 8 mm less now, 8 mm more then.
        var now = DemoCar.Front(DemoCar.Axle() with { Tyre = DemoCar.Tyre("225/40R18 92W") });
        var vehicle = now.Vehicle with { Rear = DemoCar.Axle() with { Tyre = DemoCar.Tyre("235/40R18 95W") } };
        var car = FitmentContext.Prepare(vehicle, CarAxle.Front, new CheckSettings());

        Assert.Equal(UnknownReason.NoWiderThanNow, DemoCar.Check(car, DemoCar.Fitting(marking: "245/40R18 97W"))[CheckId.AxleDiameterMatch].Reason);
    }

    [Fact]
    public void An_unmeasured_car_is_unknown_and_says_so()
    {
        var car = FitmentContext.Prepare(new Vehicle(), CarAxle.Front, new CheckSettings());

        var sheet = DemoCar.Check(car, DemoCar.Fitting());

        Assert.Equal(CheckStatus.Unknown, sheet.Verdict);
        Assert.Equal(default, sheet.Failed);
        Assert.True(sheet.Unknown.Contains(CheckId.InboardClearance));
        Assert.True(sheet.Unknown.Contains(CheckId.LoadCapacity));
        Assert.False(sheet.Unknown.Contains(CheckId.RimDiameter));
        Assert.Null(sheet.Governing);
    }

    [Theory]
    [InlineData("225/45R17 91W", DrivenAxle.Both, CheckStatus.Pass)]
    [InlineData("225/50R17 94W", DrivenAxle.Rear, CheckStatus.Caution)]
    [InlineData("225/50R17 94W", DrivenAxle.Both, CheckStatus.Fail)]
    public void Front_and_rear_must_roll_alike(string marking, DrivenAxle driven, CheckStatus expected)
    {
        var car = FitmentContext.Prepare(DemoCar.Vehicle() with { DrivenAxle = driven }, CarAxle.Front, new CheckSettings());

        Assert.Equal(expected, DemoCar.Check(car, DemoCar.Fitting(marking: marking))[CheckId.AxleDiameterMatch].Status);
    }

    [Theory]
    [InlineData("225/45R17 91W", CheckStatus.Pass)]
    [InlineData("225/50R17 94W", CheckStatus.Caution)]
    [InlineData("215/45R17 91W", CheckStatus.Pass)]
    [InlineData("225/75R17 94W", CheckStatus.Fail)]
    [InlineData("225/25R17 94W", CheckStatus.Fail)]
    public void The_speedometer_rule_allows_no_reading_low(string marking, CheckStatus expected) =>
        Assert.Equal(expected, DemoCar.Check(DemoCar.Front(), DemoCar.Fitting(marking: marking))[CheckId.OverallDiameter].Status);
}
