using System.Numerics;
using System.Runtime.InteropServices;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering.Effects;
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
    private const int Draws = JointDraws.Count;

    // What moves a limit by less, g, is rounding.
    private const double LeastG = 1e-8;

    // What moves both limits by less than this, g, shows in no range.
    private const double LeastDrawnG = 1e-5;

    private LimitStudy(GripLimits limits, IReadOnlyList<LimitEffect> effects) => (Limits, Effects) = (limits, effects);

    /// <summary>The limits by the values used.</summary>
    public GripLimits Limits { get; }

    /// <summary>What each input does to them at both ends of its range, the largest effect on the margin first; empty where a limit is not known.</summary>
    public IReadOnlyList<LimitEffect> Effects { get; private init; }

    /// <summary>What one input does to them; null where it does nothing, or a limit is not known.</summary>
    public LimitEffect? EffectOf(HandlingInput input)
    {
        for (var i = 0; i < Effects.Count; i++)
        {
            if (ReferenceEquals(Effects[i].Input, input)) return Effects[i];
        }

        return null;
    }

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

    /// <summary>Finds limits and ranges.</summary>
    /// <param name="reading">The car on its scale of grip, with what was assumed.</param>
    /// <param name="solver">The car's solver for the path's direction.</param>
    /// <param name="path">Radius or speed that stays.</param>
    /// <param name="guessG">Where to begin, g, above 0.</param>
    /// <param name="heldLateralG">What the car was measured to hold, g: then every draw is scaled to it, as the car is; null = not known.</param>
    public static LimitStudy Compute(ResolvedHandlingCar reading, CorneringSolver solver, TurnPath path, double guessG, double? heldLateralG)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(solver);
        var search = new LimitSearch(solver, path, guessG);
        var (frontLimit, front) = AtLimit(ref search, solver, reading.Car, path, CarAxle.Front, null);
        var (rearLimit, rear) = AtLimit(ref search, solver, reading.Car, path, CarAxle.Rear, front);
        var limits = new GripLimits(frontLimit, rearLimit);
        if (front is null || rear is null) return new(limits, []);

        // Each axle's limit moves as the turn in which it is at it moves.
        var (frontG, rearG) = (front.Figures.LateralG, rear.Figures.LateralG);
        var inputs = LongitudinalForces.AreAsked(reading.Car, path) ? [.. HandlingInputs.All, .. HandlingInputs.Longitudinal] : HandlingInputs.All;
        var effects = new List<LimitEffect>(inputs.Count);
        var onOtherTyres = OnOtherTyres(inputs, reading);
        var inFront = OtherTyres.Moves(front, CarAxle.Front, reading.Car, onOtherTyres);
        var behind = OtherTyres.Moves(rear, CarAxle.Rear, reading.Car, onOtherTyres);
        var contacts = front.Contacts | rear.Contacts;
        var ofTyres = 0;
        for (var i = 0; i < inputs.Count; i++)
        {
            var input = inputs[i];
            var isOfGrip = KeepsAttitude(input);
            var (atLower, atUpper) = isOfGrip ? (ofTyres++, ofTyres++) : (0, 0);
            if (!HandlingInputs.CanMatter(input, reading.Car) || (HandlingInputs.IsOfStop(input) && !IsOnStop(contacts))) continue;
            var (lower, upper, isAssumed) = Ends(input, reading);
            (double Front, double Rear) above = isOfGrip ? (Told(inFront[atUpper]), Told(behind[atUpper])) : OfCar(input.Put(reading.Car, upper), !isAssumed);

            // The error of a value that was given is small: first order is enough, and the same to either side.
            var below = !isAssumed ? (-above.Front, -above.Rear)
                : isOfGrip ? (Told(inFront[atLower]), Told(behind[atLower]))
                : OfCar(input.Put(reading.Car, lower), false);
            if (above != (0, 0) || below != (0, 0)) effects.Add(new(i, input, isAssumed, lower, upper, below, above));
        }

        effects.Sort((one, other) => other.OnMargin.CompareTo(one.OnMargin));
        return Drawn(new(limits, effects), frontG, rearG, heldLateralG);

        (double Front, double Rear) OfCar(HandlingCar car, bool isFirstOrder)
        {
            if (front.With(car) is not { } other) return (0, 0);
            return isFirstOrder
                ? (From(front.Beside(other)?.LateralG, frontG), From(rear.Beside(other)?.LateralG, rearG))
                : (From(front.At(other)?.LateralG, frontG), From(rear.At(other)?.LateralG, rearG));
        }

        static bool IsOnStop(int contacts) => (contacts & CorneringSolver.BumpContacts) != 0;

        static double From(double? otherG, double limitG) => Told(otherG - limitG ?? 0);

        static double Told(double changeG) => Math.Abs(changeG) > LeastG ? changeG : 0;
    }

    // A tyre that is another but for its friction, by which the limits move far, is looked at in the attitudes of the car as it is.
    private static bool KeepsAttitude(HandlingInput input) => HandlingInputs.IsOfGrip(input) && !ReferenceEquals(input, HandlingInputs.Grip)
        && !ReferenceEquals(input, HandlingInputs.Front.TyreFriction) && !ReferenceEquals(input, HandlingInputs.Rear.TyreFriction);

    // The car at the lower and the upper end of each such input, one after the other.
    private static HandlingCar[] OnOtherTyres(IReadOnlyList<HandlingInput> inputs, ResolvedHandlingCar reading)
    {
        List<HandlingCar> cars = [];
        for (var i = 0; i < inputs.Count; i++)
        {
            if (!KeepsAttitude(inputs[i])) continue;
            var (lower, upper, _) = Ends(inputs[i], reading);
            cars.Add(inputs[i].Put(reading.Car, lower));
            cars.Add(inputs[i].Put(reading.Car, upper));
        }

        return [.. cars];
    }

    // An axle's limit and how it answers to inputs: by Newton's method from the other axle's or from near by, else, past a kink, from the turn solved to the end.
    private static (AxleLimit Limit, EquilibriumDerivatives? Derivatives) AtLimit(ref LimitSearch search, CorneringSolver solver, HandlingCar car, in TurnPath path, CarAxle at, EquilibriumDerivatives? like)
    {
        if (like?.ToLimitOf(at) is { } along) return (new(along.Figures.LateralG, null, along.Figures.LateralG), along);
        var limit = search.Find(at, LimitSearch.NewtonNear);
        if (limit.LimitG is null) return (limit, null);
        if (search.StandsAtG is { } nearG && EquilibriumDerivatives.AtLimit(solver, car, path, nearG, at, like) is { } near)
        {
            var nearLimitG = near.Figures.LateralG;
            return (new(nearLimitG, null, Math.Max(limit.StandsToG, nearLimitG)), near);
        }

        limit = search.Find(at);
        return (limit, limit.LimitG is { } limitG && solver.Solve(path.At(limitG)) is null ? EquilibriumDerivatives.Create(solver, car, path, limitG, at, like) : null);
    }

    private static (double Lower, double Upper, bool IsAssumed) Ends(HandlingInput input, ResolvedHandlingCar reading)
    {
        if (reading.AssumedFor(input) is { } assumed) return (assumed.Lower, assumed.Upper, true);
        var value = input.Read(reading.Car);
        var error = Uncertainty.StandardErrorsAtNinetyPct * input.ErrorOf(value);
        return (value - error, value + error, false);
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

    private static LimitStudy Drawn(LimitStudy study, double frontG, double rearG, double? heldLateralG)
    {
        Span<double> fronts = stackalloc double[Draws], rears = stackalloc double[Draws], margins = stackalloc double[Draws];
        Span<EffectOnBoth> drawn = stackalloc EffectOnBoth[study.Effects.Count];
        LimitEffect? measured = null;
        var count = 0;
        for (var i = 0; i < study.Effects.Count; i++)
        {
            var effect = study.Effects[i];
            if (heldLateralG is not null && ReferenceEquals(effect.Input, HandlingInputs.Grip)) measured = effect;
            else if (effect.Largest > LeastDrawnG) drawn[count++] = EffectOnBoth.Create(effect.Number, effect.AtLower, effect.AtUpper);
        }

        JointDraws.Fill(frontG, rearG, drawn[..count], fronts, rears);

        // A measured limit is the lower of both, whatever else is not known; what the measurement leaves open comes last.
        if (measured is not null)
        {
            ScaleToLower(fronts, rears, Math.Min(frontG, rearG));
            JointDraws.Add(measured.Number, measured.AtLower.Front, measured.AtUpper.Front, fronts);
            JointDraws.Add(measured.Number, measured.AtLower.Rear, measured.AtUpper.Rear, rears);
        }

        var (frontFirst, together) = (0, 0);
        for (var i = 0; i < Draws; i++)
        {
            var margin = margins[i] = rears[i] - fronts[i];
            frontFirst += margin > 0 ? 1 : 0;
            together += margin == 0 ? 1 : 0;
        }

        var effects = heldLateralG is null ? study.Effects : (IReadOnlyList<LimitEffect>)[.. study.Effects.Select(one => OnScale(one, frontG, rearG))];
        return study with { Effects = effects, Front = Range(frontG, fronts), Rear = Range(rearG, rears), Margin = Range(rearG - frontG, margins), FrontFirst = (frontFirst + (together / 2.0)) / Draws };
    }

    // Both limits of every draw by one factor, so that the lower of them is this.
    private static void ScaleToLower(Span<double> fronts, Span<double> rears, double lowerG)
    {
        var wideFronts = MemoryMarshal.Cast<double, Vector<double>>(fronts);
        var wideRears = MemoryMarshal.Cast<double, Vector<double>>(rears);
        for (var i = 0; i < wideFronts.Length; i++)
        {
            var scale = new Vector<double>(lowerG) / Vector.Min(wideFronts[i], wideRears[i]);
            (wideFronts[i], wideRears[i]) = (wideFronts[i] * scale, wideRears[i] * scale);
        }

        for (var i = wideFronts.Length * Vector<double>.Count; i < fronts.Length; i++)
        {
            var scale = lowerG / Math.Min(fronts[i], rears[i]);
            (fronts[i], rears[i]) = (fronts[i] * scale, rears[i] * scale);
        }
    }

    private static Uncertainty Range(double value, Span<double> draws)
    {
        var (lower, upper) = JointDraws.Ends(draws);
        return new(value, Math.Min(value, lower), Math.Max(value, upper), Uncertainty.NinetyPct);
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
/// <param name="Number">Its number among all inputs, the same whatever else is known of the car: it is drawn by that.</param>
/// <param name="Input">Which.</param>
/// <param name="IsAssumed">True where it was not given.</param>
/// <param name="Lower">Lower end of its range.</param>
/// <param name="Upper">Upper end.</param>
/// <param name="AtLower">Change of both limits at the lower end.</param>
/// <param name="AtUpper">Change of both limits at the upper end.</param>
public sealed record LimitEffect(int Number, HandlingInput Input, bool IsAssumed, double Lower, double Upper, (double Front, double Rear) AtLower, (double Front, double Rear) AtUpper)
{
    /// <summary>The largest change of a limit, g, without its sign.</summary>
    public double Largest => Math.Max(Math.Max(Math.Abs(AtLower.Front), Math.Abs(AtLower.Rear)), Math.Max(Math.Abs(AtUpper.Front), Math.Abs(AtUpper.Rear)));

    /// <summary>The larger change of the margin, g, without its sign.</summary>
    public double OnMargin => Math.Max(Math.Abs(AtLower.Rear - AtLower.Front), Math.Abs(AtUpper.Rear - AtUpper.Front));
}
