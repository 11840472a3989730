using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Cars;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Fitment.Cars;

/// <summary>Candidates against many cars: the same verdicts as one candidate on one car.</summary>
public sealed class CatalogueCheckTests
{
    private const int Pairs = 10_000;

    private static readonly Gen<BoltCircle?> Circles = Gen.Frequency((8, Gen.Const((BoltCircle?)new BoltCircle(5, 108))), (1, OtherCircles));

    private static readonly Gen<double?> Bores = OneOf<double?>(null, 57.1, 63.4, 63.3, 63.4, 63.4, 67.1, 67.1, 72.6);

    private static Gen<BoltCircle?> OtherCircles => OneOf(
        null, new BoltCircle(5, 107.95), new BoltCircle(4, 108), new BoltCircle(5, 112), new BoltCircle(5, 114.3), new BoltCircle(5, 114), new BoltCircle(5, 108.36),
        new BoltCircle(5, 108) { Second = new(5, 112) }, new BoltCircle(5, 112) { Second = new(5, 108) }, new BoltCircle(4, 100) { Second = new(5, 114.3) });

    private static readonly Gen<Tyre?> Tyres = OneOf(
        new[] { "225/45R17 91W", "225/45R17 91W", "225/45R17 91W", "225/45R17 95W XL", "225/45R17 94W XL", "205/50R17 93V XL", "245/40R17 91Y", "195/45R17 81V", "255/60R17 106H", "225/40R18 92Y XL", "135/80R15 73T", "6.00-16", "155R13 78S" }
            .Select(marking => (Tyre?)DemoCar.Tyre(marking)).Append(null).ToArray());

    private static readonly Gen<Wheel> Wheels =
        from diameter in OneOf(16.0, 17, 17, 17, 17, 17, 17, 17, 18)
        from width in OneOf(6.5, 7.0, 7.5, 7.5, 8.0, 8.0, 8.5)
        from offset in Gen.Double[25, 55]
        from spacer in OneOf(0.0, 0, 0, 0, 0, 5)
        from circle in Circles
        from bore in Bores
        from pilotBore in Bores
        from pilot in Bores
        select DemoCar.Wheel(width, offset, diameter, spacer) with { BoltCircle = circle, CentreBoreMm = bore, SpacerPilotBoreMm = pilotBore, SpacerPilotDiameterMm = pilot };

    // One in five is the car's own fitting, and one axle in five the car's own: of any other two hardly one pair in three hundred passes.
    private static readonly Gen<Fitting> Fittings = Gen.Frequency(
        (4, Gen.Select(Wheels, Tyres.Where(tyre => tyre is not null), (wheel, tyre) => new Fitting(wheel, tyre!))), (1, Gen.Const(DemoCar.Fitting())));

    private static readonly Gen<Axle> Axles = Gen.Frequency((4, AnyAxles), (1, Gen.Const(DemoCar.Axle())));

    private static Gen<Axle> AnyAxles =>
        from circle in Circles
        from bore in Bores
        from tyre in Tyres
        from wheel in Wheels
        from hasWheel in Gen.Bool
        from room in Gen.Double[10, 70]
        from isDescribed in Gen.Bool
        from hasSpigot in OneOf(true, false, false)
        select DemoCar.Axle() with
        {
            Tyre = tyre,
            Wheel = hasWheel ? wheel : null,
            Hub = DemoCar.Axle().Hub with { BoltCircle = circle, CentreBoreMm = hasSpigot ? bore : 57.1 },
            Clearance = isDescribed ? DemoCar.Axle().Clearance with { InboardMm = room, OutboardMm = 80 - room, RadialMm = 30, InboardAtFullLockMm = 40 } : new Clearance(),
        };

    private static readonly Gen<FitmentCar> Cars =
        from front in Axles
        from rear in Axles
        from axle in OneOf<CarAxle?>(CarAxle.Front, CarAxle.Front, CarAxle.Rear, null)
        from driven in OneOf<DrivenAxle?>(null, DrivenAxle.Rear, DrivenAxle.Both)
        from change in OneOf(null, new CamberChange(-1.5, CamberChangePlace.StrutTop, 240, 430))
        select new FitmentCar(new Vehicle { DrivenAxle = driven, TopSpeedKmh = 210, Front = front, Rear = rear }, axle, new CheckSettings { CamberChange = axle is null ? null : change });

    private static readonly Gen<CarCandidate> Candidates = Gen.Select(Fittings, Fittings, Gen.Int[0, 9], (one, other, kind) => kind switch
    {
        < 6 => new CarCandidate(one),
        6 => new CarCandidate(one, null),
        7 => new CarCandidate(null, other),
        _ => new CarCandidate(one, other),
    });

    [Fact]
    public void Every_pair_has_the_verdict_of_its_single_check()
    {
        var verdicts = new int[4];
        int pairs = 0, first = 0;
        Gen.Select(Cars.Array[1, 21], Candidates.Array[12]).Sample(
            (cars, candidates) =>
            {
                var check = new CatalogueCheck(cars);
                var found = new PairVerdict[cars.Length];
                foreach (var candidate in candidates)
                {
                    check.Evaluate(candidate, found);
                    for (var i = 0; i < cars.Length; i++)
                    {
                        Hold(cars[i], candidate, found[i]);
                        pairs++;
                        verdicts[(int)found[i].Verdict]++;
                        if ((found[i].DecidedBy.Bits & CatalogueCheck.FirstLookChecks.Bits) != 0 && found[i].Verdict == CheckStatus.Fail) first++;
                    }
                }
            },
            iter: 120,
            threads: 1);

        // Every kind must have come often, or the property said less than it seems.
        Assert.True(pairs >= Pairs, $"{pairs} pairs");
        Assert.True(first > Pairs / 4 && first < pairs - (Pairs / 10), $"{first} of {pairs} failed on the first look");
        Assert.All(verdicts, count => Assert.True(count > 50, string.Join(' ', verdicts)));
    }

    [Fact]
    public void A_whole_car_holds_each_axle_against_the_new_tyre_of_the_other_and_no_wider_than_it_is_today()
    {
        var vehicle = DemoCar.Vehicle() with { DrivenAxle = DrivenAxle.Rear };
        var car = new FitmentCar(vehicle with { Rear = vehicle.Rear with { Tyre = DemoCar.Tyre("245/45R17 95W") } }, null, new CheckSettings());
        var sheet = new CarSheet();

        // Front and rear differ by 3 % today, and by 1.6 % after.
        sheet.Evaluate(car, new CarCandidate(DemoCar.Fitting(), DemoCar.Fitting(marking: "235/45R17 94W")));
        Assert.Equal((CheckStatus.Pass, UnknownReason.NoWiderThanNow), State(sheet.Front!.Value));
        Assert.Equal((CheckStatus.Pass, UnknownReason.NoWiderThanNow), State(sheet.Rear!.Value));
        Assert.InRange(sheet.Front.Value.Sheet[CheckId.AxleDiameterMatch].Value!.Value, -1.6, -1.5);

        sheet.Evaluate(car, new CarCandidate(DemoCar.Fitting(), DemoCar.Fitting()));
        Assert.Equal((CheckStatus.Pass, UnknownReason.Computed), State(sheet.Rear!.Value));

        static (CheckStatus, UnknownReason) State(CheckedAxle axle) => (axle.Sheet[CheckId.AxleDiameterMatch].Status, axle.Sheet[CheckId.AxleDiameterMatch].Reason);
    }

    [Fact]
    public void The_new_tyre_of_the_other_axle_is_the_one_told_of()
    {
        var sheet = new CarSheet();
        sheet.Evaluate(new FitmentCar(DemoCar.Vehicle(), null, new CheckSettings()), new CarCandidate(DemoCar.Fitting(), DemoCar.Fitting() with { Tyre = DemoCar.Tyre("6.00-16") }));
        var front = sheet.Front!.Value;

        Assert.Equal(UnknownReason.TyreSizeUnknown, front.Sheet[CheckId.AxleDiameterMatch].Reason);
        Assert.Contains("6.00-16", CheckWords.Explanation(front.Car, front.Candidate, CheckId.AxleDiameterMatch, front.Sheet[CheckId.AxleDiameterMatch], UnitSystem.Metric), StringComparison.Ordinal);
        Assert.Contains(FitmentCautions.For(front.Car, front.Candidate, front.Sheet), caution => caution.Code == "mixedConstruction");
    }

    [Fact]
    public void What_is_put_on_one_axle_leaves_the_other_as_it_is()
    {
        var car = new FitmentCar(DemoCar.Vehicle(), null, new CheckSettings());
        var sheet = new CarSheet();

        sheet.Evaluate(car, new CarCandidate(DemoCar.Fitting(), DemoCar.Fitting()));
        sheet.Evaluate(car, new CarCandidate(null, DemoCar.Fitting(offsetMm: -40)));

        Assert.Null(sheet.Front);
        Assert.Equal(CheckStatus.Fail, sheet.Verdict);
        Assert.Equal(sheet.OneAxle.Sheet.DecidedBy, sheet.DecidedBy);
        Assert.Equal(sheet.OneAxle.Sheet.Failed, sheet.Failed);
        Assert.Equal(sheet.OneAxle.Sheet.GoverningMargin, sheet.GoverningMargin);
    }

    [Theory]
    [InlineData(CarAxle.Front, CarAxle.Front, true)]
    [InlineData(CarAxle.Rear, CarAxle.Rear, true)]
    [InlineData(CarAxle.Front, null, true)]
    [InlineData(CarAxle.Rear, null, true)]
    [InlineData(CarAxle.Front, CarAxle.Rear, false)]
    [InlineData(CarAxle.Rear, CarAxle.Front, false)]
    public void The_first_look_is_at_the_axles_that_change_and_names_no_other_check(CarAxle unlike, CarAxle? axle, bool fails)
    {
        var vehicle = DemoCar.Vehicle();
        vehicle = vehicle.With(unlike, vehicle.At(unlike) with { Hub = vehicle.At(unlike).Hub with { BoltCircle = new BoltCircle(5, 112) } });
        var found = new PairVerdict[1];

        // It touches the strut by far, and the first look does not come to that.
        new CatalogueCheck([new FitmentCar(vehicle, axle, new CheckSettings())]).Evaluate(new CarCandidate(DemoCar.Fitting(offsetMm: 100)), found);

        Assert.Equal(CheckStatus.Fail, found[0].Verdict);
        Assert.Equal(fails, found[0].DecidedBy == default(CheckIdSet).With(CheckId.BoltCircle));
        Assert.Equal(fails, double.IsNaN(found[0].ProbableMm));
        Assert.Equal(!fails, found[0].DecidedBy.Contains(CheckId.InboardClearance));
    }

    [Fact]
    public void A_camber_change_is_made_at_the_named_axle_alone()
    {
        var car = new FitmentCar(DemoCar.Vehicle(), CarAxle.Front, new CheckSettings { MinimumMarginMm = 5, CamberChange = new(-2, CamberChangePlace.StrutTop, 240, 430) });

        Assert.NotNull(car.At(CarAxle.Front).Settings.CamberChange);
        Assert.Null(car.At(CarAxle.Rear).Settings.CamberChange);
        Assert.Equal(5, car.At(CarAxle.Rear).MinimumMarginMm);
    }

    // The trade drills wheels for two cars; a hub whose circle is that of a wheel fitted now may have them in the other order.
    [Theory]
    [InlineData(4, 100, 4, 108, 4, 108, 4, 100, true)]
    [InlineData(4, 100, 4, 108, 4, 100, 4, 108, true)]
    [InlineData(4, 100, 4, 108, 4, 98, 4, 100, true)]
    [InlineData(4, 100, 4, 108, 4, 108, 5, 100, true)]
    [InlineData(4, 100, 4, 108, 5, 108, 5, 100, false)]
    public void One_common_circle_of_two_drilled_for_two_is_enough(int holes, double mm, int secondHoles, double secondMm, int hubHoles, double hubMm, int hubSecondHoles, double hubSecondMm, bool fits)
    {
        var hub = new BoltCircle(hubHoles, hubMm) { Second = new(hubSecondHoles, hubSecondMm) };
        var candidate = DemoCar.Fitting();
        candidate = candidate with { Wheel = candidate.Wheel with { BoltCircle = new BoltCircle(holes, mm) { Second = new(secondHoles, secondMm) } } };
        var axle = DemoCar.Axle() with { Hub = DemoCar.Axle().Hub with { BoltCircle = hub } };

        var result = DemoCar.Check(DemoCar.Front(axle), candidate)[CheckId.BoltCircle];

        Assert.Equal(fits ? CheckStatus.Pass : CheckStatus.Fail, result.Status);
        if (fits) Assert.Equal(result.Value!.Value, result.Limit!.Value, BoltCircle.MatchToleranceMm);
    }

    [Fact]
    public void A_long_catalogue_allocates_nothing_for_pairs_of_one_axle()
    {
        FitmentCar[] cars = [.. Enumerable.Range(0, 7).Select(_ => new FitmentCar(DemoCar.Vehicle(), CarAxle.Front, new CheckSettings()))];
        var check = new CatalogueCheck(cars);
        var found = new PairVerdict[cars.Length];
        CarCandidate[] candidates = [new(DemoCar.Fitting()), new(DemoCar.Fitting(8, 40)), new(DemoCar.Fitting(offsetMm: 5))];
        Run(2000);

        var before = GC.GetAllocatedBytesForCurrentThread();
        Run(20_000);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 2000);

        void Run(int times)
        {
            for (var i = 0; i < times; i++) check.Evaluate(candidates[i % candidates.Length], found);
        }
    }

    private static void Hold(FitmentCar car, in CarCandidate candidate, in PairVerdict found)
    {
        // Each axle by itself, as the single calls do it.
        var front = candidate.On(car, CarAxle.Front);
        var rear = candidate.On(car, CarAxle.Rear);
        List<CheckSheet> sheets = [];
        Add(CarAxle.Front, front, rear);
        Add(CarAxle.Rear, rear, front);
        CheckStatus[] order = [CheckStatus.Fail, CheckStatus.Unknown, CheckStatus.Caution, CheckStatus.Pass];
        var gravest = order.First(status => sheets.Exists(sheet => sheet.Verdict == status));
        Assert.Equal(gravest, found.Verdict);
        var decided = sheets.Where(sheet => sheet.Verdict == gravest).Aggregate(0u, (bits, sheet) => bits | sheet.DecidedBy.Bits);
        var first = gravest == CheckStatus.Fail ? decided & CatalogueCheck.FirstLookChecks.Bits : 0;
        Assert.Equal(first != 0 ? first : decided, found.DecidedBy.Bits);
        var tightest = sheets.Where(sheet => sheet.GoverningMargin is not null).MinBy(sheet => sheet.GoverningMargin!.Value.WorstCaseMm);
        Assert.Equal(first != 0 ? double.NaN : tightest?.GoverningMargin!.Value.ProbableMm ?? double.NaN, found.ProbableMm);

        void Add(CarAxle axle, Fitting? fitting, Fitting? other)
        {
            if (fitting is not { } put) return;
            var settings = new CheckSettings { CamberChange = car.Axle == axle ? car.At(axle).Settings.CamberChange : null };
            var context = FitmentContext.Prepare(car.Vehicle, axle, settings);
            sheets.Add(DemoCar.Check(other is { } changed ? context.WithOpposite(changed.Tyre) : context, put));
        }
    }

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);
}
