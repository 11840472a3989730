using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics;
using SetupService.Domain.Numerics.Statistics;

namespace SetupService.Domain.Planning;

/// <summary>
/// How sure the recommendation is: the share of joint draws of the car's inputs in which it stays the recommended one. The inputs are those that move what it delivers most; each is
/// followed at both ends of its 90 % range, on the car as given and on every package that could take its place. Method page: docs/methods/plan.
/// </summary>
/// <param name="Share">Share of the draws in which it stays, 0 to 1.</param>
/// <param name="Inputs">The inputs drawn, as JSON Pointers, the one that moves it most first.</param>
/// <param name="Rivals">How many packages were looked at beside it, that could take its place or decide what is enough.</param>
public sealed record OrderCertainty(double Share, IReadOnlyList<string> Inputs, int Rivals)
{
    /// <summary>True where something that is not known moves what these packages deliver; else nothing was drawn, and the share says nothing.</summary>
    public bool IsDrawn { get; init; } = true;

    /// <summary>The most packages looked at beside the recommended one.</summary>
    public const int MostRivals = 5;

    private const int MostInputs = 8;
    private const double LeastEffect = 1e-4;

    /// <summary>How sure it is; null where the work allowed is spent or a bend cannot be solved on the way.</summary>
    /// <param name="plan">The car and what is wanted of it.</param>
    /// <param name="treadsSay">What the treads say against the model, as <see cref="PackageEvaluator.TreadsSay"/> found it.</param>
    /// <param name="budget">Work allowed.</param>
    /// <param name="choice">The choice among the sound packages.</param>
    /// <param name="given">What the car as given reaches.</param>
    /// <param name="packages">The recommended package first, then those that could take its place.</param>
    public static OrderCertainty? Compute(PlanCase plan, (double Front, double Rear) treadsSay, PlanChoice choice, PackageFigures given, IReadOnlyList<JudgedPackage> packages, WorkBudget budget)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(choice);
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(packages);
        var trackShare = plan.Use.TrackShare;

        // One for each car, so that each variation is solved from the last one of the same car.
        var ofGiven = new PackageEvaluator(plan, budget, treadsSay);
        PackageEvaluator[] ofPackages = [.. packages.Select(_ => new PackageEvaluator(plan, budget, treadsSay))];
        double[] delivered = [.. packages.Select(one => choice.Delivered(one.Figures, trackShare))];
        var reading = plan.Scale.Apply(plan.Given.Reading);

        // The car without parts and as it is set delivers nothing whatever its inputs are: of it, and the first package that could take its place, that one tells which inputs matter.
        var telling = packages.Count > 1 && packages[0] is { Package.Count: 0, Evaluated.Settings.Count: 0 } ? 1 : 0;
        var moved = new List<(HandlingInput Input, double Lower, double Upper, double Size)>();
        foreach (var input in HandlingInputs.All)
        {
            if (!HandlingInputs.CanMatter(input, reading.Car)) continue;
            var (lower, upper) = Ends(reading, input);
            if (lower == 0 && upper == 0) continue;
            if (Effects(input, Math.Abs(lower) > Math.Abs(upper) ? lower : upper, telling, 1) is not [var size]) return null;
            if (Math.Abs(size) > LeastEffect) moved.Add((input, lower, upper, Math.Abs(size)));
        }

        moved.Sort((one, other) => other.Size.CompareTo(one.Size));
        var count = Math.Min(MostInputs, moved.Count);
        var draws = new double[packages.Count][];
        for (var i = 0; i < draws.Length; i++) Array.Fill(draws[i] = new double[JointDraws.Count], delivered[i]);
        for (var k = 0; k < count; k++)
        {
            if (Effects(moved[k].Input, moved[k].Lower, 0, packages.Count) is not { } atLower || Effects(moved[k].Input, moved[k].Upper, 0, packages.Count) is not { } atUpper) return null;
            for (var i = 0; i < draws.Length; i++) JointDraws.Add(k, atLower[i], atUpper[i], draws[i]);
        }

        // What the treads leave open of the wear model, beside the inputs.
        double[][] unknown = [.. packages.Select(one => choice.UnknownOf(one.Figures, trackShare))];
        var unknowns = unknown.Max(one => one.Length);
        for (var k = 0; k < unknowns; k++)
        {
            for (var i = 0; i < draws.Length; i++)
            {
                var atEnd = Uncertainty.StandardErrorsAtNinetyPct * (k < unknown[i].Length ? unknown[i][k] : 0);
                JointDraws.Add(count + k, -atEnd, atEnd, draws[i]);
            }
        }

        // In a draw everything is known: no error is left to hold against a gain.
        Contender[] contenders = [.. packages.Select(one => choice.Contend(one, trackShare) with { Unknown = [] })];
        var stays = 0;
        var drawn = new Contender[contenders.Length];
        for (var draw = 0; draw < JointDraws.Count; draw++)
        {
            for (var i = 0; i < drawn.Length; i++) drawn[i] = contenders[i] with { Delivered = draws[i][draw], First = contenders[i].First is { } first ? first with { Delivered = first.Delivered + draws[i][draw] - delivered[i], Unknown = [] } : null };
            if (choice.Recommended(drawn) == 0) stays++;
        }

        return new(stays / (double)JointDraws.Count, [.. moved.Take(count).Select(one => "/vehicle" + one.Input.Place)], packages.Count - 1) { IsDrawn = count > 0 || unknown.Any(one => one.Any(effect => effect != 0)) };

        // By how much an input moves what so many packages deliver, from one on.
        double[]? Effects(HandlingInput input, double by, int from, int count)
        {
            if (ofGiven.Varied(plan.Given, input, by, null, out var givenUse) is not { } givenMoved) return null;
            givenMoved = Read(givenMoved, givenMoved);
            var effects = new double[count];
            for (var i = from; i < from + count; i++)
            {
                if (packages[i].Evaluated.Car is not { } car || ofPackages[i].Varied(car, input, by, givenUse, out _) is not { } figures) return null;
                effects[i - from] = choice.Delivered(Read(figures, givenMoved) with { NoiseSteps = packages[i].Figures.NoiseSteps }, givenMoved, trackShare) - delivered[i];
            }

            return effects;
        }

        // Where treads were read, they say how the car as given leans, whatever its inputs are.
        PackageFigures Read(PackageFigures figures, PackageFigures givenMoved) => figures with
        {
            Front = figures.Front with { OffFlatDeg = figures.Front.OffFlatDeg - (treadsSay.Front == 0 ? 0 : givenMoved.Front.MeanInclinationDeg - given.Front.MeanInclinationDeg) },
            Rear = figures.Rear with { OffFlatDeg = figures.Rear.OffFlatDeg - (treadsSay.Rear == 0 ? 0 : givenMoved.Rear.MeanInclinationDeg - given.Rear.MeanInclinationDeg) },
        };
    }

    // How far either end of an input's 90 % range is from its value.
    private static (double Lower, double Upper) Ends(ResolvedHandlingCar reading, HandlingInput input)
    {
        if (reading.AssumedFor(input) is { } assumed) return (assumed.Lower - assumed.Value, assumed.Upper - assumed.Value);
        var error = Uncertainty.StandardErrorsAtNinetyPct * input.ErrorOf(input.Read(reading.Car));
        return (-error, error);
    }
}
