using System.Globalization;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Planning.Sheets;

/// <summary>Says what stands on the sheets, as a workshop writes it.</summary>
public static class SheetWords
{
    // Told in hundredths.
    private const double LeastToeDeg = 0.005;

    private const int MostSentences = 5;

    private const double PoundFeetPerNm = 0.73756214927726;

    /// <summary>At most five sentences: what to fit, what to set, what is missing, how to know that it worked.</summary>
    /// <param name="work">The job.</param>
    /// <param name="steps">Its steps.</param>
    /// <param name="package">The package.</param>
    /// <param name="firstTry">The plan's advice to try the car's own adjusters before the parts; null where it gives none.</param>
    /// <param name="units">Units of the sentences.</param>
    public static string Summary(WorkCase work, IReadOnlyList<WorkStep> steps, JudgedPackage package, string? firstTry, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(steps);
        ArgumentNullException.ThrowIfNull(package);
        var list = new List<string>();
        if (work.Lead is not null) list.Add(work.Lead);
        else if (firstTry is not null) list.Add($"Before this work the plan says: {firstTry}");
        if (work.IsAsItStands) return work.Lead is { } lead ? $"{lead} Beside that nothing is to be fitted or set." : "Nothing is to be fitted or set: keep the car as it is and go on reading its tyres.";
        if (package.Doubts.FirstOrDefault(one => one.Code == RejectionCode.NotRoadLegal) is { } unlawful) list.Add($"Mind: {unlawful.Text}");
        list.Add(work.Parts.Count == 0 ? "No parts: the car's own adjusters do it." : $"Fit {RenewTable.List([.. work.Parts.Select(one => one.Part.Id)])}{Labour(package.Package.Cost)}.");
        if (package.Evaluated.Settings is { Count: > 0 } settings) list.Add($"Set {string.Join(" and ", settings.Select(Camber))}, then toe back to what it was.");
        else if (work.SetsAlignment) list.Add("Set the alignment back to what it was: the work moves it.");
        if (work.HasTrackPressures) list.Add("The pressures for the track are below the car's plate: the first drive, and every drive on the road, are on those for the road.");
        if (package.Doubts.FirstOrDefault(one => one.Code != RejectionCode.NotRoadLegal) is { } doubt) list.Add($"Mind: {doubt.Text}");
        var missing = steps.SelectMany(step => step.Fasteners).Where(one => one.TorqueNm is null).Select(one => one.Fastener).Distinct().Count();
        if (missing > 0) list.Add(missing == 1 ? "The torque of one kind of fastener was not given: look up the maker's figure first." : $"Torques of {missing} kinds of fastener were not given: look up the makers' figures first.");
        return string.Join(' ', list.Take(MostSentences));

        string Camber(CamberSetting one) => Prose.Write(units, $"the {CorneringWords.Name(one.Axle)} camber to {one.FirstDeg:angle} ({one.DescribeChange(one.FirstDeg, units)}{(one.FirstDeg == one.ToDeg ? "" : Prose.Write(units, $", a first step towards {one.ToDeg:angle}"))})");
    }

    /// <summary>Which fit was checked and drawn, and what nobody checked.</summary>
    /// <param name="package">The package.</param>
    public static string Fit(JudgedPackage package)
    {
        ArgumentNullException.ThrowIfNull(package);
        var isMoved = package.Evaluated.Settings.Count > 0 || package.Figures is not { Front.HeightMm: 0, Rear.HeightMm: 0 };
        return (package.Fit?.Checked ?? []) switch
        {
            [] => "Wheels and tyres stay, so no fit is checked or drawn." + (isMoved ? " Camber and ride height still move them: turn each by hand over full travel and lock before driving." : ""),
            [var one] => $"Checked and drawn is the {CorneringWords.Name(one.Axle)}; the other axle keeps its wheels and tyres." + Unchecked(),
            _ => "Both axles are checked and drawn." + Unchecked(),
        };

        string Unchecked() => package.Evaluated.Settings.Count > 0 ? " The camber that is set is not in the check: turn each wheel by hand over full travel and lock before driving." : "";
    }

    /// <summary>How the car is loaded and stands while it is measured.</summary>
    /// <param name="car">The car.</param>
    /// <param name="hasTrackPressures">True where the sheet has other pressures for the track than for the road.</param>
    /// <param name="units">Units of the sentence.</param>
    public static string Loaded(Vehicle car, bool hasTrackPressures, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(car);
        var loads = (StaticLoads.Compute(car, CarAxle.Front), StaticLoads.Compute(car, CarAxle.Rear)) is ({ } front, { } rear)
            ? Prose.Write(units, $"as its axle loads are stated, {front.SumN / Handling.Cars.HandlingCar.StandardGravity:kg} in front and {rear.SumN / Handling.Cars.HandlingCar.StandardGravity:kg} behind: the same fuel, driver and luggage, or weight in their place")
            : "as driven";
        return $"Load the car {loads}. Level ground, cold pressures of this sheet{(hasTrackPressures ? " for the road" : "")}, steering straight; rolled and pressed down before reading, not lowered from a jack.";
    }

    /// <summary>The order in which the alignment is set, of what is set.</summary>
    /// <param name="lines">The lines of the alignment sheet.</param>
    public static IReadOnlyList<string> Order(IReadOnlyList<AlignmentLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return
        [
            "pressures and ride heights first, left and right alike",
            IsWorkedOn(CarAxle.Rear, AlignmentAngle.Camber, AlignmentAngle.Toe) ? $"rear camber, then rear toe, {(AreAlike(CarAxle.Rear) ? "each wheel by itself, so that the rear heads straight" : "each wheel to its own line")}" : "the rear is read and left as it is",
            .. IsWorkedOn(CarAxle.Front, AlignmentAngle.Caster, AlignmentAngle.Camber) ? ["front caster where it is set, then front camber"] : (string[])[],
            IsWorkedOn(CarAxle.Front, AlignmentAngle.Toe) ? $"front toe last, steering wheel straight and locked, each wheel {(AreAlike(CarAxle.Front) ? "the same" : "to its own line")}" : "front toe is read last, steering wheel straight and locked",
            "tighten, roll, and read all of it again",
        ];

        bool IsWorkedOn(CarAxle at, params AlignmentAngle[] angles) => lines.Any(line => line.Axle == at && angles.Contains(line.Angle) && line.Task != AlignmentTask.Read);

        bool AreAlike(CarAxle at) => lines.Where(line => line.Axle == at && line.Angle == AlignmentAngle.Toe).Select(line => line.TargetDeg).ToArray() is not [{ } left, { } right] || Math.Abs(left - right) < LeastToeDeg;
    }

    /// <summary>An angle as it is set, toe in its other units too.</summary>
    public static string? Angle(AlignmentAngle angle, double? deg, UnitSystem units)
    {
        if (deg is not { } value) return null;
        if (angle is AlignmentAngle.Camber or AlignmentAngle.Caster) return Prose.Write(units, $"{value:angle}");
        return Prose.Write(units, $"{value:deg} ({Math.Round(ToeUnits.MinutesFromDegrees(value)).ToString("0;−0;0", CultureInfo.InvariantCulture)}′, {ToeUnits.MillimetresFromDegrees(value, AxleInputs.DefaultMeasuringDiameterMm):gap})");
    }

    /// <summary>A torque.</summary>
    public static string Torque(double? torqueNm, UnitSystem units) => torqueNm is not { } nm
        ? "maker's figure"
        : units == UnitSystem.Us ? FormattableString.Invariant($"{nm * PoundFeetPerNm:0} lb ft") : FormattableString.Invariant($"{nm:0.#} N m");

    /// <summary>A kind of fastener.</summary>
    public static string Name(Fastener fastener) => fastener switch
    {
        Fastener.WheelFasteners => "wheel fasteners",
        Fastener.TopMountToBody => "top mount to body",
        Fastener.DamperRod => "damper rod nut",
        Fastener.StrutToCarrier => "strut to wheel carrier",
        Fastener.DamperLowerEnd => "damper, lower end",
        Fastener.EccentricBolt => "eccentric bolt",
        Fastener.ArmToBody => "arm to body",
        Fastener.BallJoint => "ball joint",
        Fastener.AntiRollBarClamps => "anti-roll bar clamps",
        Fastener.AntiRollBarLinks => "anti-roll bar links",
        Fastener.BrakeCaliper => "brake caliper",
        _ => "stub axle or hub carrier",
    };

    /// <summary>A line of the alignment sheet.</summary>
    public static string Name(CarAxle axle, WheelSide? side, AlignmentAngle angle)
    {
        var name = angle switch { AlignmentAngle.Camber => "camber", AlignmentAngle.Caster => "caster", AlignmentAngle.Toe => "toe", _ => "total toe" };
        return $"{CorneringWords.Name(axle)} {name}{side switch { WheelSide.Left => " left", WheelSide.Right => " right", _ => "" }}";
    }

    private static string Labour(in PackageCost cost) => cost.LabourHours <= 0
        ? ""
        : FormattableString.Invariant($" ({cost.LabourHours:0.#} h of labour{(cost.SavedHours > 0 ? FormattableString.Invariant($", {cost.SavedHours:0.#} h saved by one strip-down for all") : "")})");
}
