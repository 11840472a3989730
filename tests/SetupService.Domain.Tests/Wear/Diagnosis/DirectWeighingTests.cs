using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>
/// The weighing and the expected information against their formulas (docs/methods/wear-diagnosis) worked directly from the table: every combination
/// by itself, with no state carried from one to the next, and integrals over thousands of points.
/// </summary>
public sealed class DirectWeighingTests
{
    // The likeliest combinations that expected information is worked over.
    private const int Kept = 12;

    private static readonly Gen<WearCase> Cases = Gen.Select(
        AnyCase.Cases, Angles(), Angles(), Gen.Enum<DrivenAxle>(), Gen.Int[0, 15],
        (wear, left, right, driven, has) => wear with
        {
            Vehicle = new Vehicle { Front = new Axle { Left = (has & 1) != 0 ? left : new(), Right = (has & 1) != 0 ? right : new() }, DrivenAxle = (has & 2) != 0 ? driven : null },
            Use = new WearUse((has & 4) != 0 ? wear.Use.RoadKm : null, (has & 8) != 0 ? wear.Use.TrackLaps : null, 3),
        });

    [Fact]
    public void Causes_are_weighed_by_their_formula() => Gen.Select(Cases, Gen.Double[-1, 3], Gen.Bool).Sample((wear, shortDeg, isKnown) =>
    {
        foreach (var at in Enum.GetValues<CarAxle>())
        {
            var (signs, posterior) = Weigh(wear, at, isKnown ? new Estimate(shortDeg, 0.7) : null);
            var direct = Posterior(signs, new Place(at, TrackShare.Compute(wear.Use), wear.Vehicle.DrivenAxle, signs));

            Assert.Equal(direct.Count, posterior.Count);
            for (var i = 0; i < posterior.Count; i++) Assert.Equal(direct[posterior.Combination(i).Mask], posterior.Combination(i).Share, 1e-9);
            for (var cause = 0; cause < AxlePosterior.CauseCount; cause++)
                Assert.Equal(direct.Where(one => Holds(one.Key, cause)).Sum(one => one.Value), posterior.Probability((WearCause)cause), 1e-9);
        }
    });

    // To a thousandth of a bit a sign, whose integral is worked over thousands of points; and never more than the combinations leave open.
    [Fact]
    public void A_check_tells_as_many_bits_as_its_integral_and_never_more_than_are_open() => Cases.Sample(
        wear =>
        {
            foreach (var at in Enum.GetValues<CarAxle>())
            {
                var (signs, posterior) = Weigh(wear, at, null);
                var bits = new double[ExpectedInformation.CheckCount];
                ExpectedInformation.Add(posterior, signs, bits);

                var (direct, open) = Bits(posterior, signs, new Place(at, TrackShare.Compute(wear.Use), wear.Vehicle.DrivenAxle, signs));
                for (var check = 0; check < bits.Length; check++)
                {
                    Assert.Equal(direct[check], bits[check], 4e-3);
                    Assert.InRange(bits[check], 0, open + 1e-12);
                }
            }
        },
        iter: 40);

    // By the trapezium rule over 400,001 points and twelve standard deviations (worked apart, in Python). The first is the axle that may point aside: nine points over the
    // whole width made 0.336 bits of it, of 0.081 that are open; of the second, a pressure beside near certainty, 0.005.
    [Theory]
    [InlineData(0.99, 0, 0.0022250, 0, 0.1780, 0.0541322)]
    [InlineData(0.9969, 0, 13.81, -20, 63.09, 0.0250945)]
    [InlineData(0.997, 0, 0.01, 0.9, 2.25, 0.0239263)]
    public void A_narrow_expectation_beside_a_wide_one_is_met(double share, double mean, double variance, double otherMean, double otherVariance, double bits) =>
        Assert.Equal(bits, ExpectedInformation.MutualInformation([share, 1 - share], [mean, otherMean], [variance, otherVariance]), 2e-4);

    // Depths before anything else where none were read.
    [Fact]
    public void The_next_check_is_the_one_that_tells_most() => Cases.Sample(wear =>
    {
        var bits = new double[ExpectedInformation.CheckCount];
        var isDepthRead = false;
        CarAxle[] looked = [.. Enum.GetValues<CarAxle>().Where(at => wear.Tyres.Count == 0 || wear.Tyres.Any(tyre => tyre.Axle == at))];
        foreach (var at in looked)
        {
            var (signs, posterior) = Weigh(wear, at, null);
            ExpectedInformation.Add(posterior, signs, bits);
            isDepthRead |= signs[WearSign.ShoulderDifference] is not null;
        }

        var next = WearDiagnosis.Compute(wear).Next;
        var most = isDepthRead || bits[(int)WearCheck.DepthsAcross] == 0 ? bits.Max() : bits[(int)WearCheck.DepthsAcross];
        Assert.Equal(most > 0 ? most : null, next.ExpectedBits);
        if (next.ExpectedBits is { } told) Assert.Equal(told, bits[(int)next.Check]);
    });

    private static Gen<WheelAlignment> Angles() =>
        Gen.Select(Gen.Double[-4, 1], Gen.Double[-0.6, 0.6], Gen.Int[0, 3], (camberDeg, toeDeg, has) => new WheelAlignment { CamberDeg = (has & 1) != 0 ? camberDeg : null, ToeDeg = (has & 2) != 0 ? toeDeg : null });

    private static (AxleSigns Signs, AxlePosterior Posterior) Weigh(WearCase wear, CarAxle at, Estimate? shortDeg)
    {
        var signs = EvidenceExtractor.Extract(wear, at, new CarSigns(shortDeg, null));
        var other = at == CarAxle.Front ? CarAxle.Rear : CarAxle.Front;
        if (wear.Tyres.Count == 0 || wear.Tyres.Any(tyre => tyre.Axle == other)) signs.Other = EvidenceExtractor.Extract(wear, other, new CarSigns(shortDeg, null));
        return (signs, AxlePosterior.Compute(signs, AxleSetting.From(wear, at)));
    }

    private static bool Holds(int mask, int cause) => (mask & (1 << cause)) != 0;

    private static Dictionary<int, double> Posterior(AxleSigns signs, Place place)
    {
        var odds = new Dictionary<int, double>();
        foreach (var row in WearTable.Priors)
        {
            var sees = place.Share.SeesTrack;
            var ofDrive = !row.IsOfDrive ? 1 : place.Driven switch { null => 0.5, DrivenAxle.Both => 1, DrivenAxle.Front => place.At == CarAxle.Front ? 1 : 0, _ => place.At == CarAxle.Rear ? 1.0 : 0 };
            var chance = (place.At == CarAxle.Front ? row.Front : row.Rear) * (sees + ((1 - sees) * row.RoadOnly)) * ofDrive;

            // Rear wheels are built with the camber that roads need.
            if (row.Cause == WearCause.LowNegativeCamber && place.At == CarAxle.Rear) chance *= 0.6 + (0.4 * place.Share.Value);

            // Drive wears the whole width of a tread.
            if (row.Cause == WearCause.LowNegativeCamber) chance *= place.Driven switch { null => 1, DrivenAxle.Both => 0.8, DrivenAxle.Front => place.At == CarAxle.Front ? 0.55 : 1.3, _ => place.At == CarAxle.Rear ? 0.55 : 1.3 };
            if (chance > 0) odds[(int)row.Cause] = Math.Log(chance / (1 - chance));
        }

        var logs = new Dictionary<int, double>();
        int[] causes = [.. odds.Keys];
        foreach (var mask in causes.SelectMany(one => causes.SelectMany(two => causes.Select(three => (1 << one) | (1 << two) | (1 << three)))).Append(0).Distinct())
        {
            if (WearTable.Exclusive.Any(pair => Holds(mask, (int)pair.One) && Holds(mask, (int)pair.Other))) continue;
            var log = 0.0;
            foreach (var sign in Enum.GetValues<WearSign>())
            {
                if (Read(signs, sign) is { } read) log += Log(read, Expected(mask, sign, place), Expected(0, sign, place), WearTable.Baselines.Single(row => row.Sign == sign).MostTimes, signs[WearSign.PressureDeviation] is not null ? double.PositiveInfinity : sign switch { WearSign.CrownDifference => 8, WearSign.CrownTemperatureDifference => 2, _ => double.PositiveInfinity });
            }

            foreach (var mark in Enum.GetValues<WearMark>())
            {
                if (signs[mark] is { } isThere && mark is not (WearMark.ShoulderGraining or WearMark.WornPastShoulder)) log += Math.Log(isThere ? Chance(mask, mark, signs, place) : 1 - Chance(mask, mark, signs, place));
            }

            logs[mask] = log + Math.Log(EdgeMarks(mask, signs, place)) + causes.Where(cause => Holds(mask, cause)).Sum(cause => odds[cause]);
        }

        var most = logs.Values.Max();
        var sum = logs.Values.Sum(log => Math.Exp(log - most));
        return logs.ToDictionary(one => one.Key, one => Math.Exp(one.Value - most) / sum);
    }

    // The centre is told with the shoulders of both wheels: fifteen hundredths of their difference are theirs, and a fifth of it is open. Wheels worn to opposite sides differ by
    // half of what lies between them each. A shoulder worn on one side alone leaves the mean wear of left and right open by three tenths of it.
    private static Estimate? Read(AxleSigns signs, WearSign sign)
    {
        if (signs[sign] is not { } read) return null;
        var across = Math.Abs(signs[WearSign.ShoulderDifferenceAcrossAxle]?.Value ?? 0);
        if (signs[WearSign.ShoulderDifference] is not { } mean) return read;
        var ofWheel = Math.Max(Math.Abs(mean.Value), across / 2);
        return sign switch
        {
            WearSign.CrownDifference => new(read.Value + (0.15 * ofWheel), Math.Sqrt((read.StandardError * read.StandardError) + Math.Pow(0.2 * ofWheel, 2))),
            WearSign.CrownDifferenceAcrossAxle => new(read.Value, Math.Sqrt((read.StandardError * read.StandardError) + Math.Pow(0.2 * across, 2))),
            WearSign.SideWearRatio => new(read.Value, Math.Sqrt((read.StandardError * read.StandardError) + Math.Pow(0.3 * across, 2))),
            _ => read,
        };
    }

    // Against the density without a cause, held beyond the two readings where their ratio turns; those are found here by a search in steps, not by a formula.
    // A sign that has a limit makes nothing more than so many times as likely, or as unlikely.
    private static double Log(Estimate read, (double Mean, double Variance) with, (double Mean, double Variance) without, double mostTimes, double mostTimesLow)
    {
        var none = StudentLog(read.Value, without.Mean, without.Variance + (read.StandardError * read.StandardError));
        var times = Math.Exp(Log(read, with, without) - none);

        // Both shoulders worn while no pressure was read: eight times at most; both hotter: twice.
        if (read.Value < without.Mean && times > 1) times = 1 / Math.Sqrt(Math.Pow(times, -2) + ((1 - Math.Pow(times, -2)) / (mostTimesLow * mostTimesLow)));
        var least = 1 / mostTimes;
        return none + Math.Log(Math.Sqrt(((times * times) + (least * least)) / (1 + (least * least * times * times))));
    }

    private static double Log(Estimate read, (double Mean, double Variance) with, (double Mean, double Variance) without)
    {
        var error = read.StandardError * read.StandardError;
        double Ratio(double x) => StudentLog(x, with.Mean, with.Variance + error) - StudentLog(x, without.Mean, without.Variance + error);
        var here = StudentLog(read.Value, without.Mean, without.Variance + error);
        if (with.Mean == without.Mean) return here + Ratio(read.Value);
        var towards = Math.Sign(with.Mean - without.Mean);
        var spread = Math.Sqrt(with.Variance + error) + Math.Abs(with.Mean - without.Mean);
        var (near, far) = (Turn(-towards), Turn(towards));
        return here + Ratio(Math.Clamp(read.Value, Math.Min(near, far), Math.Max(near, far)));

        // The turning point on one side, by golden section over a range that holds it.
        double Turn(int side)
        {
            var best = side * towards > 0 ? 1 : -1;
            var (low, high) = (without.Mean, without.Mean + (side * 200 * spread));
            var golden = (Math.Sqrt(5) - 1) / 2;
            for (var step = 0; step < 120; step++)
            {
                var (one, two) = (high - (golden * (high - low)), low + (golden * (high - low)));
                if (best * Ratio(one) > best * Ratio(two)) high = two;
                else low = one;
            }

            return (low + high) / 2;
        }
    }

    private static (double Mean, double Variance) Expected(int mask, WearSign sign, Place place)
    {
        var (baseline, share, sees) = (WearTable.Baselines.Single(row => row.Sign == sign), place.Share, place.Share.SeesTrack);
        var mean = baseline.Mean + (sees * baseline.OfTrack);

        // Front against rear, half of the difference each way.
        var frontByRear = sign switch { WearSign.AxleWearRatio => 2 * WearTable.FrontByRear(place.Driven), WearSign.ToeSet => -0.05, WearSign.ShoulderDifference => 0.06, WearSign.ShoulderTemperatureDifference => 2, WearSign.CamberSet => 0.4, _ => 0 };
        var ofOther = mean + (place.At == CarAxle.Front ? -frontByRear / 2 : frontByRear / 2);
        mean += place.At == CarAxle.Front ? frontByRear / 2 : -frontByRear / 2;
        var squaredShare = Math.Pow(share.Value, 2) + Math.Pow(share.Spread, 2);
        var variance = Math.Pow(baseline.Spread, 2) + (squaredShare * Math.Pow(baseline.TrackSpread, 2)) + (sees * (1 - sees) * Math.Pow(baseline.OfTrack, 2));
        (mean, variance) = WithOther(mean, ofOther, variance, Math.Pow(baseline.Shared, 2) + (squaredShare * Math.Pow(baseline.SharedOfTrack, 2)), place.Signs.Other?[sign]);
        foreach (var shift in WearTable.Shifts.Where(row => row.Sign == sign && Holds(mask, (int)row.Cause)))
        {
            if (shift is { Cause: WearCause.SideDifference, Sign: WearSign.ShoulderDifferenceAcrossAxle } && place.Signs[WearSign.CamberDifference] is { } camber)
            {
                (mean, variance) = (mean + (0.2 * camber.Value), variance + (0.25 * 0.25));
                continue;
            }

            var grows = shift.By switch { UseShare.Track => share.Value, UseShare.Road => 1 - share.Value, _ => 1 };
            mean += grows * shift.Mean;
            variance += Math.Pow(grows * shift.Spread, 2);
        }

        return (mean, variance);
    }

    // What both axles have alike, told by the other: of two normal readings with a shared part, the mean and variance of one given the other (any text on the normal distribution);
    // the other's is held at two standard deviations.
    private static (double Mean, double Variance) WithOther(double mean, double meanOfOther, double own, double shared, Estimate? other)
    {
        if (other is not { } read) return (mean, own + shared);
        var ofOther = own + shared + Math.Pow(read.StandardError, 2);
        var off = Math.Max(-2 * Math.Sqrt(ofOther), Math.Min(2 * Math.Sqrt(ofOther), read.Value - meanOfOther));
        return (mean + (shared / ofOther * off), own + shared - (shared * shared / ofOther));
    }

    // Grains and scuffs of the outer shoulder: either it was dragged in bends, which shows in three of four and seven of ten, or it was not; each may come of something else beside that.
    private static double EdgeMarks(int mask, AxleSigns signs, Place place)
    {
        var dragged = Dragged(mask, place);
        var (grains, past) = (Own(mask, WearMark.ShoulderGraining, signs), Own(mask, WearMark.WornPastShoulder, signs));
        return (dragged * Chance(signs[WearMark.ShoulderGraining], 1 - ((1 - grains) * 0.25)) * Chance(signs[WearMark.WornPastShoulder], 1 - ((1 - past) * 0.3)))
            + ((1 - dragged) * Chance(signs[WearMark.ShoulderGraining], grains) * Chance(signs[WearMark.WornPastShoulder], past));

        static double Chance(bool? found, double chance) => found switch { true => chance, false => 1 - chance, null => 1 };
    }

    // A quarter as often where nobody drives on a track.
    private static double Dragged(int mask, Place place) => 1 - WearTable.DraggedEdge.Where(row => row.Cause == WearCause.Normal || Holds(mask, (int)row.Cause))
        .Aggregate(1.0, (miss, row) => miss * (1 - (row.Probability * (0.25 + (0.75 * place.Share.SeesTrack)))));

    private static double Chance(int mask, WearMark mark, AxleSigns signs, Place place)
    {
        var byEdge = mark switch { WearMark.ShoulderGraining => 0.75, WearMark.WornPastShoulder => 0.7, _ => 0 };
        return 1 - ((1 - Own(mask, mark, signs)) * (1 - (byEdge * Dragged(mask, place))));
    }

    private static double Own(int mask, WearMark mark, AxleSigns signs) =>
        1 - WearTable.Marks.Where(row => row.Mark == mark && (row.Cause == WearCause.Normal || Holds(mask, (int)row.Cause))).Aggregate(1.0, (miss, row) => miss * (1 - (row.Probability * Leak(row, signs))));

    // A tyre that ran all its way elsewhere is taken for one that stayed less than half as often as one that ran three quarters of it.
    private static double Leak(MarkChance row, AxleSigns signs) =>
        row is { Cause: WearCause.Normal, Mark: WearMark.MovedOrTurned } && signs.ElsewhereShare is { } share ? Math.Max(0.45, 6 * Math.Pow(1 - share, 1.5)) : 1;

    // Student's t density of 7 degrees of freedom with this variance: Γ(4) = 6, Γ(3.5) = 15 √π / 8 (any table of the gamma function).
    private static double StudentLog(double x, double mean, double variance)
    {
        var scale = Math.Sqrt(variance * 5 / 7);
        var z = (x - mean) / scale;
        return Math.Log(6 / (15 * Math.Sqrt(Math.PI) / 8 * Math.Sqrt(7 * Math.PI) * scale)) - (4 * Math.Log(1 + (z * z / 7)));
    }

    private static (double[] Bits, double Open) Bits(AxlePosterior posterior, AxleSigns signs, Place place)
    {
        var kept = Enumerable.Range(0, posterior.Count).Select(posterior.Combination).OrderByDescending(one => one.Share).Take(Kept).ToArray();
        var whole = kept.Sum(one => one.Share);
        (int Mask, double Share)[] combinations = [.. kept.Select(one => (one.Mask, one.Share / whole))];
        var bits = new double[ExpectedInformation.CheckCount];
        foreach (var row in CheckTable.Signs)
        {
            var isDone = (row.Check == WearCheck.Camber && signs.IsCamberRead) || (row.Check == WearCheck.Toe && signs[WearSign.ToeSet] is not null);
            if (signs[row.Sign] is null && !isDone) bits[(int)row.Check] += OfSign(combinations, row, place);
        }

        foreach (var mark in Enum.GetValues<WearMark>())
        {
            if (signs[mark] is null)
                bits[(int)CheckTable.CheckFor(mark)] += Entropy(combinations.Sum(one => one.Share * Chance(one.Mask, mark, signs, place))) - combinations.Sum(one => one.Share * Entropy(Chance(one.Mask, mark, signs, place)));
        }

        var open = -combinations.Sum(one => one.Share > 0 ? one.Share * Math.Log2(one.Share) : 0);
        return ([.. bits.Select(told => Math.Min(open, told))], open);

        static double Entropy(double chance) => -(chance * Math.Log2(chance)) - ((1 - chance) * Math.Log2(1 - chance));
    }

    // Mutual information as the mean of log₂ p(x | combination) / p(x), by the trapezium rule over 8 standard deviations either side.
    private static double OfSign((int Mask, double Share)[] combinations, CheckRow row, Place place)
    {
        const int points = 3000;
        (double Share, double Mean, double Spread)[] parts = [.. combinations.Select(one =>
        {
            var (mean, variance) = Expected(one.Mask, row.Sign, place);
            return (one.Share, mean, Math.Sqrt(variance + (row.Error * row.Error)));
        })];
        var (low, high) = (parts.Min(part => part.Mean - (8 * part.Spread)), parts.Max(part => part.Mean + (8 * part.Spread)));
        var (step, sum) = ((high - low) / points, 0.0);
        for (var point = 0; point <= points; point++)
        {
            var x = low + (point * step);
            var of = Array.ConvertAll(parts, part => Math.Exp(-0.5 * Math.Pow((x - part.Mean) / part.Spread, 2)) / (part.Spread * Math.Sqrt(2 * Math.PI)));
            var all = parts.Select((part, i) => part.Share * of[i]).Sum();
            for (var i = 0; i < parts.Length; i++) sum += of[i] > 0 ? parts[i].Share * of[i] * Math.Log2(of[i] / all) * step : 0;
        }

        return sum;
    }

    private readonly record struct Place(CarAxle At, TrackShare Share, DrivenAxle? Driven, AxleSigns Signs);
}
