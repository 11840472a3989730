using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Fitment;

/// <summary>What a fitter looks at first: whether what was given of the car can be right at all.</summary>
public sealed class GivenCarTests
{
    // The rule: own gap + measuring error − travel below zero, without growth or production. At worst travel nothing comes off: −1.1 + 1 < 0 ≤ −0.9 + 1.
    [Theory]
    [InlineData(-0.9, false)]
    [InlineData(-1.1, true)]
    public void A_gap_the_present_wheel_cannot_have_contradicts(double gapMm, bool contradicts)
    {
        foreach (var place in Enumerable.Range(0, CheckIdSet.ClearanceCount).Select(place => (CheckId)place))
        {
            var car = DemoCar.Front(DemoCar.Axle() with { Clearance = Gap(DemoCar.Axle().Clearance, place, gapMm) });
            var result = DemoCar.Check(car, DemoCar.Fitting())[place];

            Assert.Equal(contradicts, result is { Status: CheckStatus.Unknown, Reason: UnknownReason.MeasurementsContradict });
            if (!contradicts) continue;
            Assert.Equal(2, UnknownNeeds.Find(car, DemoCar.Fitting(), place, result).Count);
            Assert.Contains("contradict", CheckWords.Explanation(car, DemoCar.Fitting(), place, result, UnitSystem.Metric), StringComparison.Ordinal);
        }
    }

    // 68 mm to the stop and (45 − 18) mm of stop at a motion ratio of 0.9 are 98 mm: 96.9 + 1 − 98 < 0.
    [Theory]
    [InlineData(96.9, true)]
    [InlineData(97.1, false)]
    public void A_gap_over_the_tread_less_than_the_travel_contradicts_it(double gapMm, bool contradicts)
    {
        var axle = DemoCar.Axle();
        axle = axle with
        {
            BumpStop = new BumpStop { LengthMm = 45, CompressedLengthMm = 18, MotionRatio = 0.9 },
            Clearance = axle.Clearance with { MeasuredAt = ClearanceMeasuredAt.RideHeight, RadialMm = gapMm },
        };
        var car = DemoCar.Front(axle);
        var result = DemoCar.Check(car, DemoCar.Fitting())[CheckId.RadialClearance];

        Assert.Equal(contradicts, result.Reason == UnknownReason.MeasurementsContradict);
        if (contradicts) Assert.Equal(["/vehicle/front/clearance/radialMm", "/vehicle/front/bumpTravelMm"], UnknownNeeds.Find(car, DemoCar.Fitting(), CheckId.RadialClearance, result));
    }

    [Fact]
    public void A_wheel_that_stands_outside_the_arch_contradicts_no_cover()
    {
        var axle = DemoCar.Axle();
        var sheet = DemoCar.Check(DemoCar.Front(axle with { Clearance = axle.Clearance with { OutboardMm = -12 } }), DemoCar.Fitting());

        Assert.Equal(CheckStatus.Caution, sheet[CheckId.ArchCover].Status);
        Assert.Equal(-12, sheet[CheckId.ArchCover].Value!.Value, 9);
    }

    public static TheoryData<string, string, string> Wrong() => new()
    {
        { "presentRimMismatch", "tyre.marking", "wheel.rimDiameterIn" },
        { "presentRimWidthOutside", "tyre.marking", "wheel.rimWidthIn" },
        { "loadBelowUnsprungMass", "frontAxleLoadKg", "unsprungMassKg" },
        { "loadAbovePlate", "frontAxleLoadKg", "maximumAxleLoadKg" },
        { "pressureBeyondMaximum", "tyre.pressureKpa", "tyre.marking" },
        { "loadIndexUnlikeSize", "load index", "size" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Two_inputs_that_can_hardly_both_be_right_are_a_caution_that_names_both(string code, string one, string other)
    {
        var axle = DemoCar.Axle();
        axle = code switch
        {
            "presentRimMismatch" => axle with { Wheel = DemoCar.Wheel(diameterIn: 18) },
            "presentRimWidthOutside" => axle with { Wheel = DemoCar.Wheel(widthIn: 10.5) },
            "loadBelowUnsprungMass" => axle with { LoadKg = 70, UnsprungMassKg = 38 },
            "loadAbovePlate" => axle with { LoadKg = 900 },
            "pressureBeyondMaximum" => axle with { Tyre = DemoCar.Tyre(pressureKpa: 420) },
            _ => axle with { Tyre = DemoCar.Tyre("225/45R17 121W") },
        };

        var caution = Assert.Single(GivenCautions.For(DemoCar.Front(axle), null), one => one.Code == code);
        Assert.Contains(one, caution.Text, StringComparison.Ordinal);
        Assert.Contains(other, caution.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(GivenCautions.For(DemoCar.Front(), DemoCar.Tyre()), given => given.Code == code);
        Assert.Contains(FitmentCautions.For(DemoCar.Front(axle), DemoCar.Fitting(), DemoCar.Check(DemoCar.Front(axle), DemoCar.Fitting())), given => given.Code == code);
    }

    // Load indices read off sidewalls of common standard-load sizes (from memory), within a tenth of the formula of the American association.
    [Theory]
    [InlineData("225/45R17 91W")]
    [InlineData("195/65R15 91H")]
    [InlineData("205/55R16 91V")]
    [InlineData("175/65R14 82T")]
    [InlineData("255/35R19 92Y")]
    [InlineData("285/30R20 95Y")]
    public void Usual_load_indices_are_those_of_their_sizes(string marking)
    {
        var tyre = DemoCar.Tyre(marking);
        Assert.InRange(tyre.Marking.LoadCapacityKg!.Value / GivenCautions.SizeLoadKg(tyre.Marking)!.Value, 0.9, 1.1);
        Assert.DoesNotContain(GivenCautions.For(DemoCar.Front(), tyre), caution => caution.Code == "loadIndexUnlikeSize");
    }

    // By the formula above 225/45R17 carries 596 kg: our bounds of 0.75 and 1.4 are 447 and 835 kg, between indices 79 (437 kg) and 80 (450 kg) and between
    // 101 (825 kg) and 102 (850 kg).
    [Theory]
    [InlineData(79, true)]
    [InlineData(80, false)]
    [InlineData(101, false)]
    [InlineData(102, true)]
    public void A_load_index_unlike_its_size_is_told_beyond_the_bounds(int index, bool isTold) =>
        Assert.Equal(isTold, GivenCautions.For(DemoCar.Front(), DemoCar.Tyre($"225/45R17 {index}W")).Any(caution => caution.Code == "loadIndexUnlikeSize"));

    [Theory]
    [InlineData(null, null, 63.4, UnknownReason.SpacerPilotMissing, CheckStatus.Caution)]
    [InlineData(63.4, null, 63.4, UnknownReason.SpacerPilotMissing, CheckStatus.Caution)]
    [InlineData(null, 63.4, 63.4, UnknownReason.SpacerPilotMissing, CheckStatus.Caution)]
    [InlineData(63.4, 63.4, 63.4, UnknownReason.OnSpacerPilot, CheckStatus.Pass)]
    [InlineData(60.1, 63.4, 63.4, UnknownReason.SpacerNotOnHub, CheckStatus.Fail)]
    [InlineData(63.4, 66.6, 63.4, UnknownReason.OnSpacerPilot, CheckStatus.Fail)]
    [InlineData(63.4, 63.4, 66.6, UnknownReason.RingsNeededOnSpacer, CheckStatus.Caution)]
    [InlineData(66.6, 63.4, 63.4, UnknownReason.RingsNeededOnSpacer, CheckStatus.Caution)]
    public void With_a_spacer_the_wheel_sits_on_the_spacers_pilot(double? boreMm, double? pilotMm, double wheelMm, UnknownReason reason, CheckStatus status)
    {
        var candidate = DemoCar.Fitting(spacerMm: 15);
        candidate = candidate with { Wheel = candidate.Wheel with { SpacerPilotBoreMm = boreMm, SpacerPilotDiameterMm = pilotMm, CentreBoreMm = wheelMm } };
        var car = DemoCar.Front();
        var result = DemoCar.Check(car, candidate)[CheckId.CentreBore];

        Assert.Equal((reason, status), (result.Reason, result.Status));
        Assert.EndsWith(".", CheckWords.Explanation(car, candidate, CheckId.CentreBore, result, UnitSystem.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Fasteners_of_a_spacer_are_not_the_hubs()
    {
        var candidate = DemoCar.Fitting(spacerMm: 15);
        candidate = candidate with { Wheel = candidate.Wheel with { SpacerHasOwnFasteners = true } };

        var result = DemoCar.Check(DemoCar.Front(), candidate)[CheckId.Fastener];

        Assert.Equal((CheckStatus.Unknown, UnknownReason.SpacerOwnFasteners), (result.Status, result.Reason));
        Assert.Contains(FitmentAssumptions.ForCheck(DemoCar.Front(), DemoCar.Fitting(spacerMm: 15)), one => one.Input == "/candidate/wheel/spacerHasOwnFasteners");
    }

    // 225 on 7.5 in is 225 wide; a protector of 6 mm a side stands 6 mm further out and takes 6 mm of each gap.
    [Fact]
    public void A_rim_protector_takes_what_it_stands_out()
    {
        var plain = DemoCar.Check(DemoCar.Front(), DemoCar.Fitting());
        var candidate = DemoCar.Fitting();
        var sheet = DemoCar.Check(DemoCar.Front(), candidate with { Tyre = candidate.Tyre with { RimProtectorMm = 6 } });

        foreach (var place in new[] { CheckId.InboardClearance, CheckId.OutboardClearance })
        {
            Assert.Equal(plain[place].Margin!.Value.NominalMm - 6, sheet[place].Margin!.Value.NominalMm, 9);
            Assert.Equal(plain[place].Margin!.Value.WorstCaseMm - 6, sheet[place].Margin!.Value.WorstCaseMm, 9);
        }

        Assert.Contains(FitmentAssumptions.ForCheck(DemoCar.Front(), candidate), one => one.Input == "/candidate/tyre/rimProtectorMm");
    }

    // Standard load 225/45R17 91: 615 kg at 250 kPa; at 230 kPa 615 · 0.92^0.8 = 575 kg, enough for 570; as extra load 615 · (230/290)^0.8 = 511, not.
    [Theory]
    [InlineData(1140, "would be fail and not pass")]
    [InlineData(800, "would be the same")]
    public void An_assumed_standard_load_says_whether_extra_load_would_change_the_verdict(double axleLoadKg, string words)
    {
        var axle = DemoCar.Axle();
        var car = DemoCar.Front(axle with { MaximumLoadKg = axleLoadKg });
        var assumed = Assert.Single(FitmentAssumptions.ForCheck(car, DemoCar.Fitting()), one => one.Text == "standard load");

        Assert.Equal("/candidate/tyre/marking", assumed.Input);
        Assert.Contains(words, assumed.Reason, StringComparison.Ordinal);
        Assert.DoesNotContain(FitmentAssumptions.ForCheck(car, DemoCar.Fitting(marking: "225/45R17 94W XL")), one => one.Text == "standard load");
    }

    [Fact]
    public void Permitted_rims_from_memory_are_a_listed_assumption() =>
        Assert.Contains(FitmentAssumptions.ForCheck(DemoCar.Front(), DemoCar.Fitting()), one => one.Input == "/candidate/tyre/marking" && one.Text!.StartsWith("rims from", StringComparison.Ordinal));

    // A standing tyre's radius is less than its rolling radius: the tread under load is shorter than the circle it rolls as (GOST R 52899 rows of radial
    // tyres: 0.91 to 0.94 of the free radius standing; 3.05/π = 0.97 of it rolling).
    [Theory]
    [InlineData("225/45R17 91W", 345, 230, 0.93, 0.96)]
    [InlineData("195/65R15 91H", 400, 220, 0.90, 0.95)]
    [InlineData("175/65R14 82T", 300, 210, 0.90, 0.95)]
    public void The_loaded_radius_without_a_rate_is_a_static_estimate(string text, double loadKg, double kpa, double least, double greatest)
    {
        var marking = DemoCar.Tyre(text).Marking;
        var mm = TyreInUse.Compute(marking, null, kpa, null, loadKg, null).LoadedRadiusMm!.Value;

        Assert.InRange(mm / (marking.Dimensions.OverallDiameterMm / 2), least, greatest);
        Assert.True(mm < RollingCircumference.Mm(marking.Dimensions, marking.Construction) / (2 * Math.PI));
    }

    [Fact]
    public void More_load_or_less_pressure_never_raises_the_estimated_radius() =>
        Gen.Select(Gen.Double[50, 700], Gen.Double[1, 200], Gen.Double[120, 350], Gen.Double[1, 100]).Sample((loadKg, more, kpa, softer) =>
        {
            var marking = DemoCar.Tyre().Marking;
            return LoadedRadius.StaticEstimateMm(marking, (loadKg + more) * 9.80665, kpa - softer) <= LoadedRadius.StaticEstimateMm(marking, loadKg * 9.80665, kpa)
                && LoadedRadius.StaticEstimateMm(marking, loadKg * 9.80665, kpa) >= marking.Dimensions.RimDiameterMm / 2;
        });

    private static Clearance Gap(Clearance clearance, CheckId place, double mm) => place switch
    {
        CheckId.InboardClearance => clearance with { InboardMm = mm },
        CheckId.OutboardClearance => clearance with { OutboardMm = mm },
        CheckId.RadialClearance => clearance with { RadialMm = mm },
        CheckId.FullLockClearance => clearance with { InboardAtFullLockMm = mm },
        _ => clearance with { SpringSeatMm = mm },
    };
}
