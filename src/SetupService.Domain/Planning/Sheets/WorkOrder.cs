using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Planning.Sheets;

/// <summary>
/// The work order of a package: strip, renew, refit in the order of a workshop, each strip-down once, rubber bushes tightened at ride height, torques only as the caller gave them.
/// All of it common practice, no source. Method page: docs/methods/plan-sheets.
/// </summary>
public sealed class WorkOrder
{
    private static readonly CarAxle?[] Places = [CarAxle.Front, CarAxle.Rear, null];

    private readonly WorkCase _work;
    private readonly UnitSystem _units;
    private readonly List<WorkStep> _steps = [];

    private WorkOrder(WorkCase work, UnitSystem units) => (_work, _units) = (work, units);

    /// <summary>The steps of a job, in order; where nothing is done the one says so.</summary>
    /// <param name="work">The job.</param>
    /// <param name="units">Units of the sentences.</param>
    public static IReadOnlyList<WorkStep> Write(WorkCase work, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(work);
        var order = new WorkOrder(work, units);
        if (work.Lead is { } lead) order.Add(WorkStage.Prepare, null, lead, [], [], work.LeadCodes);
        if (work.IsAsItStands)
        {
            order.Add(WorkStage.Check, null, "Nothing is fitted and nothing is set: read the car as it stands, write it into these sheets, and leave it so.");
            if (work.HasTrackPressures) order.AtTheTrack();
            return order._steps;
        }

        order.Prepare();
        foreach (var axle in Places) order.Strip(axle);
        foreach (var axle in Places) order.Renew(axle);
        foreach (var axle in Places) order.Refit(axle);
        if (work.Parts.Count > 0) order.WheelsOn();
        order.AtRideHeight();
        order.SetUp();
        order.Check();
        return order.Merged();
    }

    // What is done alike at both axles is one step.
    private List<WorkStep> Merged()
    {
        var list = new List<WorkStep>();
        foreach (var step in _steps)
        {
            var same = step.Axle == CarAxle.Rear ? list.FindIndex(other => other.Axle == CarAxle.Front && other.Stage == step.Stage && other.Text == step.Text) : -1;
            if (same < 0) list.Add(step);
            else list[same] = list[same] with { Axle = null, Parts = [.. list[same].Parts.Union(step.Parts)], Fasteners = Union(list[same].Fasteners, step.Fasteners) };
        }

        return list;

        static FastenerTorque[] Union(IReadOnlyList<FastenerTorque> front, IReadOnlyList<FastenerTorque> rear) =>
        [
            .. front.Select(one => rear.Any(other => other.Fastener == one.Fastener && other.TorqueNm == one.TorqueNm) ? one with { Axle = null } : one),
            .. rear.Where(one => !front.Any(other => other.Fastener == one.Fastener && other.TorqueNm == one.TorqueNm)),
        ];
    }

    private void Prepare()
    {
        Add(WorkStage.Prepare, null, "Write down what the car has now, as found: alignment, ride heights, cold pressures, tread depths. What was not read before cannot be compared after.");
        if (_work.Parts.Count == 0) return;
        Add(WorkStage.Prepare, null, $"Lay out the new parts beside each other and compare them with the old ones: side, length, thread, seat. Have new self-locking nuts and single-use bolts ready where the vehicle's maker asks for them{(NeedsSeatCheck ? ", and fasteners whose thread and seat belong to the new wheels" : "")}.");
        Add(WorkStage.Prepare, null, $"Loosen the fasteners of {Where} a quarter turn on the ground, lift the car at its maker's points, set it on stands on firm level ground and push at it to see that it stands. Then take the wheels off.", [], [], ["supportedOnStands"]);
    }

    private void Strip(CarAxle? axle)
    {
        var (brake, unit, arm, bar, shim) = (HasBrake(axle), HasUnit(axle), HasArm(axle), Has(axle, PartKind.AntiRollBar), Has(axle, PartKind.Shim));
        if (brake || shim)
            Strip($"Take the brake calipers off and hang them up by a wire, never by their hoses.{(Has(axle, PartKind.Disc) || shim ? " Take the discs off." : "")}", [PartKind.Pad, PartKind.Disc, PartKind.Shim], "brakes");
        else if (unit || arm)
            Strip("Free brake hoses and sensor cables from struts and arms, so that nothing is pulled when the wheel carrier comes down.", [.. UnitKinds, .. ArmKinds]);
        if (bar) Strip("With both wheels of the axle hanging alike, undo links and clamps of the anti-roll bar and take it out.", [PartKind.AntiRollBar]);
        else if (unit || arm) Strip("Undo the links of the anti-roll bar on both sides where there is one.", [.. UnitKinds, .. ArmKinds]);
        if (unit) Strip(UnitText(), UnitKinds, CommonCode);
        if (arm) Strip("Mark where every eccentric and adjuster stands. Free ball joints with a separator, without blows on joint or carrier, support the wheel carrier, then take the arms out.", ArmKinds, "steeringParts");
        if (shim) Strip("Mark and undo the stub axle or hub carrier, and clean both faces.", [PartKind.Shim], "steeringParts");
        if (Has(axle, PartKind.EccentricBolt))
            Strip(unit && Layout(axle) is SuspensionLayout.MacPhersonStrut ? "Mark how the strut sits in the wheel carrier before it is parted." : "Support the wheel carrier, mark how it sits, and take out the bolt the eccentric one takes the place of.", [PartKind.EccentricBolt], "steeringParts");

        void Strip(string text, PartKind[] kinds, params string[] cautions) => Add(WorkStage.Strip, axle, text, Ids(axle, kinds), [], cautions);

        string UnitText() => Layout(axle) switch
        {
            SuspensionLayout.MacPhersonStrut => "Support the wheel carrier, undo the strut at the carrier, hold it and undo the top mount at the body last. Leave the nut of the damper's rod alone: it holds the spring.",
            SuspensionLayout.TwistBeam or SuspensionLayout.SemiTrailingArm => "Support the beam or arm with a jack, undo the dampers' lower ends and let it down slowly until the springs are loose; watch hoses and cables on the way.",
            _ when Has(axle, PartKind.TopMount) => "Support the wheel carrier, undo the lower end of the unit, hold it and undo the top mount at the body last. Leave the nut of the damper's rod alone: it holds the spring.",
            _ => "Take spring and damper out. Where they are one unit, support the wheel carrier, undo the lower end, then the body end, and leave the nut of the damper's rod alone: it holds the spring. Where the spring stands by itself, hold it in a compressor or let the arm down slowly on a jack until it is loose.",
        };
    }

    private void Renew(CarAxle? axle)
    {
        if (IsUnitOpened(axle))
        {
            Add(
                WorkStage.Renew, axle,
                $"{(Layout(axle) is SuspensionLayout.MacPhersonStrut || Has(axle, PartKind.TopMount) ? "Hold" : "Where spring and damper are one unit, hold")} the spring in a compressor made for it until both seats are free, only then undo the rod's nut. Exchange what the next steps name, put it together with the spring's ends against their stops and a new rod nut where the maker asks for one, and let the compressor go slowly. A workshop without the tool sends the unit to one that has it.",
                Ids(axle, UnitKinds), Torques(axle, Fastener.DamperRod), [CommonCode]);
        }

        foreach (var row in RenewTable.Rows)
        {
            var ids = Ids(axle, row.Kind);
            if (ids.Count > 0) Add(WorkStage.Renew, axle, $"{RenewTable.List(ids)}: {row.Text}", ids, [], row.Cautions);
        }
    }

    private void Refit(CarAxle? axle)
    {
        var fasteners = new List<Fastener>();
        if (HasUnit(axle)) fasteners.Add(Fastener.TopMountToBody);
        if (HasUnit(axle) && MayBeStrut(axle)) fasteners.Add(Fastener.StrutToCarrier);
        if (HasArm(axle)) fasteners.Add(Fastener.BallJoint);
        if (Has(axle, PartKind.Shim)) fasteners.Add(Fastener.StubAxle);
        if (Has(axle, PartKind.AntiRollBar)) fasteners.Add(Fastener.AntiRollBarClamps);
        if (Has(axle, PartKind.AntiRollBar) || HasUnit(axle) || HasArm(axle)) fasteners.Add(Fastener.AntiRollBarLinks);
        if (HasBrake(axle) || Has(axle, PartKind.Shim)) fasteners.Add(Fastener.BrakeCaliper);
        if (fasteners.Count == 0) return;
        var rubber = HasRubber(axle) ? " Bolts through rubber bushes stay just tight until the car stands at ride height." : "";
        var brake = HasBrake(axle) || Has(axle, PartKind.Shim) ? " Press the brake pedal until it is hard, before the car moves." : "";
        var bar = Has(axle, PartKind.AntiRollBar) ? " Both links of the bar hang without strain." : "";
        Add(
            WorkStage.Refit, axle, $"Put everything back in the opposite order, hoses and cables where they were, self-locking nuts new.{bar}{rubber}{brake} Mark each fastener once it has its torque.",
            Ids(axle, [.. UnitKinds, .. ArmKinds, PartKind.Shim, PartKind.AntiRollBar, PartKind.Pad, PartKind.Disc]), Torques(axle, [.. fasteners]),
            [.. HasUnit(axle) || HasArm(axle) || Has(axle, PartKind.AntiRollBar, PartKind.Shim) ? ["steeringParts"] : (string[])[], .. HasBrake(axle) ? ["brakes"] : (string[])[]]);
    }

    private void WheelsOn() => Add(
        WorkStage.Refit, null, "Clean the hub's and wheel's faces, put the wheels on and turn the fasteners in by hand. Tighten crosswise in two steps, the last with the car on the ground.", [], Torques(null, Fastener.WheelFasteners), ["wheelFasteners"]);

    private void AtRideHeight()
    {
        foreach (var axle in Places)
        {
            if (!HasRubber(axle)) continue;
            var fasteners = new List<Fastener>();
            if (HasArm(axle)) fasteners.Add(Fastener.ArmToBody);
            if (HasUnit(axle) && Layout(axle) is not SuspensionLayout.MacPhersonStrut) fasteners.Add(Fastener.DamperLowerEnd);
            Add(
                WorkStage.AtRideHeight, axle,
                "With the car on its wheels, or each wheel carrier jacked to the ride height on the sheet while the body stands on its stands, tighten the bolts that go through rubber bushes. Tightened hanging, the rubber is twisted for good, sets the ride height and tears. Spherical bearings do not mind.",
                Ids(axle, [.. ArmKinds, .. UnitKinds]), Torques(axle, [.. fasteners]), ["supportedOnStands"]);
        }
    }

    private void SetUp()
    {
        Add(WorkStage.SetUp, null, $"Roll the car back and forth and press it down at both ends, so that it settles. Set the cold pressures {(_work.HasTrackPressures ? "the sheet gives for the road: those for the track are set at the track" : "of the sheet")}.");
        if (!_work.SetsAlignment) return;
        foreach (var axle in Places)
        {
            if (HasAdjuster(axle))
                Add(WorkStage.SetUp, axle, "Set camber at the new parts, both sides alike, then tighten them and read again: an angle moves while its bolt is tightened.", Ids(axle, AdjusterKinds), Torques(axle, Adjusted(axle)), ["alignment"]);
        }

        Add(WorkStage.SetUp, null, "Set the alignment by its sheet, in the order it gives, and write down what is left. Then set headlamps, the steering-angle sensor and driver aids where the car has them.", [], [], ["alignment"]);

        Fastener[] Adjusted(CarAxle? axle) => [.. new[] { (PartKind.TopMount, Fastener.TopMountToBody), (PartKind.EccentricBolt, Fastener.EccentricBolt) }.Where(one => Has(axle, one.Item1)).Select(one => one.Item2)];
    }

    private void Check()
    {
        if (_work.Parts.Count == 0)
        {
            Add(WorkStage.Check, null, "Turn every wheel by hand from lock to lock with the new camber and look at the gaps inside and at the arch. Read the treads after the next sessions before any further step.", [], [], ["oneChangeAtATime"]);
            if (_work.HasTrackPressures) AtTheTrack();
            return;
        }

        Add(WorkStage.Check, null, "Before driving: turn every wheel by hand over its full travel and from lock to lock, and look that tyre, hoses and cables touch nothing. Go once more over every fastener that was undone.", [], [], ["wheelFasteners"]);
        if (_work.HasAnywhere(PartKind.Pad, PartKind.Disc))
            Add(WorkStage.Check, null, "Brakes: pedal hard, fluid at its mark, no leak. Try them at walking pace, then bed pads and discs in as their maker says; until then they hold less.", Ids([PartKind.Pad, PartKind.Disc]), [], ["brakes"]);
        Add(WorkStage.Check, null, Prose.Write(_units, $"First drive: {(_work.HasTrackPressures ? "at the pressures for the road, " : "")}slowly, on a quiet road, listening; stop at once at a knock, a pull or a vibration. Check the wheel fasteners and the others again after about {CheckAgain}, and after the first session."), [], Torques(null, Fastener.WheelFasteners), ["wheelFasteners"]);
        if (_work.HasTrackPressures) AtTheTrack();
        Add(WorkStage.Check, null, "Have the change approved, entered or inspected where local law asks for it, and keep the parts' papers with the car's.", [], [], ["localLaw"]);
    }

    private void AtTheTrack() => Add(
        WorkStage.Check, null, "At the track: set the cold pressures for the track before the first session, with the tyres cold. Before driving home, and before every drive on the road, set those for the road again.");

    // Fasteners settle within the first kilometres; common practice, no source.
    private string CheckAgain => _units == UnitSystem.Us ? "30 miles" : "50 km";

    private const string CommonCode = "springsUnderLoad";

    private static readonly PartKind[] UnitKinds = [PartKind.TopMount, PartKind.Spring, PartKind.Damper, PartKind.BumpStop];

    private static readonly PartKind[] ArmKinds = [PartKind.Bush, PartKind.BallJoint, PartKind.Arm];

    private static readonly PartKind[] AdjusterKinds = [PartKind.TopMount, PartKind.EccentricBolt];

    private bool Has(CarAxle? axle, params ReadOnlySpan<PartKind> kinds) => _work.Has(axle, kinds);

    private bool HasUnit(CarAxle? axle) => Has(axle, UnitKinds);

    private bool HasArm(CarAxle? axle) => Has(axle, ArmKinds);

    private bool HasBrake(CarAxle? axle) => Has(axle, PartKind.Pad, PartKind.Disc);

    private bool HasAdjuster(CarAxle? axle) => Has(axle, AdjusterKinds);

    private bool MayBeStrut(CarAxle? axle) => Layout(axle) is null or SuspensionLayout.MacPhersonStrut;

    // Of a strut nothing turns in rubber but its arm, which stays; elsewhere the damper's eye mostly does.
    private bool HasRubber(CarAxle? axle) => HasArm(axle) || (HasUnit(axle) && Layout(axle) is not SuspensionLayout.MacPhersonStrut);

    // A beam's or trailing arm's spring stands by itself, and its damper comes off whole.
    private bool IsUnitOpened(CarAxle? axle) => HasUnit(axle) && Layout(axle) is not (SuspensionLayout.TwistBeam or SuspensionLayout.SemiTrailingArm);

    private bool NeedsSeatCheck => _work.HasAnywhere(PartKind.Wheel, PartKind.Spacer);

    private SuspensionLayout? Layout(CarAxle? axle) => _work.Layout(axle);

    private string Where => (_work.Parts.Any(one => one.IsAt(CarAxle.Front)), _work.Parts.Any(one => one.IsAt(CarAxle.Rear)), _work.Parts.Any(one => one.IsAt(null))) switch
    {
        (true, false, false) => "the front wheels",
        (false, true, false) => "the rear wheels",
        (false, false, true) => "the wheels that come off",
        _ => "all four wheels",
    };

    private List<string> Ids(CarAxle? axle, params ReadOnlySpan<PartKind> kinds)
    {
        var list = new List<string>();
        foreach (var one in _work.Parts)
        {
            if (one.IsAt(axle) && kinds.Contains(one.Part.Kind)) list.Add(one.Part.Id);
        }

        return list;
    }

    private List<string> Ids(PartKind[] kinds) => [.. _work.Parts.Where(one => kinds.Contains(one.Part.Kind)).Select(one => one.Part.Id)];

    private FastenerTorque[] Torques(CarAxle? axle, params Fastener[] fasteners) => [.. fasteners.SelectMany(fastener => Torque(fastener, axle))];

    // A step at the whole car tells each axle's where they differ.
    private IEnumerable<FastenerTorque> Torque(Fastener fastener, CarAxle? axle)
    {
        if (axle is not null) return [new(fastener, axle, Stated(fastener, axle))];
        var (front, rear) = (Stated(fastener, CarAxle.Front), Stated(fastener, CarAxle.Rear));
        return front == rear ? [new(fastener, null, front)] : [new(fastener, CarAxle.Front, front), new(fastener, CarAxle.Rear, rear)];
    }

    // The one for this axle comes before the one for both.
    private double? Stated(Fastener fastener, CarAxle? axle) => _work.Torques
        .Where(one => one.Fastener == fastener && (one.Axle is null || one.Axle == axle))
        .OrderBy(one => one.Axle is null)
        .Select(one => (double?)one.TorqueNm)
        .FirstOrDefault();

    private void Add(WorkStage stage, CarAxle? axle, string text) => Add(stage, axle, text, [], [], []);

    private void Add(WorkStage stage, CarAxle? axle, string text, IReadOnlyList<string> parts, IReadOnlyList<FastenerTorque> fasteners, IReadOnlyList<string> cautions) =>
        _steps.Add(new(stage, axle, text, parts, fasteners, cautions));
}
