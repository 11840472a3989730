using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>One position of a sweep that was not reached.</summary>
/// <param name="TravelMm">Wheel travel asked for, mm.</param>
/// <param name="RackMm">Rack travel asked for, mm.</param>
/// <param name="Reason">Why.</param>
/// <param name="Gap">What lacks there.</param>
/// <param name="LastTravelMm">The furthest wheel travel on the way there, mm.</param>
/// <param name="LastRackMm">The furthest rack travel on the way there, mm.</param>
public readonly record struct UnreachablePosition(
    double TravelMm, double RackMm, UnreachableReason Reason, ClosureGap Gap, double LastTravelMm, double LastRackMm)
{
    /// <summary>How far beyond the readings, carried on for 20 mm, the travel lies, mm; 0 where that is not why.</summary>
    public double BeyondMm { get; init; }

    /// <summary>The lowest travel read, mm; of a corner known by readings.</summary>
    public double ReadFromMm { get; init; }

    /// <summary>The highest travel read, mm; of a corner known by readings.</summary>
    public double ReadToMm { get; init; }

    /// <summary>By how much the parts miss each other, or how far the travel lies beyond what was read, mm.</summary>
    public double ResidualMm => Reason == UnreachableReason.BeyondReadings ? BeyondMm : Gap.ResidualMm;

    /// <summary>A position not looked for to the end because the work allowed was spent.</summary>
    public static UnreachablePosition ForSpentWork(double travelMm, double rackMm, in SuspensionPose last) =>
        new(travelMm, rackMm, UnreachableReason.WorkSpent, default, last.TravelMm, last.RackMm);

    /// <summary>Looks why a position was not reached.</summary>
    public static UnreachablePosition From(CornerMechanism corner, double travelMm, double rackMm, in SuspensionPose last)
    {
        var gap = ClosureGap.Find(corner, travelMm, rackMm, last);
        return new(
            travelMm, rackMm, gap.IsNone ? UnreachableReason.DeadPoint : UnreachableReason.DoesNotClose, gap, last.TravelMm, last.RackMm);
    }
}
