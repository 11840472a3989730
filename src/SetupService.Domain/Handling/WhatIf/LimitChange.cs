using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.WhatIf;

/// <summary>How far a change moves what each axle can hold, with what the tyres leave open.</summary>
/// <param name="Front">Change of the front's limit, g.</param>
/// <param name="Rear">Change of the rear's limit, g.</param>
/// <param name="Margin">Change of the rear's less the front's, g.</param>
public sealed record LimitChange(Uncertainty Front, Uncertainty Rear, Uncertainty Margin);

/// <summary>
/// What the inputs of the tyres do to both limits of one car, to first order from its attitude at the lower limit, and joint draws of them: what two cars' tyres have in common moves both
/// alike, so that only the difference of its effects widens the difference of the cars. Method page: docs/methods/what-if.
/// </summary>
internal sealed class LimitSpread
{
    private const int Draws = JointDraws.Count;
    private const double SlopeStepG = 0.02;

    private static readonly HandlingInput[] Common = [HandlingInputs.Grip, .. HandlingInputs.TyreSet.Select(one => one.Input)];
    private static readonly HandlingInput[] OfAxles = [HandlingInputs.Front.TyreNominalLoad, HandlingInputs.Front.TyreFriction, HandlingInputs.Rear.TyreNominalLoad, HandlingInputs.Rear.TyreFriction];

    private readonly double _frontG;
    private readonly double _rearG;
    private readonly LimitMoves[] _effects;

    private LimitSpread(double frontG, double rearG, LimitMoves[] effects) => (_frontG, _rearG, _effects) = (frontG, rearG, effects);

    /// <summary>The spread; null where a limit is not known.</summary>
    /// <param name="car">The car on its scale of grip, with what is assumed of it.</param>
    /// <param name="limits">Its limits.</param>
    /// <param name="solver">Its solver.</param>
    /// <param name="path">Radius or speed.</param>
    public static LimitSpread? Create(ResolvedHandlingCar car, in GripLimits limits, CorneringSolver solver, in TurnPath path)
    {
        if (limits is not { Front.LimitG: { } frontG, Rear.LimitG: { } rearG }) return null;
        var atG = Math.Min(frontG, rearG);
        var beforeG = atG - Math.Min(SlopeStepG, atG / 2);
        if (Held(solver, path, beforeG) is not { } before || Held(solver, path, atG) is not { } at) return null;
        var (frontSlope, rearSlope) = ((at.Front - before.Front) / (atG - beforeG), (at.Rear - before.Rear) / (atG - beforeG));
        var effects = new List<LimitMoves>(Common.Length + OfAxles.Length);
        foreach (var input in (IEnumerable<HandlingInput>)[.. Common, .. OfAxles])
        {
            var (lower, upper) = car.AssumedFor(input) is { } assumed ? (assumed.Lower, assumed.Upper) : (input.Read(car.Car), input.Read(car.Car));
            effects.Add(new(Moved(input.Put(car.Car, lower)), Moved(input.Put(car.Car, upper))));
        }

        return new(frontG, rearG, [.. effects]);

        (double Front, double Rear) Moved(HandlingCar other) => (
            ((atG / solver.GripUsed(CarAxle.Front, other.TyreOf(other.Front))) - at.Front) / (1 - frontSlope),
            ((atG / solver.GripUsed(CarAxle.Rear, other.TyreOf(other.Rear))) - at.Rear) / (1 - rearSlope));
    }

    /// <summary>How far the limits of another car are from this one's.</summary>
    /// <param name="other">The other car.</param>
    /// <param name="isOtherFront">True where its front tyres are others, of which nothing is in common with those before but what all tyres have.</param>
    /// <param name="isOtherRear">The same of its rear tyres.</param>
    /// <param name="heldLateralG">What this car was measured to hold, g; null where it was not.</param>
    public LimitChange To(LimitSpread other, bool isOtherFront, bool isOtherRear, double? heldLateralG)
    {
        Span<double> frontsBefore = stackalloc double[Draws], rearsBefore = stackalloc double[Draws];
        Span<double> fronts = stackalloc double[Draws], rears = stackalloc double[Draws], margins = stackalloc double[Draws];
        Fill(false, false, heldLateralG, frontsBefore, rearsBefore);
        other.Fill(isOtherFront, isOtherRear, heldLateralG, fronts, rears);
        for (var draw = 0; draw < Draws; draw++)
        {
            // Whatever else is not known, the car before holds what it was measured to hold.
            var scale = heldLateralG is null ? 1 : Math.Min(_frontG, _rearG) / Math.Min(frontsBefore[draw], rearsBefore[draw]);
            (fronts[draw], rears[draw]) = (scale * (fronts[draw] - frontsBefore[draw]), scale * (rears[draw] - rearsBefore[draw]));
            margins[draw] = rears[draw] - fronts[draw];
        }

        var (front, rear) = (other._frontG - _frontG, other._rearG - _rearG);
        return new(Range(front, fronts), Range(rear, rears), Range(rear - front, margins));
    }

    // What is another axle's tyres' own is drawn apart, by numbers beyond those of the inputs; a measured grip leaves its factor open to nothing.
    private void Fill(bool isOtherFront, bool isOtherRear, double? heldLateralG, Span<double> fronts, Span<double> rears)
    {
        Span<EffectOnBoth> drawn = stackalloc EffectOnBoth[_effects.Length];
        var count = 0;
        for (var i = heldLateralG is null ? 0 : 1; i < _effects.Length; i++)
        {
            var ofAxle = i - Common.Length;
            var isOther = ofAxle >= 0 && (ofAxle < 2 ? isOtherFront : isOtherRear);
            drawn[count++] = EffectOnBoth.Create(isOther ? i + OfAxles.Length : i, _effects[i].AtLower, _effects[i].AtUpper);
        }

        JointDraws.Fill(_frontG, _rearG, drawn[..count], fronts, rears);
    }

    private static (double Front, double Rear)? Held(CorneringSolver solver, in TurnPath path, double g) =>
        solver.Solve(path.At(g)) is null ? (g / solver.GripUsed(CarAxle.Front), g / solver.GripUsed(CarAxle.Rear)) : null;

    private static Uncertainty Range(double value, Span<double> draws)
    {
        var (lower, upper) = JointDraws.Ends(draws);
        return new(value, Math.Min(value, lower), Math.Max(value, upper), Uncertainty.NinetyPct);
    }

    private readonly record struct LimitMoves((double Front, double Rear) AtLower, (double Front, double Rear) AtUpper);
}
