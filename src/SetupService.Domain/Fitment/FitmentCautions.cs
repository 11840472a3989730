using SetupService.Domain.Answers;

namespace SetupService.Domain.Fitment;

/// <summary>The cautions that go with a fitment: what can hurt somebody who acts on it.</summary>
public static class FitmentCautions
{
    private static readonly Caution Fasteners = FastenersAfter("40 to 80 km");

    private static readonly Caution FastenersInMiles = FastenersAfter("25 to 50 miles");

    private static readonly Caution LocalLaw = new(
        "localLaw",
        "Whether these sizes, spacers and covers are allowed on the road is decided by local law and by whoever is licensed to approve changes; this answer is not an approval.");

    private static readonly Caution TryByHand = new(
        "tryByHand",
        "A calculated margin does not replace trying the wheel on: turn it by hand over the whole travel and lock before driving, and look again after the first drive.");

    private static readonly Caution Spacer = new(
        "spacer",
        "A spacer moves the load outboard and takes thread: it needs longer fasteners, a seat of its own on the hub, and is forbidden on the road in some places.");

    private static readonly Caution BeyondRating = new(
        "tyresBeyondRating",
        "A tyre or wheel under more load, speed or less pressure than it is rated for can burst or break without warning. Do not drive on this combination.");

    private static readonly Caution Separation = new(
        "wheelSeparation",
        "What holds or centres this wheel does not match the hub: it can come off while driving. Do not fit it.");

    private static readonly Caution Contact = new(
        "contact",
        "Something probably touches. A tyre or rim that touches brake, strut, hose or body can lock, be cut or lose its air.");

    private static readonly Caution RimMismatch = new(
        "rimMismatch",
        "A tyre on a rim it is not made for can leave its seat while being inflated or driven. It must not be mounted.");

    private static readonly Caution MixedConstruction = new(
        "mixedConstruction",
        "The tyre on the other axle is built differently (radial, diagonal or bias-belted). Such a mixture handles unpredictably and is forbidden on the road in many countries (French order of 24 Oct 1994, article 3).");

    /// <summary>The cautions for the outcome on the sheet, gravest first.</summary>
    public static IReadOnlyList<Caution> For(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units = UnitSystem.Metric)
    {
        var cautions = new List<Caution>(10);
        var failed = sheet.Failed;
        if (Any(failed, CheckId.LoadCapacity, CheckId.SpeedRating, CheckId.WheelLoadRating)) cautions.Add(BeyondRating);
        if (Any(failed, CheckId.RimDiameter, CheckId.RimWidth)) cautions.Add(RimMismatch);
        if (Any(failed, CheckId.BoltCircle, CheckId.CentreBore, CheckId.Fastener)) cautions.Add(Separation);
        if (Any(failed, CheckId.InboardClearance, CheckId.OutboardClearance, CheckId.RadialClearance, CheckId.FullLockClearance, CheckId.SpringSeatClearance, CheckId.BrakeClearance))
        {
            cautions.Add(Contact);
        }

        cautions.AddRange(GivenCautions.For(car, candidate.Tyre, units));
        if (car.OppositeTyre is { } other && other.Marking.Construction != candidate.Tyre.Marking.Construction) cautions.Add(MixedConstruction);
        if (candidate.Wheel.SpacerMm > 0) cautions.Add(Spacer);
        cautions.Add(units == UnitSystem.Us ? FastenersInMiles : Fasteners);
        cautions.Add(TryByHand);
        cautions.Add(LocalLaw);
        return cautions;
    }

    /// <summary>The cautions for figures that compare sizes without judging a car.</summary>
    public static IReadOnlyList<Caution> ForComparison { get; } = [LocalLaw];

    /// <summary>The cautions for offsets found without a wheel in hand.</summary>
    public static IReadOnlyList<Caution> ForWindow(FitmentContext car, Tyres.Tyre tyre, UnitSystem units) => [.. GivenCautions.For(car, tyre, units), TryByHand, LocalLaw];

    private static Caution FastenersAfter(string distance) => new(
        "wheelFasteners",
        $"Clean seats and faces, tighten crosswise with a calibrated wrench to the vehicle maker's torque, and check again after {distance} (trade guidance for commercial vehicles). Support the car on stands, never on the jack alone.");

    private static bool Any(CheckIdSet failed, params ReadOnlySpan<CheckId> ids)
    {
        foreach (var id in ids)
        {
            if (failed.Contains(id)) return true;
        }

        return false;
    }
}
