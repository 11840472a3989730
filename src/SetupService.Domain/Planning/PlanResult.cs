namespace SetupService.Domain.Planning;

/// <summary>What comes of a plan: the packages worth choosing between, the recommended one, what was rejected, and how the choice changes.</summary>
public sealed record PlanResult
{
    /// <summary>The most packages answered.</summary>
    public const int MostAnswered = 12;

    private const int MostRejected = 20;
    private const int TrackSteps = 20;

    /// <summary>What the car as given reaches.</summary>
    public required PackageFigures Given { get; init; }

    /// <summary>The packages answered, the recommended one first where there is one, then by cost.</summary>
    public required IReadOnlyList<JudgedPackage> Packages { get; init; }

    /// <summary>How many more none dominates.</summary>
    public required int FurtherCount { get; init; }

    /// <summary>The recommended package; null where none may be recommended.</summary>
    public required JudgedPackage? Recommended { get; init; }

    /// <summary>The choice among the sound packages.</summary>
    public required PlanChoice Choice { get; init; }

    /// <summary>Parts that are in no package worth choosing because of what they do, with the reason.</summary>
    public required IReadOnlyList<RejectedPart> RejectedParts { get; init; }

    /// <summary>Packages rejected although each of their parts is in another that is not, the cheapest first.</summary>
    public required IReadOnlyList<JudgedPackage> RejectedPackages { get; init; }

    /// <summary>How many more packages were rejected.</summary>
    public required int FurtherRejectedCount { get; init; }

    /// <summary>The recommended package from each budget on, up to the one stated.</summary>
    public required IReadOnlyList<(double FromCost, JudgedPackage Package)> ByBudget { get; init; }

    /// <summary>The recommended package over the track's share of the use, from 0 to 1.</summary>
    public required IReadOnlyList<(double From, double To, JudgedPackage Package)> ByTrackShare { get; init; }

    /// <summary>The sound package that delivers most; null where none is sound.</summary>
    public required JudgedPackage? Most { get; init; }

    /// <summary>The packages that could take the recommended one's place, or decide what is enough; at most <see cref="OrderCertainty.MostRivals"/>.</summary>
    public required IReadOnlyList<JudgedPackage> Rivals { get; init; }

    /// <summary>Every package that none dominates.</summary>
    public required IReadOnlyList<JudgedPackage> Front { get; init; }

    /// <summary>Composes it from all packages as judged.</summary>
    /// <param name="plan">The car and what is wanted of it.</param>
    /// <param name="parts">The parts on offer.</param>
    /// <param name="given">What the car as given reaches.</param>
    /// <param name="judged">Every package, judged.</param>
    public static PlanResult Compose(PlanCase plan, IReadOnlyList<OfferedPart> parts, PackageFigures given, IReadOnlyList<JudgedPackage> judged)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(judged);
        JudgedPackage[] possible = [.. judged.Where(one => one.Rejected.Count == 0)];
        JudgedPackage[] front = [.. PackageFront.Find([.. possible.Select(one => PackageFront.Compared(one.Package.Cost, one.Figures))]).Select(place => possible[place])];

        // What may be recommended is found among all that is sound: a sound package may be dominated by one that is not.
        JudgedPackage[] sound = [.. judged.Where(one => one.IsSound)];
        var choice = PlanChoice.Create(plan.Goals, given, [.. sound.Select(one => one.Figures)]);
        var share = plan.Use.TrackShare;
        var recommended = Best(sound, choice, share);
        var answered = Answered(front, recommended, choice, share);
        var (rejectedParts, rejectedPackages) = Rejections(parts, judged, front, recommended);
        return new()
        {
            Given = given,
            Front = front,
            Packages = answered,
            FurtherCount = front.Length - answered.Count(front.Contains),
            Recommended = recommended,
            Choice = choice,
            RejectedParts = rejectedParts,
            RejectedPackages = [.. rejectedPackages.Take(MostRejected)],
            FurtherRejectedCount = Math.Max(0, rejectedPackages.Count - MostRejected),
            ByBudget = Budgets(sound, choice, share),
            ByTrackShare = Tracks(sound, choice),
            Most = sound.MaxBy(one => choice.Delivered(one.Figures, share)),
            Rivals = RivalsOf(sound, recommended, choice, share),
        };
    }

    private static JudgedPackage? Best(JudgedPackage[] sound, PlanChoice choice, double trackShare) =>
        choice.Recommended([.. sound.Select(one => choice.Contend(one, trackShare))]) is >= 0 and var place ? sound[place] : null;

    /// <summary>
    /// What is recommended hangs on these: what delivers most of those that would be bought sets what is enough; the next in price that delivers enough, the cheaper ones that nearly do, and what
    /// more money would buy could take its place; and against the car without parts it must be worth its money. One to which a cheaper is preferred is among them only with that.
    /// </summary>
    private static List<JudgedPackage> RivalsOf(JudgedPackage[] sound, JudgedPackage? recommended, PlanChoice choice, double trackShare)
    {
        var list = new List<JudgedPackage>(OrderCertainty.MostRivals);
        if (recommended is null) return list;
        Contender[] contenders = [.. sound.Select(one => choice.Contend(one, trackShare))];
        var preferred = new int?[contenders.Length];
        var order = Enumerable.Range(0, sound.Length).Where(i => sound[i] != recommended).OrderByDescending(i => contenders[i].Delivered).ThenBy(i => contenders[i].Cost).ToArray();
        int[] bought = [.. order.Where(i => PlanChoice.PreferredTo(contenders, preferred, i) < 0)];
        Add(bought.Take(1));
        Add(order.Where(i => sound[i].Package.Count == 0));
        var enough = choice.Enough(bought.Select(i => contenders[i].Delivered).Append(choice.Delivered(recommended.Figures, trackShare)).Max());
        Add(bought.Where(i => contenders[i].Delivered >= enough).OrderBy(i => contenders[i].Cost).Take(1));
        Add(order.Take(1));
        Add(order.Where(i => sound[i].Package.Cost.Total <= recommended.Package.Cost.Total));
        Add(order);
        return list;

        void Add(IEnumerable<int> some)
        {
            foreach (var i in some)
            {
                if (list.Count < OrderCertainty.MostRivals && !list.Contains(sound[i]) && (preferred[i] is not (>= 0 and var by) || sound[by] == recommended || list.Contains(sound[by]))) list.Add(sound[i]);
            }
        }
    }

    /// <summary>The recommended, the cheapest, the ends of each outcome, then those furthest from all answered so far.</summary>
    private static List<JudgedPackage> Answered(JudgedPackage[] front, JudgedPackage? recommended, PlanChoice choice, double trackShare)
    {
        var list = new List<JudgedPackage>();
        Add(recommended);
        if (front.Length > 0)
        {
            Add(front.MinBy(one => one.Package.Cost.Total));
            Add(front.MaxBy(one => one.Figures.LimitG ?? 0));
            Add(front.MinBy(one => one.Figures.OffFlatDeg));
            Add(front.MinBy(one => one.Figures.RideFrequencyHz));
            Add(front.MinBy(one => one.Figures.OffDampingRange));
            Add(front.MinBy(one => one.Figures.NoiseSteps ?? PackageNoise.UntoldSteps));
            Add(front.MinBy(one => one.Figures.DryBias));
            Add(front.MinBy(one => one.Figures.InnerShoulderWearRatio ?? 0));
            Add(front.MaxBy(one => one.Figures.TreadLifeFactor ?? 0));
            Add(front.MaxBy(one => choice.Delivered(one.Figures, trackShare)));
        }

        var compared = front.Select(one => PackageFront.Compared(one.Package.Cost, one.Figures)).ToArray();
        while (list.Count < Math.Min(MostAnswered, front.Length) && Furthest() is { } next) list.Add(next);
        return [.. list.Take(1).Where(one => one == recommended), .. list.Where(one => one != recommended).OrderBy(one => one.Package.Cost.Total).ThenBy(one => one.Package.Parts)];

        void Add(JudgedPackage? one)
        {
            if (one is not null && !list.Contains(one)) list.Add(one);
        }

        JudgedPackage? Furthest()
        {
            var spans = Enumerable.Range(0, PackageFront.Count).Select(figure => Math.Max(1, compared.Max(one => one[figure]) - compared.Min(one => one[figure]))).ToArray();
            long[][] told = [.. list.Select(one => PackageFront.Compared(one.Package.Cost, one.Figures))];
            var (furthest, most) = ((JudgedPackage?)null, -1.0);
            for (var i = 0; i < front.Length; i++)
            {
                if (list.Contains(front[i])) continue;
                var nearest = told.Length == 0 ? 1 : told.Min(other => Enumerable.Range(0, PackageFront.Count).Sum(figure => Math.Pow((compared[i][figure] - other[figure]) / (double)spans[figure], 2)));
                if (nearest > most) (furthest, most) = (front[i], nearest);
            }

            return furthest;
        }
    }

    private static (List<RejectedPart> Parts, List<JudgedPackage> Packages) Rejections(
        IReadOnlyList<OfferedPart> parts, IReadOnlyList<JudgedPackage> judged, JudgedPackage[] front, JudgedPackage? recommended)
    {
        var (list, outright) = (new List<RejectedPart>(), 0UL);
        for (var i = 0; i < parts.Count; i++)
        {
            if (parts[i].GivesNothing is { } nothing)
            {
                list.Add(new(i, [new(RejectionCode.ChangesNothing, nothing)]));
                continue;
            }

            JudgedPackage[] with = [.. judged.Where(one => one.Package.Has(i)).OrderBy(one => one.Package.Count).ThenBy(one => one.Package.Cost.Total)];
            if (with.Length == 0)
            {
                if (parts[i].ChangeNumber >= 0) list.Add(new(i, []));
                else if (!Enumerable.Range(0, parts.Count).Any(other => other != i && PackageSearch.SharedHours(parts, other, i) > 0)) list.Add(new(i, [new(RejectionCode.ChangesNothing, $"'{parts[i].Id}' only renews what is there: buy it when the one fitted is worn.")]));
                continue;
            }

            if (Array.TrueForAll(with, one => one.Rejected.Count > 0))
            {
                list.Add(new(i, with[0].Rejected));
                outright |= 1UL << i;
            }
            else if (with[0] is { Package.Count: 1, Rejected.Count: 0 } alone && ChangesNothing(alone, judged))
            {
                list.Add(new(i, [new(RejectionCode.ChangesNothing, $"By itself '{parts[i].Id}' moves none of the figures a plan is judged by: what is fitted now serves as well.")]));
            }
            else if (recommended?.Package.Has(i) != true && !Array.Exists(front, one => one.Package.Has(i)))
            {
                list.Add(new(i, [new(RejectionCode.NothingBetter, $"'{parts[i].Id}' makes nothing better that the same money or less does not do without it, by itself or with other parts.")]));
            }
        }

        return (list, [.. judged.Where(one => one.Rejected.Count > 0 && (one.Package.Parts & outright) == 0).OrderBy(one => one.Package.Count).ThenBy(one => one.Package.Cost.Total)]);

        // Against the car without parts, whose camber is set as well.
        bool ChangesNothing(JudgedPackage alone, IReadOnlyList<JudgedPackage> all) =>
            all.FirstOrDefault(one => one.Package.Count == 0) is { Evaluated.Figures: { } without } &&
            PackageFront.Compared(default, alone.Figures).AsSpan().SequenceEqual(PackageFront.Compared(default, without)) &&
            alone.Figures.Front.HeightMm == without.Front.HeightMm && alone.Figures.Rear.HeightMm == without.Rear.HeightMm;
    }

    private static List<(double, JudgedPackage)> Budgets(JudgedPackage[] sound, PlanChoice choice, double trackShare)
    {
        var list = new List<(double, JudgedPackage)>();
        JudgedPackage[] ordered = [.. sound.OrderBy(one => one.Package.Cost.Total)];
        Contender[] contenders = [.. ordered.Select(one => choice.Contend(one, trackShare))];
        var preferred = new int?[contenders.Length];
        for (var end = 1; end <= ordered.Length; end++)
        {
            if (end < ordered.Length && contenders[end].Cost == contenders[end - 1].Cost) continue;
            var best = ordered[choice.Recommended(contenders.AsSpan(0, end), preferred.AsSpan(0, end))];
            if (list.Count == 0 || list[^1].Item2 != best) list.Add((contenders[end - 1].Cost, best));
        }

        return list;
    }

    private static List<(double, double, JudgedPackage)> Tracks(JudgedPackage[] sound, PlanChoice choice)
    {
        var list = new List<(double, double, JudgedPackage)>();
        for (var step = 0; step <= TrackSteps; step++)
        {
            var share = step / (double)TrackSteps;
            if (Best(sound, choice, share) is not { } best) return list;
            if (list.Count > 0 && list[^1].Item3 == best) list[^1] = (list[^1].Item1, share, best);
            else list.Add((share, share, best));
        }

        return list;
    }
}

/// <summary>A part that is in no package worth choosing.</summary>
/// <param name="Part">Its place in the list.</param>
/// <param name="Reasons">Why; empty where every package with it is over the budget.</param>
public sealed record RejectedPart(int Part, IReadOnlyList<PackageReason> Reasons);
