using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Tests.Fitment;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Diagnosis.Advice;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>What must hold of any diagnosis.</summary>
public sealed class WearDiagnosisTests
{
    [Fact]
    public void Probabilities_are_probabilities_and_the_ranking_is_one() =>
        AnyCase.Cases.Sample(wear =>
        {
            var diagnosis = WearDiagnosis.Compute(wear);
            Assert.All(diagnosis.Causes, cause => Assert.InRange(cause.Probability, 0, 1));
            Assert.Equal(diagnosis.Causes.OrderByDescending(cause => cause.Probability).Select(cause => cause.Probability), diagnosis.Causes.Select(cause => cause.Probability));
            Assert.Single(diagnosis.Causes, cause => cause.Cause == WearCause.Normal);
            Assert.DoesNotContain(diagnosis.Causes.SelectMany(cause => cause.Evidence), one => !double.IsFinite(one.Weight));
            Assert.True(diagnosis.Next.ExpectedBits is null or >= 0);
        });

    // Causes that exclude each other share what is left of certainty.
    [Fact]
    public void Causes_that_exclude_each_other_do_not_hold_together() =>
        AnyCase.Cases.Sample(wear =>
        {
            var diagnosis = WearDiagnosis.Compute(wear);
            foreach (var (one, other) in WearTable.Exclusive)
            {
                foreach (var at in Enum.GetValues<CarAxle>())
                    Assert.True((diagnosis.Probability(one, at) ?? 0) + (diagnosis.Probability(other, at) ?? 0) <= 1 + 1e-12);
            }
        });

    [Fact]
    public void Left_and_right_may_change_places() =>
        Gen.Select(AnyCase.Tyre(WheelPosition.FrontLeft), AnyCase.Tyre(WheelPosition.FrontRight)).Sample((left, right) =>
        {
            var one = Diagnose(left, right);
            var other = Diagnose(right with { Position = WheelPosition.FrontLeft }, left with { Position = WheelPosition.FrontRight });
            for (var cause = WearCause.LowNegativeCamber; cause < WearCause.Normal; cause++)
                Assert.Equal(one.Probability(cause, CarAxle.Front)!.Value, other.Probability(cause, CarAxle.Front)!.Value, 1e-9);
            Assert.Equal(one.NormalProbability, other.NormalProbability, 1e-9);
        });

    [Fact]
    public void The_order_of_the_tyres_does_not_matter() =>
        AnyCase.Cases.Sample(wear =>
        {
            var (one, other) = (WearDiagnosis.Compute(wear), WearDiagnosis.Compute(wear with { Tyres = [.. wear.Tyres.Reverse()] }));
            Assert.Equal(one.NormalProbability, other.NormalProbability, 1e-12);
        });

    [Fact]
    public void More_wear_outside_makes_low_camber_likelier()
    {
        var before = 0.0;
        for (var outerMm = 5.4; outerMm >= 3; outerMm -= 0.3)
        {
            var now = Diagnose(Reading(WheelPosition.FrontLeft, outerMm, 5.4, 5.4), Reading(WheelPosition.FrontRight, outerMm, 5.4, 5.4)).Probability(WearCause.LowNegativeCamber, CarAxle.Front)!.Value;
            Assert.True(now > before, $"{outerMm}: {now} after {before}");
            before = now;
        }
    }

    [Fact]
    public void With_nothing_read_nothing_is_claimed()
    {
        var diagnosis = WearDiagnosis.Compute(new WearCase { Tyres = [] });

        Assert.False(diagnosis.IsAnythingRead);
        Assert.All(diagnosis.Causes.Where(cause => cause.Cause != WearCause.Normal), cause =>
        {
            Assert.Empty(cause.Evidence);
            Assert.InRange(cause.Probability, 0, 0.5);
        });
        Assert.NotNull(diagnosis.Next.ExpectedBits);
    }

    [Fact]
    public void A_wrong_rim_is_found_by_its_size()
    {
        var axle = DemoCar.Axle() with { Wheel = DemoCar.Wheel(widthIn: 10) };
        var diagnosis = WearDiagnosis.Compute(new WearCase { Vehicle = new Vehicle { Front = axle }, Tyres = [Reading(WheelPosition.FrontLeft, 5, 5, 5)] });

        Assert.Equal(WearCause.RimWidthMismatch, diagnosis.Causes[0].Cause);
    }

    // A check that was done is not asked for again, and what was not is worth something.
    [Fact]
    public void What_is_measured_is_not_asked_for()
    {
        var wear = new WearCase
        {
            Use = new WearUse(8000, 60, 3),
            Tyres = [Reading(WheelPosition.FrontLeft, 4, 5, 5), Reading(WheelPosition.FrontRight, 4, 5, 5)],
        };
        var first = WearDiagnosis.Compute(wear).Next;
        var told = new WheelAlignment { CamberDeg = -1, ToeDeg = 0.05 };
        var second = WearDiagnosis.Compute(wear with { Vehicle = new Vehicle { Front = new Axle { Left = told, Right = told } } }).Next;

        Assert.True(first.ExpectedBits > 0);
        Assert.DoesNotContain(second.Check, new[] { WearCheck.Camber });
        Assert.NotEqual(WearCheck.NextSession, first.Check);
    }

    // The sum of the pieces of evidence and the prior is what the odds come to, of the likeliest combinations.
    [Fact]
    public void Evidence_for_the_first_cause_speaks_for_it()
    {
        var diagnosis = Diagnose(Reading(WheelPosition.FrontLeft, 3, 5.4, 5.6), Reading(WheelPosition.FrontRight, 3.1, 5.4, 5.6));

        Assert.Equal(WearCause.LowNegativeCamber, diagnosis.Causes[0].Cause);
        Assert.Equal(WearSign.ShoulderDifference, diagnosis.Causes[0].Evidence[0].Sign);
        Assert.True(diagnosis.Causes[0].Evidence[0].Weight > 0.5);
    }

    private static WearDiagnosis Diagnose(TyreReading left, TyreReading right) =>
        WearDiagnosis.Compute(new WearCase { Use = new WearUse(3000, 90, 3), Tyres = [left, right] });

    private static TyreReading Reading(WheelPosition position, double outerMm, double centreMm, double innerMm) => new()
    {
        Position = position,
        NewDepthMm = 8,
        GaugeErrorMm = 0.1,
        Zones = TreadZone.FromDepths(new AcrossTread<double>(outerMm, centreMm, innerMm)),
    };

    // An axle that is not driven does not spin its wheels.
    [Fact]
    public void Wheelspin_is_of_driven_axles()
    {
        Assert.True(Chance(DrivenAxle.Rear, CarAxle.Rear) > 0);
        Assert.True(Chance(DrivenAxle.Both, CarAxle.Rear) > 0);
        Assert.True(Chance(DrivenAxle.Both, CarAxle.Front) > 0);
        Assert.True(Chance(DrivenAxle.Front, CarAxle.Front) > 0);
        Assert.Equal(0, Chance(DrivenAxle.Rear, CarAxle.Front));
        Assert.Equal(0, Chance(DrivenAxle.Front, CarAxle.Rear));

        static double Chance(DrivenAxle driven, CarAxle at)
        {
            TyreReading[] tyres = [Reading(WheelPosition.FrontLeft, 5, 5, 5), Reading(WheelPosition.FrontRight, 5, 5, 5), Reading(WheelPosition.RearLeft, 5, 5, 5), Reading(WheelPosition.RearRight, 5, 5, 5)];
            return WearDiagnosis.Compute(new WearCase { Vehicle = new Vehicle { DrivenAxle = driven }, Use = new WearUse(3000, 90, 3), Tyres = tyres }).Probability(WearCause.Wheelspin, at) ?? 0;
        }
    }

    // Whatever drives the car, every other fault may be on either axle; only the front is over-driven by steering.
    [Theory]
    [InlineData(DrivenAxle.Front)]
    [InlineData(DrivenAxle.Rear)]
    public void Any_other_fault_may_be_on_an_axle_that_is_not_driven(DrivenAxle driven)
    {
        TyreReading[] tyres = [Reading(WheelPosition.FrontLeft, 5, 5, 5), Reading(WheelPosition.RearLeft, 5, 5, 5)];
        var diagnosis = WearDiagnosis.Compute(new WearCase { Vehicle = new Vehicle { DrivenAxle = driven }, Use = new WearUse(3000, 90, 3), Tyres = tyres });
        var free = driven == DrivenAxle.Front ? CarAxle.Rear : CarAxle.Front;

        Assert.All(
            Enum.GetValues<WearCause>().Where(cause => cause != WearCause.Wheelspin && (cause != WearCause.FrontOverdriven || free == CarAxle.Front)),
            cause => Assert.True(diagnosis.Probability(cause, free) > 0, cause.ToString()));
    }

    // A tread in the middle of its window, on the road and on track, makes neither too cold nor too hot likelier than before it was read.
    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    public void A_tread_in_the_middle_of_its_window_is_neither_cold_nor_hot(double laps)
    {
        var tyre = Reading(WheelPosition.FrontLeft, 5, 5, 5);
        var read = tyre with { TemperatureC = new(82, 85, 88), TemperatureBy = Thermometer.Probe, TemperatureWindowC = (70, 100) };
        var (before, after) = (Diagnose(tyre), Diagnose(read));

        Assert.All(
            new[] { WearCause.BelowTemperatureWindow, WearCause.AboveTemperatureWindow },
            cause => Assert.True(after.Probability(cause, CarAxle.Front) < 0.5 * before.Probability(cause, CarAxle.Front), cause.ToString()));

        WearDiagnosis Diagnose(TyreReading one) => WearDiagnosis.Compute(new WearCase { Use = new WearUse(3000, laps, 3), Tyres = [one] });
    }

    // Of 100 laps 5 % more, and one for rounding, may be told by the history: 106. Of 1000 km 1051.
    [Theory]
    [InlineData(1051, 106, 0)]
    [InlineData(1052, 106, 1)]
    [InlineData(1051, 106.5, 1)]
    [InlineData(1052, 106.5, 2)]
    public void A_history_may_not_tell_more_than_the_use(double roadKm, double laps, int expected)
    {
        var tyre = Reading(WheelPosition.FrontLeft, 5, 5, 5) with { History = [new(WheelPosition.FrontLeft, roadKm, laps, false)] };

        Assert.Equal(expected, ReadingContradictions.Find(new WearCase { Use = new WearUse(1000, 100, 3), Tyres = [tyre] }, UnitSystem.Metric).Count);
    }

    [Theory]
    [InlineData(0, "front: pressure at its aim")]
    [InlineData(12, "front: pressure 12 % above its aim")]
    [InlineData(-12, "front: pressure 12 % below its aim")]
    public void A_pressure_is_told_against_its_aim(double value, string words) =>
        Assert.EndsWith(words, SignWords.Describe(WearSign.PressureDeviation, value, 0, CarAxle.Front, UnitSystem.Metric), StringComparison.OrdinalIgnoreCase);
}
