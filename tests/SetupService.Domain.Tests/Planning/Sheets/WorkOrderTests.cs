using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Planning;
using SetupService.Domain.Planning.Sheets;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Planning.Sheets;

/// <summary>The order of work of whole jobs; what a careful workshop does is common practice, no source.</summary>
public sealed class WorkOrderTests
{
    private static readonly PartKind[] Kinds = Enum.GetValues<PartKind>();

    private static readonly SuspensionLayout?[] Layouts = [null, SuspensionLayout.MacPhersonStrut, SuspensionLayout.DoubleWishbone, SuspensionLayout.TwistBeam];

    // A coilover change with top mounts, all three on one strip-down.
    [Fact]
    public void A_strut_with_three_new_parts_comes_out_once_and_its_spring_is_never_loosened_on_the_car()
    {
        var steps = WorkOrder.Write(Job(SuspensionLayout.MacPhersonStrut, [], (PartKind.TopMount, CarAxle.Front), (PartKind.Spring, CarAxle.Front), (PartKind.Damper, CarAxle.Front)), UnitSystem.Metric);

        var taken = Assert.Single(steps, step => step.Stage == WorkStage.Strip && step.Text.Contains("undo the strut", StringComparison.Ordinal));
        Assert.Equal(3, taken.Parts.Count);
        Assert.Contains("Leave the nut of the damper's rod alone", taken.Text, StringComparison.Ordinal);
        Assert.Contains("springsUnderLoad", taken.Cautions);
        Assert.Single(steps, step => step.Fasteners.Any(one => one.Fastener == Fastener.DamperRod));
        Assert.Equal([WorkStage.Prepare, WorkStage.Strip, WorkStage.Renew, WorkStage.Refit, WorkStage.SetUp, WorkStage.Check], steps.Select(step => step.Stage).Distinct());
        Assert.Equal(["topMount", "spring", "damper"], steps.Where(step => step.Stage == WorkStage.Renew && step.Parts.Count == 1).Select(step => step.Parts[0]));
    }

    [Fact]
    public void Rubber_is_tightened_at_ride_height_and_after_everything_is_back()
    {
        var steps = WorkOrder.Write(Job(SuspensionLayout.MacPhersonStrut, [], (PartKind.Arm, CarAxle.Front)), UnitSystem.Metric);

        var place = steps.ToList().FindIndex(step => step.Stage == WorkStage.AtRideHeight);
        Assert.Equal([Fastener.ArmToBody], steps[place].Fasteners.Select(one => one.Fastener));
        Assert.True(place > steps.ToList().FindLastIndex(step => step.Stage == WorkStage.Refit));
        Assert.DoesNotContain(steps, step => step.Stage != WorkStage.AtRideHeight && step.Fasteners.Any(one => one.Fastener == Fastener.ArmToBody));
    }

    // A strut's own bolts carry the wheel: they have their torque before the car comes down.
    [Fact]
    public void A_strut_is_tight_at_its_carrier_before_the_car_stands_on_its_wheels()
    {
        foreach (var layout in (SuspensionLayout?[])[SuspensionLayout.MacPhersonStrut, null])
        {
            var steps = WorkOrder.Write(Job(layout, [], (PartKind.Spring, CarAxle.Front)), UnitSystem.Metric);
            Assert.Contains(steps, step => step.Stage == WorkStage.Refit && step.Fasteners.Any(one => one.Fastener == Fastener.StrutToCarrier));
        }
    }

    [Fact]
    public void Wheels_and_tyres_alone_need_no_strip_down_and_no_alignment()
    {
        var steps = WorkOrder.Write(Job(null, [], (PartKind.Wheel, CarAxle.Front), (PartKind.Tyre, CarAxle.Front)) with { SetsAlignment = false }, UnitSystem.Metric);

        Assert.DoesNotContain(steps, step => step.Stage is WorkStage.Strip or WorkStage.AtRideHeight);
        Assert.DoesNotContain(steps, step => step.Text.Contains("alignment by its sheet", StringComparison.Ordinal));
        Assert.Equal(2, steps.Count(step => step.Fasteners.Any(one => one.Fastener == Fastener.WheelFasteners)));
    }

    [Fact]
    public void Pads_and_discs_of_an_axle_nobody_named_are_bedded_in_and_tried_slowly()
    {
        var steps = WorkOrder.Write(Job(null, [], (PartKind.Pad, null), (PartKind.Disc, null)) with { SetsAlignment = false }, UnitSystem.Metric);

        Assert.Contains(steps, step => step.Text.Contains("never by their hoses", StringComparison.Ordinal));
        Assert.Contains(steps, step => step.Stage == WorkStage.Refit && step.Text.Contains("until it is hard", StringComparison.Ordinal));
        Assert.Contains(steps, step => step.Stage == WorkStage.Check && step.Text.Contains("bed pads and discs in", StringComparison.Ordinal));
        Assert.Contains(steps, step => step.Text.Contains("the wheels that come off", StringComparison.Ordinal));
    }

    [Fact]
    public void Settings_alone_are_set_and_looked_at()
    {
        var steps = WorkOrder.Write(Job(null, []), UnitSystem.Metric);

        Assert.Equal([WorkStage.Prepare, WorkStage.SetUp, WorkStage.SetUp, WorkStage.Check], steps.Select(step => step.Stage));
        Assert.StartsWith("Nothing is fitted and nothing is set", Assert.Single(WorkOrder.Write(Job(null, []) with { SetsAlignment = false }, UnitSystem.Metric)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Torques_are_the_callers_own_and_that_of_the_axle_comes_first()
    {
        var steps = WorkOrder.Write(
            Job(SuspensionLayout.MacPhersonStrut, [new(Fastener.TopMountToBody, null, 30), new(Fastener.TopMountToBody, CarAxle.Front, 25), new(Fastener.WheelFasteners, CarAxle.Front, 110)], (PartKind.TopMount, CarAxle.Front)), UnitSystem.Metric);

        Assert.All(steps.SelectMany(step => step.Fasteners).Where(one => one.Fastener == Fastener.TopMountToBody), one => Assert.Equal(25, one.TorqueNm));
        Assert.Equal([(CarAxle.Front, 110), (CarAxle.Rear, null)], steps.First(step => step.Stage == WorkStage.Refit && step.Axle is null).Fasteners.Select(one => (one.Axle!.Value, (int?)one.TorqueNm)));
        Assert.All(steps.SelectMany(step => step.Fasteners).Where(one => one.Fastener is Fastener.StrutToCarrier or Fastener.DamperRod), one => Assert.Null(one.TorqueNm));
    }

    [Fact]
    public void What_is_done_alike_at_both_axles_is_one_step_with_every_fastener_of_both()
    {
        var steps = WorkOrder.Write(
            Job(null, [new(Fastener.TopMountToBody, CarAxle.Front, 25)], (PartKind.Spring, CarAxle.Front), (PartKind.Spring, CarAxle.Rear), (PartKind.Arm, CarAxle.Front)), UnitSystem.Metric);

        var refit = Assert.Single(steps, step => step.Stage == WorkStage.Refit && step.Fasteners.Any(one => one.Fastener == Fastener.TopMountToBody));
        Assert.Contains(new FastenerTorque(Fastener.BallJoint, CarAxle.Front, null), refit.Fasteners);
        Assert.Contains(new FastenerTorque(Fastener.TopMountToBody, CarAxle.Front, 25), refit.Fasteners);
        Assert.Contains(new FastenerTorque(Fastener.TopMountToBody, CarAxle.Rear, null), refit.Fasteners);
        Assert.Contains(new FastenerTorque(Fastener.StrutToCarrier, null, null), refit.Fasteners);
    }

    // Whatever is fitted where: every part is in a step that fits it, stages follow each other, cautions are there, no figure is invented.
    [Fact]
    public void Any_job_is_whole_in_order_and_invents_nothing()
    {
        Gen.Select(Gen.Int[0, Kinds.Length - 1].Array[1, 8], Gen.Int[0, 2].Array[8], Gen.Int[0, Layouts.Length - 1], Gen.Double[5, 300]).Sample((kinds, axles, layout, nm) =>
        {
            var job = Job(Layouts[layout], [new(Fastener.BallJoint, null, nm)], [.. kinds.Select((kind, i) => (Kinds[kind], axles[i] switch { 0 => CarAxle.Front, 1 => CarAxle.Rear, _ => (CarAxle?)null }))]);
            var steps = WorkOrder.Write(job, UnitSystem.Us);
            Assert.Equal(steps.Select(step => step.Stage).Order(), steps.Select(step => step.Stage));
            Assert.All(job.Parts, part => Assert.Contains(steps, step => step.Stage == WorkStage.Renew && step.Parts.Contains(part.Part.Id)));
            var cautions = SheetCautions.For(job, steps).Select(one => one.Code).ToList();
            Assert.Equal(cautions.Distinct(), cautions);
            Assert.All(steps.SelectMany(step => step.Cautions), code => Assert.Contains(code, cautions));
            foreach (var one in steps.SelectMany(step => step.Fasteners)) Assert.Equal(one.Fastener == Fastener.BallJoint ? nm : null, one.TorqueNm);
            Assert.NotEmpty(SheetCautions.Tools(job));
            foreach (var step in steps) Assert.Equal(step.Fasteners.Distinct().Count(), step.Fasteners.Count);
        }, iter: 500);
    }

    private static WorkCase Job(SuspensionLayout? layout, IReadOnlyList<StatedTorque> torques, params (PartKind Kind, CarAxle? Axle)[] parts) => new(
        [.. parts.Select((one, i) => new SheetPart(new OfferedPart { Id = char.ToLowerInvariant(one.Kind.ToString()[0]) + one.Kind.ToString()[1..] + (parts.Take(i).Any(other => other.Kind == one.Kind) ? $"{i}" : ""), Kind = one.Kind }, one.Axle is { } axle ? [axle] : []))],
        layout, layout, true, torques);
}
