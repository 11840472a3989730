using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// Both limits of a car with what its inputs leave open, by joint draws: one draw moves every input at once, and both limits with it, so that friction, which they have
/// in common, leaves their margin alone. Method page: docs/methods/cornering.
/// </summary>
public sealed record LimitStudy
{
    // Which axle gives up first is said where at least this share of the draws agree.
    private const double Clear = 0.9;
    private const int Draws = 1024;
    private const double SlopeStepG = 0.02;

    private static readonly double[] Quantiles = [.. Enumerable.Range(0, Draws).Select(i => NormalDistribution.Quantile((i + 0.5) / Draws))];

    private LimitStudy(GripLimits limits, IReadOnlyList<LimitEffect> effects) => (Limits, Effects) = (limits, effects);

    /// <summary>The limits by the values used.</summary>
    public GripLimits Limits { get; }

    /// <summary>What each input does to them at both ends of its range, the largest effect on the margin first; empty where a limit is not known.</summary>
    public IReadOnlyList<LimitEffect> Effects { get; private init; }

    /// <summary>The front's limit, g; null where it is not known.</summary>
    public Uncertainty? Front { get; private init; }

    /// <summary>The rear's limit, g; null where it is not known.</summary>
    public Uncertainty? Rear { get; private init; }

    /// <summary>The rear's less the front's, g; null where either is not known.</summary>
    public Uncertainty? Margin { get; private init; }

    /// <summary>Probability that the front gives up first; null where a limit is not known.</summary>
    public double? FrontFirst { get; private init; }

    /// <summary>The axle that gives up first. Where only one axle has a limit within what the car stands, that is it.</summary>
    public FirstAxle First => FrontFirst switch
    {
        >= Clear => FirstAxle.Front,
        <= 1 - Clear => FirstAxle.Rear,
        null when Limits.Front.LimitG is not null => FirstAxle.Front,
        null when Limits.Rear.LimitG is not null => FirstAxle.Rear,
        _ => FirstAxle.Unclear,
    };

    /// <summary>Finds limits and ranges; null where the points do not close.</summary>
    /// <param name="reading">The car on its scale of grip, with what was assumed.</param>
    /// <param name="path">Radius or speed that stays.</param>
    /// <param name="guessG">Where to begin, g, above 0.</param>
    /// <param name="heldLateralG">What the car was measured to hold, g: then every draw is scaled to it, as the car is; null = not known.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    public static LimitStudy? Compute(ResolvedHandlingCar reading, in TurnPath path, double guessG, double? heldLateralG, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (CorneringSolver.Create(reading.Car, path.Turn, budget) is not { } solver) return null;
        var limits = GripLimits.Solve(solver, path, guessG);
        if (limits is not { Front.LimitG: { } frontG, Rear.LimitG: { } rearG } || Held.Create(solver, path, limits.LowerG!.Value) is not { } held) return new(limits, []);
        var effects = Effect(reading, path, solver, held, budget);
        return Drawn(new(limits, effects), frontG, rearG, heldLateralG);
    }

    // Whatever an input is, the car was measured to hold what it was: the scale of grip takes up what the lower limit moves.
    private static LimitEffect OnScale(LimitEffect effect, double frontG, double rearG)
    {
        return ReferenceEquals(effect.Input, HandlingInputs.Grip) ? effect : effect with { AtLower = Scaled(effect.AtLower), AtUpper = Scaled(effect.AtUpper) };

        (double Front, double Rear) Scaled((double Front, double Rear) change)
        {
            var scale = Math.Min(frontG, rearG) / Math.Min(frontG + change.Front, rearG + change.Rear);
            return (((frontG + change.Front) * scale) - frontG, ((rearG + change.Rear) * scale) - rearG);
        }
    }

    private static List<LimitEffect> Effect(ResolvedHandlingCar reading, in TurnPath path, CorneringSolver stand, in Held held, WorkBudget? budget)
    {
        var list = new List<LimitEffect>();
        foreach (var input in LongitudinalForces.AreAsked(reading.Car, path) ? [.. HandlingInputs.All, .. HandlingInputs.Longitudinal] : HandlingInputs.All)
        {
            if (!HandlingInputs.CanMatter(input, reading.Car)) continue;
            var value = input.Read(reading.Car);
            var error = Uncertainty.StandardErrorsAtNinetyPct * input.ErrorOf(value);
            var assumed = reading.AssumedFor(input);
            var (lower, upper) = assumed is null ? (value - error, value + error) : (assumed.Lower, assumed.Upper);
            var isOfGrip = HandlingInputs.IsOfGrip(input);
            var above = held.Change(input.Put(reading.Car, upper), isOfGrip, path, stand, budget);

            // The error of a value that was given is small: what it does is the same to either side.
            var below = assumed is null ? (-above.Front, -above.Rear) : held.Change(input.Put(reading.Car, lower), isOfGrip, path, stand, budget);
            if (above != (0, 0) || below != (0, 0)) list.Add(new(input, assumed is not null, lower, upper, below, above));
        }

        list.Sort((one, other) => other.OnMargin.CompareTo(one.OnMargin));
        return list;
    }

    private static LimitStudy Drawn(LimitStudy study, double frontG, double rearG, double? heldLateralG)
    {
        var (fronts, rears, margins) = (new double[Draws], new double[Draws], new double[Draws]);
        Array.Fill(fronts, frontG);
        Array.Fill(rears, rearG);
        Span<int> order = stackalloc int[Draws];
        for (var i = 0; i < Draws; i++) order[i] = i;
        var state = 0x9E3779B97F4A7C15UL;
        foreach (var effect in study.Effects)
        {
            if (heldLateralG is not null && ReferenceEquals(effect.Input, HandlingInputs.Grip)) continue;
            Add(effect, Shuffled(order, ref state), fronts, rears);
        }

        // A measured limit is the lower of both, whatever else is not known; what the measurement leaves open comes last.
        if (heldLateralG is not null && study.Effects.FirstOrDefault(one => ReferenceEquals(one.Input, HandlingInputs.Grip)) is { } grip)
        {
            for (var i = 0; i < Draws; i++)
            {
                var scale = Math.Min(frontG, rearG) / Math.Min(fronts[i], rears[i]);
                (fronts[i], rears[i]) = (fronts[i] * scale, rears[i] * scale);
            }

            Add(grip, Shuffled(order, ref state), fronts, rears);
        }

        var frontFirst = 0.0;
        for (var i = 0; i < Draws; i++)
        {
            margins[i] = rears[i] - fronts[i];
            frontFirst += margins[i] > 0 ? 1 : margins[i] == 0 ? 0.5 : 0;
        }

        var effects = heldLateralG is null ? study.Effects : (IReadOnlyList<LimitEffect>)[.. study.Effects.Select(one => OnScale(one, frontG, rearG))];
        return study with { Effects = effects, Front = Range(frontG, fronts), Rear = Range(rearG, rears), Margin = Range(rearG - frontG, margins), FrontFirst = frontFirst / Draws };
    }

    private static void Add(LimitEffect effect, ReadOnlySpan<int> order, double[] fronts, double[] rears)
    {
        for (var i = 0; i < order.Length; i++)
        {
            var ends = Quantiles[order[i]] / Uncertainty.StandardErrorsAtNinetyPct;
            var (front, rear) = ends < 0 ? effect.AtLower : effect.AtUpper;
            fronts[i] += Math.Abs(ends) * front;
            rears[i] += Math.Abs(ends) * rear;
        }
    }

    // Each input takes every quantile once, in an order of its own: a Latin hypercube. The order is the same in every answer (xorshift of a fixed seed).
    private static Span<int> Shuffled(Span<int> order, ref ulong state)
    {
        for (var i = order.Length - 1; i > 0; i--)
        {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            var other = (int)(state % (ulong)(i + 1));
            (order[i], order[other]) = (order[other], order[i]);
        }

        return order;
    }

    private static Uncertainty Range(double value, double[] draws)
    {
        Array.Sort(draws);
        const double tail = (100 - Uncertainty.NinetyPct) / 200;
        return new(value, Math.Min(value, draws[(int)(tail * Draws)]), Math.Max(value, draws[^(1 + (int)(tail * Draws))]), Uncertainty.NinetyPct);
    }

    /// <summary>What the tyres of both axles hold at the lower limit and how that falls on, so that another car's limits follow from one attitude.</summary>
    private readonly record struct Held(double AtG, double Front, double Rear, double FrontSlope, double RearSlope)
    {
        public static Held? Create(CorneringSolver solver, in TurnPath path, double atG)
        {
            var beforeG = atG - Math.Min(SlopeStepG, atG / 2);
            if (Solve(solver, path, beforeG) is not { } before || Solve(solver, path, atG) is not { } at) return null;
            return new(atG, at.Front, at.Rear, (at.Front - before.Front) / (atG - beforeG), (at.Rear - before.Rear) / (atG - beforeG));
        }

        /// <summary>Change of both limits of a car a little different, g; none where it has no equilibrium there.</summary>
        /// <param name="car">The other car.</param>
        /// <param name="isOfGrip">True where only its tyres differ: what moves the body is the force they give, which is the same, so that the attitude is kept.</param>
        /// <param name="path">Radius or speed.</param>
        /// <param name="stand">The car itself at the lower limit.</param>
        /// <param name="budget">Work allowed.</param>
        public (double Front, double Rear) Change(HandlingCar car, bool isOfGrip, in TurnPath path, CorneringSolver stand, WorkBudget? budget)
        {
            if (isOfGrip) return Moved(AtG / stand.GripUsed(CarAxle.Front, car.TyreOf(car.Front)), AtG / stand.GripUsed(CarAxle.Rear, car.TyreOf(car.Rear)));
            if (CorneringSolver.Create(car, path.Turn, budget) is not { } solver) return (0, 0);
            solver.StartFrom(stand);
            if (Solve(solver, path, AtG) is not { } other) return (0, 0);
            return Moved(other.Front, other.Rear);
        }

        private (double Front, double Rear) Moved(double front, double rear) => ((front - Front) / (1 - FrontSlope), (rear - Rear) / (1 - RearSlope));

        private static (double Front, double Rear)? Solve(CorneringSolver solver, in TurnPath path, double g) =>
            solver.Solve(path.At(g)) is null ? (g / solver.GripUsed(CarAxle.Front), g / solver.GripUsed(CarAxle.Rear)) : null;
    }
}

/// <summary>Which axle gives up first.</summary>
public enum FirstAxle
{
    /// <summary>The front: the car pushes wide.</summary>
    Front,

    /// <summary>The rear: the car turns in and may spin.</summary>
    Rear,

    /// <summary>What is known of the car does not tell.</summary>
    Unclear,
}

/// <summary>What an input does to the limits at both ends of its range (90 %), g.</summary>
/// <param name="Input">Which.</param>
/// <param name="IsAssumed">True where it was not given.</param>
/// <param name="Lower">Lower end of its range.</param>
/// <param name="Upper">Upper end.</param>
/// <param name="AtLower">Change of both limits at the lower end.</param>
/// <param name="AtUpper">Change of both limits at the upper end.</param>
public sealed record LimitEffect(HandlingInput Input, bool IsAssumed, double Lower, double Upper, (double Front, double Rear) AtLower, (double Front, double Rear) AtUpper)
{
    /// <summary>The larger change of the margin, g, without its sign.</summary>
    public double OnMargin => Math.Max(Math.Abs(AtLower.Rear - AtLower.Front), Math.Abs(AtUpper.Rear - AtUpper.Front));
}
