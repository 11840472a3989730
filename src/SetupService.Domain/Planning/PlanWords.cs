using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis.Advice;

namespace SetupService.Domain.Planning;

/// <summary>Says what a plan found, as a shop would tell its customer.</summary>
/// <param name="plan">The car and what is wanted of it.</param>
/// <param name="parts">The parts on offer.</param>
/// <param name="result">What was found.</param>
/// <param name="units">Units of the sentences.</param>
public sealed class PlanWords(PlanCase plan, IReadOnlyList<OfferedPart> parts, PlanResult result, UnitSystem units)
{
    // Differences told; smaller ones nobody notices.
    private const double LeastG = 0.005;
    private const double LeastLeanDeg = 0.2;
    private const double FlatDeg = 0.05;
    private const double LeastHz = 0.03;
    private const double LeastLife = 0.02;
    private const double LeastHeightMm = 3;
    private const double LeastDb = 0.5;
    private const double NearlyAll = 0.985;

    // Where the car's own adjusters give at least this share of what the recommended package delivers, they come first.
    private const double WorthTryingFirst = 0.4;

    /// <summary>At most five sentences: what to do, what it does, why this, how sure, what first. What the tyres of today ask for comes before all of it.</summary>
    /// <param name="certainty">How sure the order is; null = not known.</param>
    public string Summary(OrderCertainty? certainty)
    {
        if (result.Recommended is not { } best) return Led("None of the packages can be recommended: each has something against it that is listed with it. Leave the car as it is until that is settled.");
        if (LeadFor(best) is not null) return Led($"{Verdict(best)} {Reason(best)}");
        List<string> sentences = [Verdict(best), IsNothing(best) ? "" : Effect(best), Reason(best), Sure(best, certainty)];
        if (!IsNothing(best) || plan.First.IsAny) sentences.Add(FirstStep(best).Text);
        return string.Join(' ', sentences.Where(one => one.Length > 0));

        string Led(string text) => (result.Recommended is { } one ? LeadFor(one) : plan.First.Lead) is { } lead ? $"{lead} After that: {Sentences.Lower(text)}" : text;
    }

    /// <summary>What a package does, and what is against it; that it is not for the road before all else.</summary>
    public string Describe(JudgedPackage one)
    {
        ArgumentNullException.ThrowIfNull(one);
        var against = one.Doubts is [var doubt, ..] ? doubt : null;
        string[] texts = against switch
        {
            null => [Verdict(one), Effect(one)],
            { Code: RejectionCode.NotRoadLegal } => [$"Not recommended: {Sentences.Lower(against.Text)}", Verdict(one), Effect(one)],
            _ => [Verdict(one), Effect(one), $"Not recommended as it stands: {against.Text}"],
        };
        return string.Join(' ', texts.Where(text => text.Length > 0));
    }

    /// <summary>The first step of a package: what, and with which cambers. What the diagnosis of the same readings says first comes first, and nothing it forbids is set.</summary>
    public (string Text, IReadOnlyList<CamberSetting> Settings) FirstStep(JudgedPackage one)
    {
        ArgumentNullException.ThrowIfNull(one);
        if (LeadFor(one) is { } lead) return (lead + (IsNothing(one) ? "" : " Nothing is bought or set before that."), []);
        var (own, settings) = OwnStep(one, "First");
        var before = string.Join(' ', plan.First.Free.Concat(plan.First.OnCamber(settings, plan.Given.Stated).Texts));
        if (before.Length == 0) return (own, settings);
        return IsNothing(one) ? ($"{before} Change nothing else; read the treads again after the next sessions.", []) : ($"{before} {OwnStep(one, "Then").Text}", settings);
    }

    // What comes before anything of a package is bought or set; null where nothing does.
    private string? LeadFor(JudgedPackage one) => plan.First.Lead ?? (plan.First.OnCamber(OwnStep(one, "").Settings, plan.Given.Stated) is { IsAgainst: true, Texts: var texts } ? string.Join(' ', texts.Concat(plan.First.Free)) : null);

    private (string Text, IReadOnlyList<CamberSetting> Settings) OwnStep(JudgedPackage one, string word)
    {
        var own = result.Packages.Concat(result.Front).FirstOrDefault(other => other is { Package.Count: 0, IsSound: true });
        if (one.Package.Count > 0 && own is { Evaluated.Settings.Count: > 0 } && one == result.Recommended
            && result.Choice.Delivered(own.Figures, plan.Use.TrackShare) >= WorthTryingFirst * result.Choice.Delivered(one.Figures, plan.Use.TrackShare))
        {
            return ($"{word} set {Cambers(own.Evaluated.Settings, first: true)} with the car's own adjusters, have toe reset and read the treads after the next sessions: it costs an alignment, and shows whether the parts are still wanted.", own.Evaluated.Settings);
        }

        if (one.Package.Count == 0)
        {
            return one.Evaluated.Settings.Count == 0
                ? ("Change nothing; read the treads again after the next sessions.", [])
                : ($"{word} set {Cambers(one.Evaluated.Settings, first: true)}, have toe reset, check the gaps around the wheels and read depth or temperature across the treads before going on.", one.Evaluated.Settings);
        }

        // A bar, tyres of the same size or brakes leave the angles and the room around the wheels as they are.
        var moves = one.Package.Places().Any(place => OfferedPart.MovesAngles(parts[place].Kind));
        var then = one.Evaluated.Settings.Count > 0 ? $", set {Cambers(one.Evaluated.Settings, first: true)}, have toe reset and check the gaps around the wheels"
            : moves ? ", have the alignment checked and check the gaps around the wheels"
            : one.Fit?.Checked.Count > 0 ? " and check the gaps around the wheels"
            : " and find the car's limit again slowly, where that is lawful and safe";
        return ($"{word} {(one.Fit?.Checked.Count > 0 ? "try one wheel by hand over full travel and lock, then " : "")}have {(one.Package.Count == 1 ? $"{Names(one.Package)} fitted" : "the parts fitted together")}{then}; read the treads after the next sessions before any further step.", one.Evaluated.Settings);
    }

    private static string Sure(JudgedPackage best, OrderCertainty? certainty) => certainty switch
    {
        not { Rivals: > 0 } => "",
        { IsDrawn: false } => "Nothing that is assumed of the car moves this choice, so no cases were drawn.",
        { Share: >= NearlyAll } => $"With what is not known of {Drawn(best)} it stays first in nearly every case drawn.",
        _ => FormattableString.Invariant($"With what is not known of {Drawn(best)} it stays first in {Math.Round(100 * certainty.Share):0} % of the cases drawn."),
    };

    /// <summary>The names of a package's parts.</summary>
    public string Names(PartPackage package) => List([.. package.Places().Select(place => $"'{parts[place].Id}'")]);

    private static bool IsNothing(JudgedPackage one) => one is { Package.Count: 0, Evaluated.Settings.Count: 0 };

    private string Verdict(JudgedPackage one)
    {
        var settings = one.Evaluated.Settings;
        if (IsNothing(one)) return one != result.Recommended ? "The car as it is." : plan.First.IsAny ? "Buy nothing of the parts on offer." : "Buy nothing and leave the settings as they are.";
        var cost = one.Package.Cost;
        if (one.Package.Count == 0)
        {
            var alignment = cost.Alignment > 0 ? $"; the alignment costs {plan.Money(cost.Alignment)}" : "";
            return $"{(one == result.Recommended ? "Buy nothing for now" : "No parts")}: set {Cambers(settings, first: false)} with the car's own adjusters{alignment}.";
        }

        return $"Fit {Names(one.Package)} for {plan.Money(cost.Total)}{Covers(one)}{(settings.Count == 0 ? "" : $", and set {Cambers(settings, first: false)}")}.";
    }

    // What the sum covers beside the parts, and what has to be paid beside it.
    private string Covers(JudgedPackage one)
    {
        var (with, without) = (new List<string>(), new List<string>());
        if (one.Package.Cost.LabourHours > 0) (plan.Prices.LabourPerHour is null ? without : with).Add(FormattableString.Invariant($"{one.Package.Cost.LabourHours:0.#} h of labour"));
        if (NeedsAlignment(one)) (plan.Prices.Alignment is null ? without : with).Add("the alignment");
        return (with.Count == 0 ? "" : $" with {List([.. with])}") + (without.Count == 0 ? "" : $"{(with.Count == 0 ? "" : ",")} without {List([.. without])}");
    }

    private bool NeedsAlignment(JudgedPackage one) => one.Evaluated.Settings.Count > 0 || one.Package.Places().Any(place => OfferedPart.MovesAngles(parts[place].Kind));

    private string Effect(JudgedPackage one)
    {
        var (before, after) = (result.Given, one.Figures);
        var clauses = new List<string>();
        if (before.LimitG is { } was && after.LimitG is { } now)
        {
            clauses.Add(Math.Abs(now - was) >= LeastG && Math.Round(now, 2) != Math.Round(was, 2)
                ? FormattableString.Invariant($"over the bends the axle that gives up first holds {now:0.00} g on average instead of {was:0.00}")
                : FormattableString.Invariant($"what the car holds in the bends stays at about {was:0.00} g"));
        }

        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            var (leaned, leans) = (Math.Abs(before.At(at).OffFlatDeg), Math.Abs(after.At(at).OffFlatDeg));
            if (Math.Abs(leans - leaned) < LeastLeanDeg) continue;
            clauses.Add(leans < FlatDeg ? Prose.Write(units, $"the outer {Name(at)} tread stands flat, where it leaned {leaned:angle}") : Prose.Write(units, $"the outer {Name(at)} tread leans {leans:angle} off flat instead of {leaned:angle}"));
        }

        if (after.TreadLifeFactor is { } life && Math.Abs(life - 1) >= LeastLife)
            clauses.Add(Lasts(life, after.TreadLifeEffects, one.Evaluated.FirstStep));
        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            var (soft, hard) = (before.At(at).RideFrequencyHz, after.At(at).RideFrequencyHz);
            if (Math.Abs(hard - soft) >= LeastHz) clauses.Add(FormattableString.Invariant($"the {Name(at)} rides {(hard > soft ? "harder" : "softer")}, {hard:0.00} Hz instead of {soft:0.00}"));
        }

        string[] heights = [.. new[] { CarAxle.Front, CarAxle.Rear }.Select(at => Height(one, at))];
        clauses.AddRange(heights[0].Length > 0 && heights[0] == heights[1] ? [$"the car{heights[0]}"] : heights.Select((height, i) => height.Length == 0 ? "" : $"the {Name(i == 0 ? CarAxle.Front : CarAxle.Rear)}{height}").Where(text => text.Length > 0));
        if (after.DryBias > before.DryBias) clauses.Add("it holds less on a wet road");
        var noise = PackageNoise.From(parts, one.Package, plan.TyreNoiseDb);
        if (noise.Joint is PartJoint.Firm or PartJoint.Solid) clauses.Add(noise.Joint == PartJoint.Solid ? "its metal joints let the road be heard" : "its firmer joints let a little more of the road be heard");
        if (noise.TyreChangeDb is { } db && Math.Abs(db) >= LeastDb) clauses.Add(FormattableString.Invariant($"by their label the tyres are {Math.Abs(db):0.#} dB {(db > 0 ? "louder" : "quieter")} outside"));
        if (clauses.Count == 0) return "";
        var text = List([.. clauses]);
        return char.ToUpperInvariant(text[0]) + text[1..] + ".";
    }

    private string Height(JudgedPackage one, CarAxle at) => one.Figures.At(at).HeightMm is { } mm && Math.Abs(mm) >= LeastHeightMm
        ? Prose.Write(units, $" stands {Math.Abs(mm):room} {(mm > 0 ? "higher" : "lower")}{AsLong(one, at)}")
        : "";

    // A spring of another rate of which nobody said how long it is; one whose length at ride height the change states has that.
    private string AsLong(JudgedPackage one, CarAxle at) =>
        one.Evaluated.Car?.Stated.At(at).Spring is { FreeLengthMm: { } freeMm, InstalledLengthMm: null } after && plan.Given.Stated.At(at).Spring is var before
            && after.RateNPerMm != before.RateNPerMm && after.FreeLengthMm == before.FreeLengthMm && after.PreloadMm == before.PreloadMm
            ? Prose.Write(units, $", its new spring taken as long unloaded as the old one, {freeMm:gap}: give its own freeLengthMm")
            : "";

    /// <summary>Why the recommended package is recommended.</summary>
    public string Reason(JudgedPackage best)
    {
        var share = plan.Use.TrackShare;
        var most = result.Most ?? best;
        var (delivers, deliversMost) = (result.Choice.Delivered(best.Figures, share), result.Choice.Delivered(most.Figures, share));
        if (IsNothing(best))
        {
            return deliversMost > delivers && PlanChoice.IsWithinError(result.Choice.Contend(best, share), result.Choice.Contend(most, share))
                ? "What the parts on offer might do lies within what is not known of how these treads wear: read them again before buying." : "No sound package on offer gets you nearer to what you want.";
        }

        if (most == best || deliversMost <= 0) return "No sound package on offer does more for what you want.";
        var pct = Math.Round(100 * delivers / deliversMost);
        var more = most.Package.Cost.Total - best.Package.Cost.Total;
        return pct >= 100
            ? "No sound package on offer does more for what you want."
            : FormattableString.Invariant($"That is {pct:0} % of the most any sound package does for what you want") + (more > 0 ? $"; the one that does most costs {plan.Money(more)} more{Waits(best, most)}." : ".");
    }

    // Why a dearer one that does more is not bought now.
    private string Waits(JudgedPackage best, JudgedPackage most)
    {
        var share = plan.Use.TrackShare;
        var bought = result.Choice.Contend(best, share);
        var (later, isFirstStep) = ((JudgedPackage?)null, false);
        var delivers = bought.Delivered;
        foreach (var one in result.Rivals.Append(most))
        {
            var dearer = result.Choice.Contend(one, share);
            var isSame = PlanChoice.IsSameFirstStep(bought, dearer);
            if (dearer.Cost > bought.Cost && dearer.Delivered > delivers && (isSame || PlanChoice.IsWithinError(bought, dearer))) (later, isFirstStep, delivers) = (one, isSame, dearer.Delivered);
        }

        if (later is null) return "";
        var what = later == most ? "" : $"{Names(later.Package)} for {plan.Money(later.Package.Cost.Total - best.Package.Cost.Total)} more";
        return (isFirstStep, what.Length > 0) switch
        {
            (true, false) => ", and its first step is the same: the treads then tell whether the rest is wanted",
            (true, true) => $", and {what} takes the same first step: the treads then tell whether the rest is wanted",
            (false, false) => ", and what it does beyond this lies within what is not known of how these treads wear",
            (false, true) => $", and what {what} does beyond this lies within what is not known of how these treads wear",
        };
    }

    // With its 90 % range; where the camber goes on after the first step, what that alone gives.
    private static string Lasts(double life, IReadOnlyList<double> effects, PackageFigures? firstStep) =>
        $"the tyre that ends first lasts {Longer(life, effects)}{(firstStep is { TreadLifeFactor: { } first } ? $", after the first step {Longer(first, firstStep.TreadLifeEffects)}" : "")}";

    private static string Longer(double life, IReadOnlyList<double> effects)
    {
        var error = Uncertainty.StandardErrorsAtNinetyPct * Math.Sqrt(effects.Sum(effect => effect * effect));
        var (less, more) = (Math.Abs(life - 1) - error, Math.Abs(life - 1) + error);
        return $"{Pct(Math.Abs(life - 1))} % {(life > 1 ? "longer" : "less long")} ({Pct(less)} to {Pct(more)} %)";

        static string Pct(double share) => Math.Round(100 * share).ToString("0", System.Globalization.CultureInfo.InvariantCulture).Replace('-', '−');
    }

    private static string Drawn(JudgedPackage best) => best.Figures.TreadLifeEffects.Count > 0 ? "the car and of how its treads wear" : "the car";

    private string Cambers(IReadOnlyList<CamberSetting> settings, bool first)
    {
        return List([.. settings.Select(Camber)]);

        string Camber(CamberSetting one)
        {
            var to = first ? one.FirstDeg : one.ToDeg;
            return Prose.Write(units, $"the {Name(one.Axle)} camber to {to:angle} ({one.DescribeChange(to, units)})");
        }
    }

    private static string Name(CarAxle at) => at == CarAxle.Front ? "front" : "rear";

    private static string List(string[] items) => items.Length <= 1 ? items.FirstOrDefault() ?? "" : string.Join(", ", items[..^1]) + " and " + items[^1];
}
