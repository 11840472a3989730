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
    private const double LostPerSign = 0.06;

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
            var direct = Posterior(signs, at, TrackShare.Compute(wear.Use), wear.Vehicle.DrivenAxle);

            Assert.Equal(direct.Count, posterior.Count);
            for (var i = 0; i < posterior.Count; i++) Assert.Equal(direct[posterior.Combination(i).Mask], posterior.Combination(i).Share, 1e-9);
            for (var cause = 0; cause < AxlePosterior.CauseCount; cause++)
                Assert.Equal(direct.Where(one => Holds(one.Key, cause)).Sum(one => one.Value), posterior.Probability((WearCause)cause), 1e-9);
        }
    });

    // A mark's bits are exact. Of a sign's the nine points over 2.6 standard deviations lose up to 0.06; more where one expectation is far narrower than
    // another, which is not held here.
    [Fact]
    public void A_check_tells_as_many_bits_as_its_integral() => Cases.Sample(wear =>
    {
        foreach (var at in Enum.GetValues<CarAxle>())
        {
            var (signs, posterior) = Weigh(wear, at, null);
            var bits = new double[ExpectedInformation.CheckCount];
            ExpectedInformation.Add(posterior, signs, bits);

            var (direct, signsOf) = Bits(posterior, signs, TrackShare.Compute(wear.Use));
            for (var check = 0; check < bits.Length; check++)
            {
                if (signsOf[check] is { } open) Assert.InRange(bits[check], direct[check] - (LostPerSign * open) - 1e-9, direct[check] + 1e-3);
            }
        }
    });

    [Fact]
    public void The_next_check_is_the_one_that_tells_most() => Cases.Sample(wear =>
    {
        var bits = new double[ExpectedInformation.CheckCount];
        CarAxle[] looked = [.. Enum.GetValues<CarAxle>().Where(at => wear.Tyres.Count == 0 || wear.Tyres.Any(tyre => tyre.Axle == at))];
        foreach (var at in looked)
        {
            var (signs, posterior) = Weigh(wear, at, null);
            ExpectedInformation.Add(posterior, signs, bits);
        }

        var next = WearDiagnosis.Compute(wear).Next;
        Assert.Equal(bits.Max() > 0 ? bits.Max() : null, next.ExpectedBits);
        if (next.ExpectedBits is { } told) Assert.Equal(told, bits[(int)next.Check]);
    });

    private static Gen<WheelAlignment> Angles() =>
        Gen.Select(Gen.Double[-4, 1], Gen.Double[-0.6, 0.6], Gen.Int[0, 3], (camberDeg, toeDeg, has) => new WheelAlignment { CamberDeg = (has & 1) != 0 ? camberDeg : null, ToeDeg = (has & 2) != 0 ? toeDeg : null });

    private static (AxleSigns Signs, AxlePosterior Posterior) Weigh(WearCase wear, CarAxle at, Estimate? shortDeg)
    {
        var signs = EvidenceExtractor.Extract(wear, at, shortDeg);
        return (signs, AxlePosterior.Compute(signs, at, TrackShare.Compute(wear.Use), wear.Vehicle.DrivenAxle));
    }

    private static bool Holds(int mask, int cause) => (mask & (1 << cause)) != 0;

    private static Dictionary<int, double> Posterior(AxleSigns signs, CarAxle at, TrackShare share, DrivenAxle? driven)
    {
        var odds = new Dictionary<int, double>();
        foreach (var row in WearTable.Priors)
        {
            var roadOnly = share.SeesTrack is { } sees ? (sees ? 1 : row.RoadOnly) : (1 + row.RoadOnly) / 2;
            var ofDrive = !row.IsOfDrive ? 1 : driven switch { null => 0.5, DrivenAxle.Both => 1, DrivenAxle.Front => at == CarAxle.Front ? 1 : 0, _ => at == CarAxle.Rear ? 1.0 : 0 };
            var chance = (at == CarAxle.Front ? row.Front : row.Rear) * roadOnly * ofDrive;
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
                if (signs[sign] is not { } read) continue;
                var (mean, variance) = Expected(mask, sign, share);
                log += StudentLog(read.Value, mean, variance + (read.StandardError * read.StandardError));
            }

            foreach (var mark in Enum.GetValues<WearMark>())
            {
                if (signs[mark] is { } isThere) log += Math.Log(isThere ? Chance(mask, mark) : 1 - Chance(mask, mark));
            }

            logs[mask] = (0.9 * log) + causes.Where(cause => Holds(mask, cause)).Sum(cause => odds[cause]);
        }

        var most = logs.Values.Max();
        var sum = logs.Values.Sum(log => Math.Exp(log - most));
        return logs.ToDictionary(one => one.Key, one => Math.Exp(one.Value - most) / sum);
    }

    private static (double Mean, double Variance) Expected(int mask, WearSign sign, TrackShare share)
    {
        var baseline = WearTable.Baselines.Single(row => row.Sign == sign);
        var ofTrack = share.SeesTrack is { } sees ? (sees ? 1 : 0) : 0.5;
        var (mean, variance) = (baseline.Mean + (ofTrack * baseline.OfTrack), Math.Pow(baseline.Spread, 2) + Math.Pow(share.Value * baseline.TrackSpread, 2));
        foreach (var shift in WearTable.Shifts.Where(row => row.Sign == sign && Holds(mask, (int)row.Cause)))
        {
            var grows = shift.By switch { UseShare.Track => share.Value, UseShare.Road => 1 - share.Value, _ => 1 };
            mean += grows * shift.Mean;
            variance += Math.Pow(grows * shift.Spread, 2);
        }

        return (mean, variance);
    }

    private static double Chance(int mask, WearMark mark) =>
        1 - WearTable.Marks.Where(row => row.Mark == mark && (row.Cause == WearCause.Normal || Holds(mask, (int)row.Cause))).Aggregate(1.0, (miss, row) => miss * (1 - row.Probability));

    // Student's t density of 7 degrees of freedom with this variance: Γ(4) = 6, Γ(3.5) = 15 √π / 8 (any table of the gamma function).
    private static double StudentLog(double x, double mean, double variance)
    {
        var scale = Math.Sqrt(variance * 5 / 7);
        var z = (x - mean) / scale;
        return Math.Log(6 / (15 * Math.Sqrt(Math.PI) / 8 * Math.Sqrt(7 * Math.PI) * scale)) - (4 * Math.Log(1 + (z * z / 7)));
    }

    private static (double[] Bits, int?[] SignsOf) Bits(AxlePosterior posterior, AxleSigns signs, TrackShare share)
    {
        var kept = Enumerable.Range(0, posterior.Count).Select(posterior.Combination).OrderByDescending(one => one.Share).Take(Kept).ToArray();
        var whole = kept.Sum(one => one.Share);
        (int Mask, double Share)[] combinations = [.. kept.Select(one => (one.Mask, one.Share / whole))];
        var (bits, signsOf) = (new double[ExpectedInformation.CheckCount], new int?[ExpectedInformation.CheckCount]);
        Array.Fill(signsOf, 0);
        foreach (var row in CheckTable.Signs)
        {
            var isDone = (row.Check == WearCheck.Camber && (signs[WearSign.CamberSet] ?? signs[WearSign.CamberShort]) is not null) || (row.Check == WearCheck.Toe && signs[WearSign.ToeSet] is not null);
            if (signs[row.Sign] is not null || isDone) continue;
            var (told, fits) = OfSign(combinations, row, share);
            bits[(int)row.Check] += told;
            signsOf[(int)row.Check] = fits ? signsOf[(int)row.Check] + 1 : null;
        }

        foreach (var mark in Enum.GetValues<WearMark>())
        {
            if (signs[mark] is null)
                bits[(int)CheckTable.CheckFor(mark)] += Entropy(combinations.Sum(one => one.Share * Chance(one.Mask, mark))) - combinations.Sum(one => one.Share * Entropy(Chance(one.Mask, mark)));
        }

        var open = -combinations.Sum(one => one.Share * Math.Log2(one.Share));
        return ([.. bits.Select(told => Math.Min(open, told))], signsOf);

        static double Entropy(double chance) => -(chance * Math.Log2(chance)) - ((1 - chance) * Math.Log2(1 - chance));
    }

    // Mutual information as the mean of log₂ p(x | combination) / p(x), by the trapezium rule over 8 standard deviations either side.
    private static (double Bits, bool IsFine) OfSign((int Mask, double Share)[] combinations, CheckRow row, TrackShare share)
    {
        const int points = 400;
        (double Share, double Mean, double Spread)[] parts = [.. combinations.Select(one =>
        {
            var (mean, variance) = Expected(one.Mask, row.Sign, share);
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

        var reached = parts.Max(part => part.Mean + (2.6 * part.Spread)) - parts.Min(part => part.Mean - (2.6 * part.Spread));
        return (sum, reached / 9 <= parts.Min(part => part.Spread));
    }
}
