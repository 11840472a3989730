using SetupService.Domain.Answers;

namespace SetupService.Domain.Planning.Sheets;

/// <summary>The cautions of a job and the tools it needs, by the parts that are fitted. Common practice, no source.</summary>
public static class SheetCautions
{
    private static readonly Caution SupportedOnStands = new(
        "supportedOnStands", "Nobody works under or reaches into a car that only a jack holds: stands under the maker's points, on firm level ground, wheels on the ground chocked.");

    private static readonly Caution Ratings = new("ratings", "Never use a tyre or wheel beyond its load or speed rating, and never below the pressure its load needs.");

    private static readonly Caution NewNuts = new("selfLockingNuts", "Self-locking nuts and bolts tightened by angle hold once: renew them wherever the vehicle's maker asks for it.");

    private static readonly Caution NoTorque = new(
        "makersTorque", "Where the sheet gives no torque it says 'maker's figure': look it up for this car and this part before tightening. A figure of another car is not one for this.");

    /// <summary>The cautions of a job, what can kill first.</summary>
    /// <param name="work">The job.</param>
    /// <param name="steps">Its steps.</param>
    public static IReadOnlyList<Caution> For(WorkCase work, IReadOnlyList<WorkStep> steps)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(steps);
        if (work.IsAsItStands) return [Ratings];
        var list = new List<Caution>();
        var ofParts = PlanCautions.For([.. work.Parts.Select(one => one.Part)]);
        if (work.Parts.Count > 0) list.Add(SupportedOnStands);
        list.AddRange(ofParts.Where(one => one.Code != Ratings.Code));
        list.Insert(work.Parts.Count > 0 ? 1 : 0, Ratings);
        list.AddRange(PlanCautions.All.Where(one => list.TrueForAll(other => other.Code != one.Code) && steps.Any(step => step.Cautions.Contains(one.Code))));
        if (steps.Any(step => step.Fasteners.Count > 0)) list.Add(NewNuts);
        if (steps.Any(step => step.Fasteners.Any(one => one.TorqueNm is null))) list.Add(NoTorque);
        return list;
    }

    /// <summary>What the job needs beside sockets and spanners.</summary>
    public static IReadOnlyList<string> Tools(WorkCase work)
    {
        ArgumentNullException.ThrowIfNull(work);
        var list = new List<string>();
        if (work.Parts.Count > 0) list.AddRange(["jack, stands and chocks rated for the car", "torque wrench for the figures of the makers"]);
        if (work.HasAnywhere(PartKind.TopMount, PartKind.Spring, PartKind.Damper, PartKind.BumpStop)) list.Add("spring compressor made for these springs, checked before use, or a workshop that has one");
        if (work.HasAnywhere(PartKind.BallJoint, PartKind.Arm, PartKind.Bush)) list.Add("ball joint separator");
        if (work.HasAnywhere(PartKind.Bush)) list.Add("press or pulling tool for the bushes");
        if (work.HasAnywhere(PartKind.Pad, PartKind.Disc)) list.Add("tool to push the brake pistons back, wire to hang the calipers up");
        if (work.HasAnywhere(PartKind.Disc)) list.Add("micrometer and dial gauge for thickness and run-out of the discs");
        if (work.HasAnywhere(PartKind.Tyre, PartKind.Wheel)) list.Add("tyre mounting and balancing machine, or a tyre shop");
        if (work.SetsAlignment) list.Add("level ground or alignment bench with camber and toe gauges for both axles");
        list.AddRange(["tape measure for the ride heights", "tyre pressure gauge", "tread depth gauge"]);
        return list;
    }
}
