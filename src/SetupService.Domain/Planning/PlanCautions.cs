using SetupService.Domain.Answers;

namespace SetupService.Domain.Planning;

/// <summary>The cautions that go with a plan, by the parts on offer.</summary>
public static class PlanCautions
{
    internal static Caution Fasteners { get; } = new(
        "wheelFasteners", "Tighten wheel fasteners crosswise to the vehicle maker's torque with the wheels' own fasteners and seats, and check them again after the first short drive. Turn every wheel by hand over full travel and lock before driving.");

    private static readonly Caution Ratings = new("ratings", "Never use a tyre or wheel beyond its load or speed rating, whatever a plan says.");

    private static readonly Caution Brakes = new("brakes", "Brakes carry lives: leave pads and discs to somebody trained for it, bed them in as their maker says, and test them slowly before relying on them.");

    private static readonly Caution Steering = new(
        "steeringParts", "Arms, ball joints and what holds the wheel are tightened to the vehicle maker's torque, rubber bushes with the car standing at ride height. Use new self-locking nuts and bolts where the maker asks for them.");

    private static readonly Caution Alignment = new("alignment", "Have toe, camber and the steering wheel's middle set after any of these parts, with headlamps and driver aids where the car has them, and check the gaps around the wheels again.");

    private static readonly Caution StepByStep = new("oneChangeAtATime", "Springs, bars, camber and tyres move the balance of the car. Find its limit again slowly, and only where that is lawful and safe.");

    private static readonly Caution LocalLaw = new("localLaw", "Local law, and whoever is licensed to approve changes, decide what may be used on the road, and which work must be done by a licensed workshop; this plan is not an approval.");

    /// <summary>Every one there is but for springs under load.</summary>
    internal static IReadOnlyList<Caution> All { get; } = [Fasteners, Ratings, Brakes, Steering, Alignment, StepByStep, LocalLaw];

    /// <summary>The cautions.</summary>
    /// <param name="parts">The parts on offer.</param>
    public static IReadOnlyList<Caution> For(IReadOnlyList<OfferedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var list = new List<Caution>();
        if (Has(PartKind.Spring, PartKind.TopMount, PartKind.Damper, PartKind.BumpStop)) list.Add(CommonCautions.SpringsUnderLoad);
        if (Has(PartKind.Wheel, PartKind.Tyre, PartKind.Spacer)) list.AddRange([Fasteners, Ratings]);
        if (Has(PartKind.Pad, PartKind.Disc)) list.Add(Brakes);
        if (Has(PartKind.Arm, PartKind.BallJoint, PartKind.Bush, PartKind.EccentricBolt, PartKind.Shim, PartKind.TopMount)) list.Add(Steering);
        return [.. list, Alignment, StepByStep, LocalLaw];

        bool Has(params PartKind[] kinds) => parts.Any(part => kinds.Contains(part.Kind));
    }
}
