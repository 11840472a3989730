using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Domain.Tests.Fitment;

public sealed class CheckWordsTests
{
    [Theory]
    [InlineData(UnitSystem.Metric, "14 mm")]
    [InlineData(UnitSystem.Us, "0.55 in")]
    public void An_explanation_quotes_the_numbers_of_its_case(UnitSystem units, string gap)
    {
        var car = DemoCar.Front();
        var candidate = DemoCar.Fitting(offsetMm: 48);
        var result = DemoCar.Check(car, candidate)[CheckId.InboardClearance];

        Assert.Contains(gap, CheckWords.Explanation(car, candidate, CheckId.InboardClearance, result, units), StringComparison.Ordinal);
    }

    // An explanation made of fixed words would not change with its case; each of these changes one input by
    // more than the rounding of texts and demands another sentence.
    [Fact]
    public void Changing_an_input_changes_the_text() =>
        Gen.Select(Gen.Double[20, 50], Gen.Double[1, 10]).Sample((offset, change) =>
        {
            var car = DemoCar.Front();
            var before = Explain(car, offset, CheckId.InboardClearance) + Explain(car, offset, CheckId.OutboardClearance);
            var after = Explain(car, offset + change, CheckId.InboardClearance) + Explain(car, offset + change, CheckId.OutboardClearance);
            return before != after;
        });

    [Fact]
    public void Every_check_has_words_for_every_case_it_can_meet()
    {
        foreach (var car in new[] { DemoCar.Front(), FitmentContext.Prepare(new Domain.Vehicles.Vehicle(), Domain.Vehicles.CarAxle.Front, new CheckSettings()) })
        {
            foreach (var marking in new[] { "225/45R17 91W", "225/45ZR17", "215/65R16C 109/107T", "195/45R17 81H M+S", "31x10.50R15LT 109Q", "225/45ZR17 (94Y)" })
            {
                foreach (var bare in new[] { false, true })
                {
                    var candidate = DemoCar.Fitting(marking: marking, spacerMm: 20);
                    if (bare) candidate = candidate with { Wheel = new() { RimDiameterIn = 15, RimWidthIn = 9, OffsetMm = 20 } };
                    var sheet = DemoCar.Check(car, candidate);
                    for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
                    {
                        var result = sheet[id];
                        var text = CheckWords.Explanation(car, candidate, id, result, UnitSystem.Metric);
                        Assert.True(text.Length > 20 && text.EndsWith('.'), $"{id}: {text}");
                        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                        Assert.NotEmpty(CheckWords.Basis(candidate, id, result, UnitSystem.Metric));
                    }
                }
            }
        }
    }

    // A W tyre has no published addition for speed, so that none of its pressure is for it.
    [Fact]
    public void Pressure_for_speed_is_told_only_where_there_is_some()
    {
        var car = DemoCar.Front();
        var candidate = DemoCar.Fitting() with { Tyre = DemoCar.Tyre(pressureKpa: 160) };
        var sheet = DemoCar.Check(car, candidate);

        var texts = Enumerable.Range((int)CheckId.InboardClearance, CheckId.ArchCover - CheckId.InboardClearance + 1).Select(id => (CheckId)id)
            .Select(id => CheckWords.Explanation(car, candidate, id, sheet[id], UnitSystem.Metric)).ToList();

        Assert.Contains(texts, text => text.Contains("cold would carry it.", StringComparison.Ordinal));
        Assert.DoesNotContain(texts, text => text.Contains(" 0 kPa of that", StringComparison.Ordinal));
    }

    // Up to 160 km/h no addition is asked for; above, it is unknown for a W tyre and told so, and known for an H tyre (30 kPa at 210).
    [Theory]
    [InlineData("225/45R17 91W", 160, false)]
    [InlineData("225/45R17 91W", 161, true)]
    [InlineData("225/45R17 91H", 200, false)]
    public void A_missing_addition_for_speed_is_an_assumption_only_above_160(string marking, double topSpeedKmh, bool isTold)
    {
        var car = FitmentContext.Prepare(DemoCar.Vehicle() with { TopSpeedKmh = topSpeedKmh }, Domain.Vehicles.CarAxle.Front, new CheckSettings());

        var isThere = FitmentAssumptions.ForCheck(car, DemoCar.Fitting(marking: marking)).Any(one => one.Text == "no addition for sustained speed");

        Assert.Equal(isTold, isThere);
    }

    [Theory]
    [InlineData("225/45R17 91W")]
    [InlineData("205/55R16 91V")]
    [InlineData("235/60R22 91V")]
    [InlineData("455/100R26 120Y")]
    public void The_rims_of_a_tyre_are_said_to_be_recalled_or_to_follow_a_pattern(string marking)
    {
        var candidate = DemoCar.Fitting(marking: marking);

        var reasons = FitmentAssumptions.ForCheck(DemoCar.Front(), candidate).Where(one => one.Text?.StartsWith("rims from", StringComparison.Ordinal) == true && one.Input.StartsWith("/candidate", StringComparison.Ordinal));

        Assert.All(reasons, one => Assert.EndsWith(
            candidate.Tyre.Marking.PermittedRimWidth.IsListed ? "these are recalled for the size." : "these follow from a pattern over sizes.", one.Reason, StringComparison.Ordinal));
    }

    // 28 mm of fastener through a pad of 12 and a spacer of 16 mm leaves nothing; with a hair less of spacer a hair of thread.
    [Theory]
    [InlineData(16, "No thread engages")]
    [InlineData(15.5, "leaves 0.5 mm of thread engaged")]
    public void A_fastener_that_ends_in_its_spacer_engages_no_thread(double spacerMm, string words)
    {
        var candidate = DemoCar.Fitting(spacerMm: spacerMm);
        var result = DemoCar.Check(DemoCar.Front(), candidate)[CheckId.Fastener];

        Assert.Contains(words, CheckWords.Explanation(DemoCar.Front(), candidate, CheckId.Fastener, result, UnitSystem.Metric), StringComparison.Ordinal);
    }

    // UN Regulation No. 39: a speedometer may show a tenth and 4 km/h too much, so 14 km/h at 100.
    [Fact]
    public void The_same_tyre_keeps_the_speedometer_within_the_rule()
    {
        var result = DemoCar.Check(DemoCar.Front(), DemoCar.Fitting())[CheckId.OverallDiameter];

        Assert.Equal((0, 0), (result.Value, result.Limit));
        var text = CheckWords.Explanation(DemoCar.Front(), DemoCar.Fitting(), CheckId.OverallDiameter, result, UnitSystem.Metric);
        Assert.Contains("100 km/h shown is then 100 km/h true", text, StringComparison.Ordinal);
        Assert.Contains("up to 14 km/h too much", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Domain.Vehicles.CarAxle.Front, 16.0, true)]
    [InlineData(Domain.Vehicles.CarAxle.Front, null, false)]
    [InlineData(Domain.Vehicles.CarAxle.Rear, 16.0, false)]
    public void A_direction_at_full_lock_is_assumed_in_front_where_that_gap_is_given(Domain.Vehicles.CarAxle at, double? gapMm, bool isAssumed)
    {
        var axle = DemoCar.Axle();
        var vehicle = DemoCar.Vehicle();
        axle = axle with { Clearance = axle.Clearance with { InboardAtFullLockMm = gapMm } };
        var car = FitmentContext.Prepare(vehicle with { Front = axle, Rear = axle }, at, new CheckSettings());

        Assert.Equal(isAssumed, FitmentAssumptions.ForCheck(car, DemoCar.Fitting()).Any(one => one.Input == "/vehicle/front/clearance/inboardAtFullLockMm"));
    }

    // Gaps taken at ride height lead the wheel on through the bump stop: 45 mm where nobody measured it, of which 60 % give way (common practice, no source),
    // so 18 mm are left; of 60 mm 24. Its motion ratio is the damper's where that is given, else a strut's usual 0.95.
    [Theory]
    [InlineData(null, null, 18.0, 0.95, "common practice, no source")]
    [InlineData(60.0, null, 24.0, 0.95, "common practice, no source")]
    [InlineData(60.0, 0.9, 24.0, 0.9, "the damper's motion ratio: the stop is taken to sit on its rod")]
    public void What_is_taken_of_the_bump_stop_is_listed(double? lengthMm, double? damperRatio, double leftMm, double ratio, string source)
    {
        var axle = DemoCar.Axle();
        axle = axle with { Clearance = axle.Clearance with { MeasuredAt = Domain.Vehicles.ClearanceMeasuredAt.RideHeight }, BumpStop = new() { LengthMm = lengthMm }, Damper = new() { MotionRatio = damperRatio } };
        var assumed = FitmentAssumptions.ForCheck(DemoCar.Front(axle), DemoCar.Fitting()).Where(one => one.Input.Contains("/bumpStop/", StringComparison.Ordinal)).ToDictionary(one => one.Input.Split('/')[^1]);

        Assert.Equal(lengthMm is null, assumed.ContainsKey("lengthMm"));
        Assert.Equal(leftMm, assumed["compressedLengthMm"].Value!.Value, 1e-9);
        Assert.Equal((ratio, source), (assumed["motionRatio"].Value, assumed["motionRatio"].Source));
    }

    // A tyre whose index is beyond its speed symbol and fails says what is wanted; one that is only unknown does not.
    [Theory]
    [InlineData("225/45R17 76T", 870.0, true)]
    [InlineData("225/45R17 91T", 870.0, false)]
    public void More_than_even_the_index_stands_for_is_said_where_it_is_so(string marking, double maximumLoadKg, bool isSaid)
    {
        var car = DemoCar.Front(DemoCar.Axle() with { MaximumLoadKg = maximumLoadKg, MinimumLoadIndex = null });
        var candidate = DemoCar.Fitting(marking: marking);
        var result = DemoCar.Check(car, candidate)[CheckId.LoadCapacity];

        Assert.Equal(UnknownReason.BeyondSpeedSymbol, result.Reason);
        Assert.Equal(isSaid, CheckWords.Explanation(car, candidate, CheckId.LoadCapacity, result, UnitSystem.Metric).Contains("more than even the index stands for", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bolt_circle_is_held_against_the_hubs()
    {
        var (car, candidate) = (DemoCar.Front(), DemoCar.Fitting());
        var sheet = DemoCar.Check(car, candidate);

        Assert.Equal("5x108", CheckWords.ValueText(candidate, CheckId.BoltCircle, sheet[CheckId.BoltCircle], UnitSystem.Metric));
        Assert.Equal("5x108", CheckWords.LimitText(car, CheckId.BoltCircle, sheet[CheckId.BoltCircle], UnitSystem.Metric));
        Assert.Equal("16 mm", CheckWords.ValueText(candidate, CheckId.Fastener, sheet[CheckId.Fastener], UnitSystem.Metric));
        Assert.Equal("14 mm", CheckWords.LimitText(car, CheckId.Fastener, sheet[CheckId.Fastener], UnitSystem.Metric));
    }

    private static string Explain(FitmentContext car, double offsetMm, CheckId id)
    {
        var candidate = DemoCar.Fitting(offsetMm: offsetMm);
        return CheckWords.Explanation(car, candidate, id, DemoCar.Check(car, candidate)[id], UnitSystem.Metric);
    }
}
