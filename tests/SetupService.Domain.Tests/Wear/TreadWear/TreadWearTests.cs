using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Tests.Handling;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Tests.Wear.TreadWear;

/// <summary>The wear model's parts against what can be worked by hand, and what it learns against what was put in.</summary>
public sealed class TreadWearTests
{
    private const int Strips = 2000;

    private static readonly WearUse Use = new(5000, 100, 3) { LateralG = 0.9, CornerRadiusM = 60 };

    // A fixed load: whatever the lean, the mean pressure stays 1.
    // Leaning the other way is the same tyre seen in a mirror, also where an edge is off the road (a lean above 1).
    [Theory]
    [InlineData(0.4)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3.5)]
    public void A_strip_is_pressed_as_its_mirror_image(double lean)
    {
        for (var y = -1.0; y <= 1; y += 0.125)
        {
            Assert.Equal(TreadStrip.Pressure(-y, -lean), TreadStrip.Pressure(y, lean), 1e-12);
            Assert.Equal(-TreadStrip.PressureByLean(-y, -lean), TreadStrip.PressureByLean(y, lean), 1e-12);
        }

        Assert.True(TreadStrip.Pressure(-1, lean) > TreadStrip.Pressure(1, lean));
    }

    [Fact]
    public void A_leaned_bed_carries_the_same_load() =>
        Gen.Double[-6, 6].Sample(lean =>
        {
            var sum = 0.0;
            for (var i = 0; i < Strips; i++) sum += TreadStrip.Pressure(-1 + ((2 * (i + 0.5)) / Strips), lean) / Strips;
            Assert.Equal(1, sum, 5e-3);
        });

    // By hand: tread 200 mm, rate 210 N/mm, 3500 N press it in by 16.67 mm; a degree lifts the edge by 100 mm times tan 1° = 1.7455 mm, 0.1047 of that.
    [Fact]
    public void A_degree_of_lean_by_hand() =>
        Assert.Equal(0.10473, TreadStrip.LeanPerDeg(Wheel(treadMm: 200), 3500), 5e-5);

    [Fact]
    public void A_wheel_without_load_has_no_pressure_to_lean() => Assert.Equal(0, TreadStrip.LeanPerDeg(Wheel(treadMm: 200), 0));

    [Fact]
    public void Too_little_camber_wears_the_outside_and_more_takes_it_back()
    {
        var axle = Front(camberDeg: 0);
        var now = Learn(axle, Read(axle, 5.0, 5.4, 5.8));
        var (at, then) = (now.WornMm(axle.Left), now.WornMm(Front(camberDeg: -2).Left));

        Assert.True(axle.CamberShortDeg.Value > 1);
        Assert.True(at.Outer > at.Inner);
        Assert.True(then.Outer / then.Inner < at.Outer / at.Inner);
    }

    // A degree more of static camber is about a degree less short: the wheel leans nearly as it is set.
    [Fact]
    public void A_degree_of_camber_is_about_a_degree_less_short() =>
        Assert.InRange(Front(0).CamberShortDeg.Value - Front(-1).CamberShortDeg.Value, 0.9, 1.1);

    [Fact]
    public void Without_readings_it_knows_what_the_cornering_model_knows()
    {
        var axle = Front(-1);
        var learned = LearnedTread.Fit(axle, null, null, 5000, 300)!;

        Assert.Equal(axle.CamberShortDeg.Value, Short(learned).Value, 1e-9);
        Assert.Equal(axle.CamberShortDeg.StandardError, Short(learned).StandardError, 1e-6);
    }

    [Fact]
    public void Readings_narrow_what_is_believed() =>
        Assert.True(Short(Learn(Front(-1), Read(Front(-1), 4.4, 5.2, 5.6))).StandardError < Front(-1).CamberShortDeg.StandardError);

    [Fact]
    public void More_wear_outside_means_more_degrees_short()
    {
        var axle = Front(-1);
        var (little, much) = (Learn(axle, Read(axle, 5.2, 5.4, 5.4)), Learn(axle, Read(axle, 3.6, 5.4, 5.9)));

        Assert.True(Short(much).Value > Short(little).Value + 0.1);
    }

    // Worn by the model itself with unknowns drawn from what is believed beforehand and read with an error, the 90 % range of the degrees short holds the truth nine times in ten, and so does that of
    // what another camber does to the life of the fastest-worn place.
    [Fact]
    public void The_intervals_hold_what_was_put_in()
    {
        var random = new Random(20261129);
        var (axle, more, less) = (Front(-1), Front(-2.2), Front(-0.2));
        var (held, moreHeld, lessHeld, rested) = (0, 0, 0, 0);
        const int cases = 600;
        Span<double> truth = stackalloc double[TreadWearParameters.Count];
        for (var i = 0; i < cases; i++)
        {
            for (var k = 0; k < truth.Length; k++) truth[k] = TreadWearParameters.Priors[k].Value + (TreadWearParameters.Priors[k].StandardError * Normal());
            truth[TreadWearParameters.NewDepthExcess] = 0;
            TyreReading[] read = [Worn(WheelPosition.FrontLeft, axle.Left, truth), Worn(WheelPosition.FrontRight, axle.Right, truth)];
            if (LearnedTread.Fit(axle, read[0], read[1], 5000, 300) is not { } learned) continue;
            rested++;
            if (IsWithin(Short(learned).Ninety, axle.ShortBy(new(truth[TreadWearParameters.UnmodelledInclination], 0)).Value)) held++;
            if (IsWithin(Life(learned, more), MostMm(axle, truth) / MostMm(more, truth))) moreHeld++;
            if (IsWithin(Life(learned, less), MostMm(axle, truth) / MostMm(less, truth))) lessHeld++;
        }

        Assert.True(rested > 0.95 * cases, $"{rested} of {cases} fits came to rest");
        Assert.InRange(held / (double)rested, 0.86, 0.97);
        Assert.InRange(moreHeld / (double)rested, 0.84, 0.97);
        Assert.InRange(lessHeld / (double)rested, 0.84, 0.97);

        TyreReading Worn(WheelPosition position, WheelUse wheel, ReadOnlySpan<double> parameters)
        {
            var zones = new TreadZone[3];
            double[] across = [15, 50, 85];
            for (var i = 0; i < zones.Length; i++)
            {
                var wornMm = TreadWearModel.WornMm(wheel, new TreadZone(across[i], 0).Inward, 5000, 300, parameters);
                zones[i] = new(across[i], 12 - wornMm + (0.1 * Normal()));
            }

            return new TyreReading { Position = position, NewDepthMm = 12, GaugeErrorMm = 0.1, Zones = zones };
        }

        Uncertainty Life(LearnedTread learned, AxleUse other)
        {
            double[] now = new double[TreadWearParameters.Count], then = new double[TreadWearParameters.Count];
            var factor = learned.MostWornMm(axle, 5000, 300, now) / learned.MostWornMm(other, 5000, 300, then);
            Assert.Equal(factor, learned.LifeRatio(other), 1e-9);
            return Uncertainty.Ninety(factor, factor * Math.Sqrt(now.Zip(then, (one, another) => (one - another) * (one - another)).Sum()));
        }

        static double MostMm(AxleUse use, ReadOnlySpan<double> parameters)
        {
            var mostMm = 0.0;
            foreach (var acrossPct in (ReadOnlySpan<double>)[15, 50, 85])
            {
                var y = new TreadZone(acrossPct, 0).Inward;
                mostMm = Math.Max(mostMm, Math.Max(TreadWearModel.WornMm(use.Left, y, 5000, 300, parameters), TreadWearModel.WornMm(use.Right, y, 5000, 300, parameters)));
            }

            return mostMm;
        }

        static bool IsWithin(in Uncertainty range, double value) => value >= range.Lower && value <= range.Upper;

        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }

    [Fact]
    public void A_fit_without_work_left_learns_nothing()
    {
        var axle = Front(-1);
        var read = Read(axle, 4.4, 5.2, 5.6);
        var budget = new WorkBudget(1);

        Assert.Null(LearnedTread.Fit(axle, read[0], read[1], 5000, 300, budget));
        Assert.True(budget.IsSpent);
    }

    // Twelve turns are solved before anything is learned: some 90 steps, far fewer than the generous budget and more than 5.
    [Fact]
    public void A_study_says_that_it_was_cut_short()
    {
        var wear = new WearCase { Vehicle = new Vehicle(), Use = Use, Tyres = Read(Front(-1), 4.4, 5.2, 5.6) };
        var car = WorkedCar.Make();
        using var gone = new CancellationTokenSource();
        gone.Cancel();

        var whole = WearStudy.Compute(wear, car, WorkBudget.Generous());
        var cut = WearStudy.Compute(wear, car, new WorkBudget(5));
        var left = WearStudy.Compute(wear, car, WorkBudget.Generous(gone.Token));

        Assert.False(whole.IsWorkSpent);
        Assert.NotNull(whole.Front);
        Assert.True(cut.IsWorkSpent);
        Assert.Null(cut.Front);
        Assert.True(left.IsWorkSpent);
        Assert.Null(left.Front);

        // What the treads say needs no solver.
        Assert.Equal(cut.Diagnosis.NormalProbability, left.Diagnosis.NormalProbability);
    }

    // 5,000 km of road, and 100 laps of 3 km where nobody told how long one is.
    [Fact]
    public void A_study_learns_from_the_use_stated()
    {
        var read = Read(Front(-1), 4.4, 5.2, 5.6);
        var wear = new WearCase { Vehicle = new Vehicle(), Use = Use with { LapKm = null }, Tyres = read };
        var car = WorkedCar.Make();
        var learned = LearnedTread.Fit(TrackBends.Solve(car, wear.Vehicle, wear.Use)!.Front, read[0], read[1], 5000, 300)!;

        Assert.Equal(learned.WornMm(learned.Axle.Left), Left(WearStudy.Compute(wear, car)));
        Assert.Equal(learned.WornMm(learned.Axle.Left), Left(WearStudy.Compute(wear with { Use = Use with { TrackLaps = 200, LapKm = 1.5 } }, car)));
    }

    // A camber set otherwise is solved from the car as given; what wears its tyres is the same as of that car solved from rest.
    [Fact]
    public void A_camber_set_otherwise_is_solved_as_from_rest() => Gen.Double[-3, 3].Select(Gen.Bool).Sample((changeDeg, isFront) =>
    {
        var at = isFront ? CarAxle.Front : CarAxle.Rear;
        var car = WorkedCar.Make();
        var wear = new WearCase { Vehicle = new Vehicle(), Use = Use, Tyres = Read(Front(-1), 4.4, 5.2, 5.6) };
        var study = WearStudy.Compute(wear, car);
        var axle = car.At(at) with { LeftCamberDeg = car.At(at).LeftCamberDeg + changeDeg, RightCamberDeg = car.At(at).RightCamberDeg + changeDeg };
        var expected = TrackBends.Solve(isFront ? car with { Front = axle } : car with { Rear = axle }, wear.Vehicle, wear.Use)!.At(at);

        var set = study.UseWith(at, changeDeg)!;

        foreach (var (one, other) in new[] { (set.Left, expected.Left), (set.Right, expected.Right) })
        {
            Assert.Equal(other.CamberDeg, one.CamberDeg, 12);
            foreach (var (bend, fromRest) in one.Corners.Zip(other.Corners))
            {
                Assert.Equal(fromRest.InclinationAngleDeg, bend.InclinationAngleDeg, 1e-6);
                Assert.Equal(fromRest.LoadN, bend.LoadN, 1e-3);
                Assert.Equal(fromRest.Work, bend.Work, 1e-6);
            }
        }
    }, iter: 60);

    private static AcrossTread<double> Left(WearStudy study) => study.Front!.WornMm(study.Front.Axle.Left);

    private static AxleUse Front(double camberDeg)
    {
        var car = WorkedCar.Make();
        var front = car.Front with { LeftCamberDeg = camberDeg, RightCamberDeg = camberDeg };
        return TrackBends.Solve(car with { Front = front }, new Vehicle(), Use)!.Front;
    }

    private static TyreReading[] Read(AxleUse axle, double outerMm, double centreMm, double innerMm) =>
        [.. new[] { WheelPosition.FrontLeft, WheelPosition.FrontRight }.Select(position => new TyreReading
        {
            Position = position,
            NewDepthMm = 8,
            GaugeErrorMm = axle.Axle == CarAxle.Front ? 0.1 : 0.2,
            Zones = TreadZone.FromDepths(new AcrossTread<double>(outerMm, centreMm, innerMm)),
        })];

    private static LearnedTread Learn(AxleUse axle, TyreReading[] read) => LearnedTread.Fit(axle, read[0], read[1], 5000, 300)!;

    /// <summary>By how much the camber is short by what the readings have taught the model of the inclination it does not see.</summary>
    private static Estimate Short(LearnedTread learned) => learned.Axle.ShortBy(learned.Parameter(TreadWearParameters.UnmodelledInclination));

    private static WheelUse Wheel(double treadMm) => new()
    {
        Corners = [],
        CamberDeg = 0,
        ToeDeg = 0,
        LoadN = 3500,
        TyreRateNPerMm = 210,
        TreadWidthMm = treadMm,
        RadiusMm = 305,
    };
}
