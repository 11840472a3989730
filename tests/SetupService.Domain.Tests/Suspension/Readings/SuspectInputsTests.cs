using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tests.Oracle;
using SetupService.Domain.Tests.Suspension.Steering;

namespace SetupService.Domain.Tests.Suspension.Readings;

/// <summary>Signs turned or typed wrong are found, and sound readings are left in peace. Corners solved from points stand for the truth.</summary>
public sealed class SuspectInputsTests
{
    private const int Trials = 2_000;
    private const double GaugeErrorDeg = 0.1;

    private static readonly string[] Corners = ["ST1", "macPhersonStrut 4", "DW1", "doubleWishbone 5", "fiveLink 8"];

    private static readonly CornerReadings Sound = new()
    {
        Travel = [new(-50, -0.1), new(-25, -0.75), new(0, -1.4), new(25, -1.95), new(40, -2.3)],
        StatedCamberDeg = -1.4,
        Steer = CasterReadingsTests.Readings((6, 13, -1.4), 0, [-20, -10, 0, 10, 20], WheelSide.Left),
        CasterDeg = 6.1,
        SteeringAxisInclinationDeg = 12.8,
    };

    [Fact]
    public void Sound_readings_are_left_in_peace() => Assert.Empty(Found(Sound));

    [Fact]
    public void A_camber_reading_with_its_sign_turned_is_named()
    {
        var one = Assert.Single(Found(With(3, new(25, 1.95))), one => one.Kind == SuspectInputKind.CamberSign);

        Assert.Equal((3, 1.95, true), (one.Reading, one.GivenDeg, one.IsSignTurned));
        Assert.Equal(-1.9, one.ExpectedDeg, 0.15);
    }

    [Fact]
    public void A_travel_with_its_sign_turned_is_named()
    {
        var one = Assert.Single(Found(With(4, new(-40, -2.3))));

        Assert.Equal((SuspectInputKind.TravelSign, 4), (one.Kind, one.Reading));
    }

    // An odd curve: the reading at 50 mm agrees with either sign turned, and nobody can tell which.
    [Fact]
    public void Where_either_sign_would_do_both_are_named()
    {
        var one = Assert.Single(Found(new() { Travel = [new(-60, 1.8), new(-30, 0.9), new(0, 0), new(30, -0.9), new(-45, -1.35)] }));

        Assert.Equal((SuspectInputKind.CamberOrTravelSign, 4), (one.Kind, one.Reading));
    }

    [Fact]
    public void Stated_camber_and_readings_of_opposite_signs_are_named_with_the_slip()
    {
        var stated = Assert.Single(Found(Sound with { StatedCamberDeg = 1.4 }));
        var all = Assert.Single(Found(Sound with { Travel = [.. Sound.Travel.Select(one => one with { CamberDeg = -one.CamberDeg })] }), one => one.Kind == SuspectInputKind.StatedCamber);
        var apart = Assert.Single(Found(Sound with { StatedCamberDeg = -2.4 }));

        Assert.Equal((SuspectInputKind.StatedCamber, true), (stated.Kind, stated.IsSignTurned));
        Assert.True(all.IsSignTurned);
        Assert.Equal((SuspectInputKind.StatedCamber, false), (apart.Kind, apart.IsSignTurned));
    }

    [Fact]
    public void A_stated_axis_that_its_own_steer_readings_deny_is_named()
    {
        var caster = Assert.Single(Found(Sound with { CasterDeg = -6.1 }));
        var inclination = Assert.Single(Found(Sound with { SteeringAxisInclinationDeg = -12.8 }));
        var apart = Assert.Single(Found(Sound with { CasterDeg = 8 }));

        Assert.Equal((SuspectInputKind.Caster, true), (caster.Kind, caster.IsSignTurned));
        Assert.Equal(6, caster.ExpectedDeg, 1e-6);
        Assert.Equal((SuspectInputKind.Inclination, true), (inclination.Kind, inclination.IsSignTurned));
        Assert.Equal((SuspectInputKind.Caster, false), (apart.Kind, apart.IsSignTurned));
    }

    // Struts and wishbones go negative in bump (common practice, no source).
    [Fact]
    public void Camber_that_grows_positive_in_bump_is_named()
    {
        var turned = Sound with { Travel = [.. Sound.Travel.Select(one => one with { TravelMm = -one.TravelMm })] };

        Assert.Equal(SuspectInputKind.CamberGain, Assert.Single(Found(turned)).Kind);
        Assert.Empty(Found(new() { Travel = [new(-50, -0.6), new(0, -1), new(50, -0.6)] }));
    }

    [Fact]
    public void Each_caution_names_both_inputs()
    {
        var suspension = SuspensionModel.From(With(3, new(25, 1.95)) with { CasterDeg = -6.1 });
        var cautions = suspension.Cautions("/vehicle/front");

        var camber = Assert.Single(cautions, one => one.Code == "camberSignUnlikely").Text;
        Assert.Contains("/vehicle/front/suspension/readings/3/camberDeg", camber, StringComparison.Ordinal);
        Assert.Contains("/vehicle/front/alignment/camberDeg", camber, StringComparison.Ordinal);
        var caster = Assert.Single(cautions, one => one.Code == "statedCasterUnlikeReadings").Text;
        Assert.Contains("/vehicle/front/alignment/casterDeg", caster, StringComparison.Ordinal);
        Assert.Contains("/vehicle/front/suspension/steerReadings", caster, StringComparison.Ordinal);
        Assert.Contains("−6.10°", caster, StringComparison.Ordinal);
        Assert.Empty(SuspensionModel.From(Sound).Cautions("/vehicle/front"));

        var inTable = Assert.Single(SuspensionModel.From(With(3, new(25, 1.95)) with { IsTable = true }).Cautions("/vehicle/front"), one => one.Code == "camberSignUnlikely").Text;
        Assert.Contains("(/vehicle/front/suspension/table)", inTable, StringComparison.Ordinal);
        Assert.DoesNotContain("/suspension/readings", inTable, StringComparison.Ordinal);
        Assert.Empty(SuspensionModel.FromFigures.Cautions("/vehicle/front"));
    }

    // Wherever it stands in the list, at its ends too.
    [Theory]
    [InlineData(0)]
    [InlineData(0.1)]
    public void Of_many_readings_the_turned_one_is_found_too(double gaugeErrorDeg)
    {
        TravelReading[] sound = [.. Enumerable.Range(0, 40).Select(i => new TravelReading(-60 + (3 * i), -1.4 - (0.02 * (-60 + (3 * i)))))];
        int[] wellAwayFromZero = [.. Enumerable.Range(0, 40).Where(i => Math.Abs(sound[i].CamberDeg) > 0.6)];
        Assert.InRange(wellAwayFromZero.Length, 20, 40);
        Assert.All(wellAwayFromZero, index =>
        {
            var turned = sound[index] with { CamberDeg = -sound[index].CamberDeg };
            TravelReading[] travel = [.. sound[..index], turned, .. sound[(index + 1)..]];

            var one = Assert.Single(Found(new() { Travel = travel, GaugeErrorDeg = gaugeErrorDeg }));
            Assert.Equal((index, true), (one.Reading, one.IsSignTurned));
        });
    }

    // Camber that falls by a degree from one reading to the next: the turned one is nearer to its neighbour's value than any other is, and
    // off the line through both all the same.
    [Fact]
    public void Of_many_readings_the_turned_one_is_found_although_camber_changes_much()
    {
        TravelReading[] travel = [.. Enumerable.Range(-7, 15).Select(i => new TravelReading(10 * i, -0.7 - i))];
        travel[7] = new(0, 0.7);

        var one = Assert.Single(Found(new() { Travel = travel }));
        Assert.Equal((SuspectInputKind.CamberSign, 7), (one.Kind, one.Reading));
        Assert.Equal(-0.7, one.ExpectedDeg, 0.1);
    }

    // The neighbours of a reading at the end are the next two. Thirteen readings that bend alike, of which twelve are looked at; the first,
    // turned, lies near the line through the second and the fourth and off the one through the second and the third.
    [Fact]
    public void Of_many_readings_that_bend_a_turned_one_at_the_end_is_found()
    {
        const double StepMm = 40;
        const double Bend = 5e-4;
        var firstDeg = ((1.5 * Bend * StepMm * StepMm) + 0.05) / 2;
        TravelReading[] travel = [.. Enumerable.Range(0, 13).Select(i => new TravelReading(StepMm * (i - 6), firstDeg - (0.14 * StepMm * i) + (Bend / 2 * StepMm * i * StepMm * i)))];
        travel[0] = travel[0] with { CamberDeg = -firstDeg };

        Assert.Equal((SuspectInputKind.CamberSign, 0), Assert.Single(Found(new() { Travel = travel, GaugeErrorDeg = 0 }).Select(one => (one.Kind, one.Reading))));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(9)]
    public void Sound_readings_with_the_gauges_scatter_give_a_caution_in_at_most_one_trial_of_a_hundred(int heightCount)
    {
        var random = new Random(20261129);
        var warned = 0;
        for (var trial = 0; trial < Trials; trial++)
        {
            if (Found(Drawn(random, trial, heightCount, 0)).Count > 0) warned++;
        }

        Assert.InRange(warned, 0, Trials / 100);
    }

    // Well away from zero: 1.5 degrees and more, so that the turned reading is 3 degrees off.
    [Theory]
    [InlineData(5)]
    [InlineData(9)]
    public void A_turned_camber_reading_well_away_from_zero_is_found(int heightCount)
    {
        var random = new Random(20261129);
        var (found, tried) = (0, 0);
        for (var trial = 0; trial < Trials; trial++)
        {
            var sound = Drawn(random, trial, heightCount, -2);
            var index = random.Next(heightCount);
            var reading = sound.Travel[index];
            if (Math.Abs(reading.CamberDeg) < 1.5) continue;
            tried++;
            if (Found(Replaced(sound, index, reading with { CamberDeg = -reading.CamberDeg })).Any(one => one.Reading == index)) found++;
        }

        Assert.InRange(tried, Trials / 2, Trials);
        Assert.InRange((double)found / tried, 0.95, 1);
    }

    // Read at heights that are no mirror images of each other: there two readings at one height would already contradict each other.
    [Theory]
    [InlineData(5)]
    [InlineData(9)]
    public void A_turned_travel_is_found_where_it_moves_camber_well(int heightCount)
    {
        var random = new Random(20261129);
        var (found, tried) = (0, 0);
        for (var trial = 0; trial < Trials; trial++)
        {
            var sound = Drawn(random, trial, heightCount, 0, offsetMm: 5);
            var index = random.Next(heightCount);
            var reading = sound.Travel[index];
            var truth = Truths[trial % Corners.Length];
            if (Math.Abs(truth[reading.TravelMm] - truth[-reading.TravelMm]) < 1.5) continue;
            tried++;
            if (Found(Replaced(sound, index, reading with { TravelMm = -reading.TravelMm })).Any(one => one.Reading == index)) found++;
        }

        Assert.InRange(tried, Trials / 10, Trials);
        Assert.InRange((double)found / tried, 0.95, 1);
    }

    private static readonly Dictionary<double, double>[] Truths = [.. Corners.Select(Truth)];

    private static CornerReadings With(int index, TravelReading reading) => Replaced(Sound, index, reading);

    private static CornerReadings Replaced(CornerReadings readings, int index, TravelReading reading)
    {
        TravelReading[] travel = [.. readings.Travel];
        travel[index] = reading;
        return readings with { Travel = travel };
    }

    private static IReadOnlyList<SuspectInput> Found(CornerReadings readings) => SuspectInputs.Find(readings, MeasuredCornerTests.Corner(readings));

    // Camber over travel, camber stated, caster stated and camber on turn plates, all read with the gauge's scatter.
    private static CornerReadings Drawn(Random random, int trial, int heightCount, double staticDeg, double offsetMm = 0)
    {
        var truth = Truths[trial % Corners.Length];
        return new()
        {
            Travel = [.. Enumerable.Range(0, heightCount).Select(i => Read(Math.Round(-60 + offsetMm + (120.0 * i / (heightCount - 1)))))],
            StatedCamberDeg = truth[0] + staticDeg + Error(),
            Steer = [.. CasterReadingsTests.Readings((6, 13, -1.4), 0, [-20, -10, 0, 10, 20], WheelSide.Left).Select(one => one with { CamberDeg = one.CamberDeg + Error() })],
            CasterDeg = 6 + Error(),
            SteeringAxisInclinationDeg = 13 + Error(),
            GaugeErrorDeg = GaugeErrorDeg,
        };

        TravelReading Read(double travelMm) => new(travelMm, truth[travelMm] + staticDeg + Error());

        double Error() => GaugeErrorDeg * Chance.Normal(random);
    }

    private static Dictionary<double, double> Truth(string corner)
    {
        var mechanism = MechanismBuilder.Build(OracleCorner.Setting(GeometryCases.Named("corners", corner).GetProperty("request")));
        var truth = new Dictionary<double, double>();
        foreach (var sign in (double[])[1, -1])
        {
            Assert.True(PoseContinuation.TryStart(mechanism, out var state));
            for (var mm = 0; mm <= 66; mm++)
            {
                Assert.True(PoseContinuation.TryMove(mechanism, sign * mm, 0, ref state));
                truth[sign * mm] = WheelKinematics.Compute(mechanism, state).CamberDeg;
            }
        }

        return truth;
    }
}
