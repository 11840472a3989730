namespace SetupService.Domain.Suspension.Points;

/// <summary>What can contradict in a double wishbone's points.</summary>
internal static class WishboneContradictions
{
    public static void Add(DoubleWishbone wishbone, List<Contradiction> found)
    {
        JointContradictions.AddArm(found, "lower", wishbone.LowerArm);
        JointContradictions.AddArm(found, "upper", wishbone.UpperArm);
        JointContradictions.AddAxis(found, wishbone.LowerArm.Joint, "upperBallJoint", wishbone.UpperArm.Joint, wishbone.TieRod);
        JointContradictions.AddWheel(found, wishbone.WheelCentre, wishbone.LowerArm.Joint);
    }
}
