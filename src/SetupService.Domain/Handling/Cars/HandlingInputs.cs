using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>
/// The one list of the scalars the handling model takes: it serves the defaults, the assumptions of an answer, its sensitivities and
/// its interval.
/// </summary>
public static class HandlingInputs
{
    /// <summary>Height of the centre of gravity, mm.</summary>
    public static HandlingInput CentreOfGravityHeight { get; } = new(
        "/centreOfGravityHeightMm", "Mm", car => car.CentreOfGravityHeightMm, (car, value) => car with { CentreOfGravityHeightMm = value }, 0, 15);

    /// <summary>The front axle's.</summary>
    public static AxleInputList Front { get; } = new(CarAxle.Front);

    /// <summary>The rear axle's.</summary>
    public static AxleInputList Rear { get; } = new(CarAxle.Rear);

    /// <summary>Factor on the friction of all four tyres: road, rubber and weather in common.</summary>
    public static HandlingInput Grip { get; } = new("/tyreModel/gripFactor", "", car => car.GripFactor, (car, value) => car with { GripFactor = value }, 0.03, 0);

    /// <summary>The coefficients of the tyre, each with its range; no member of the vehicle gives them.</summary>
    public static IReadOnlyList<(HandlingInput Input, TypicalValue Typical, string Reason)> TyreSet { get; } =
    [
        Coefficient("nominalLoadFactor", "", set => set.NominalLoadFactor, (set, value) => set with { NominalLoadFactor = value }, TyreTypicals.NominalLoadFactor,
            "Value is a factor on the nominal loads of all tyres: what share of a size's standard load they are."),
        Coefficient("stiffnessPerDeg", "", set => set.StiffnessPerDeg, (set, value) => set with { StiffnessPerDeg = value }, TyreTypicals.StiffnessPerDeg,
            "Cornering stiffness over load at nominal load: slip angles and steer go by it. Give corneringStiffnessNPerDeg of both axles to replace it."),
        Coefficient("stiffestLoads", "", set => set.StiffestLoads, (set, value) => set with { StiffestLoads = value }, TyreTypicals.StiffestLoads,
            "The load, in nominal loads, at which a tyre's cornering stiffness is greatest."),
        Coefficient("loadSensitivity", "", set => set.LoadSensitivity, (set, value) => set with { LoadSensitivity = value }, TyreTypicals.LoadSensitivity,
            "Share of its friction a tyre loses per nominal load more: why load transfer costs an axle grip."),
        Coefficient("shape", "", set => set.Shape, (set, value) => set with { Shape = value }, TyreTypicals.Shape, "Shape of the side force towards its peak."),
        Coefficient("curvature", "", set => set.Curvature, (set, value) => set with { Curvature = value }, TyreTypicals.Curvature, "Curvature of the side force at its peak."),
        Coefficient("camberThrustPerDeg", "", set => set.CamberThrustPerDeg, (set, value) => set with { CamberThrustPerDeg = value }, TyreTypicals.CamberThrustPerDeg,
            "Side force of a leaning tyre without slip, over its load and per degree."),
        Coefficient("leanGainPerDeg", "", set => set.LeanGainPerDeg, (set, value) => set with { LeanGainPerDeg = value }, TyreTypicals.LeanGainPerDeg,
            "Share of its peak a tyre gains per degree of lean into the turn, near upright."),
        Coefficient("bestLeanDeg", "Deg", set => set.BestLeanDeg, (set, value) => set with { BestLeanDeg = value }, TyreTypicals.BestLeanDeg,
            "The lean into the turn at which a tyre grips best; nobody has published one for road tyres, so this is judgement."),
    ];

    /// <summary>Front axle's share of the braking force, percent.</summary>
    public static HandlingInput BrakeShareFront { get; } = new(
        "/brakeShareFrontPct", "Pct", car => car.BrakeShareFrontPct, (car, value) => car with { BrakeShareFrontPct = value }, 0, 2);

    /// <summary>Front axle's share of the driving force, percent; 0 where nobody said which axle is driven.</summary>
    public static HandlingInput DriveShareFront { get; } = new(
        "/driveShareFrontPct", "Pct", car => car.DriveShareFrontPct ?? 0, (car, value) => car with { DriveShareFrontPct = value }, 0, 0);

    /// <summary>The coefficients of the tyre that count only beside a longitudinal force.</summary>
    public static IReadOnlyList<(HandlingInput Input, TypicalValue Typical, string Reason)> LongitudinalTyreSet { get; } =
    [
        Coefficient("longitudinalFriction", "", set => set.LongitudinalFriction, (set, value) => set with { LongitudinalFriction = value }, TyreTypicals.LongitudinalFriction,
            "Peak friction along the wheel by that across it: how much braking or driving there is, and so what share of it is used."),
        Coefficient("longitudinalLoadSensitivity", "", set => set.LongitudinalLoadSensitivity, (set, value) => set with { LongitudinalLoadSensitivity = value }, TyreTypicals.LongitudinalLoadSensitivity,
            "Share of its longitudinal friction a tyre loses per nominal load more."),
        Coefficient("combinedExponent", "", set => set.CombinedExponent, (set, value) => set with { CombinedExponent = value }, TyreTypicals.CombinedExponent,
            "How braking or driving and side force share the grip: 2 is the friction ellipse, more leaves more side force."),
    ];

    /// <summary>What counts only beside braking or driving: brake and drive shares, and the tyre's coefficients for it.</summary>
    public static IReadOnlyList<HandlingInput> Longitudinal { get; } = [BrakeShareFront, DriveShareFront, .. LongitudinalTyreSet.Select(one => one.Input)];

    /// <summary>Gain of grip per degree of lean into the turn.</summary>
    public static HandlingInput LeanGain { get; } = TyreSet.Single(one => one.Input.Place == "/tyreModel/leanGainPerDeg").Input;

    /// <summary>The lean into the turn at which a tyre grips best, degrees.</summary>
    public static HandlingInput BestLean { get; } = TyreSet.Single(one => one.Input.Place == "/tyreModel/bestLeanDeg").Input;

    /// <summary>All, but for <see cref="Longitudinal"/>.</summary>
    public static IReadOnlyList<HandlingInput> All { get; } = [CentreOfGravityHeight, .. Front.All, .. Rear.All, Grip, .. TyreSet.Select(one => one.Input)];

    private static readonly HashSet<HandlingInput> OfGrip = new(
        [
            Grip, Front.TyreFriction, Rear.TyreFriction, Front.TyreNominalLoad, Rear.TyreNominalLoad,
            .. TyreSet.Select(one => one.Input), .. LongitudinalTyreSet.Select(one => one.Input),
        ],
        ReferenceEqualityComparer.Instance);

    /// <summary>Those of one axle.</summary>
    public static AxleInputList For(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;

    /// <summary>True for what only the tyres' grip goes by: nothing that is asked of a car at rest.</summary>
    public static bool IsOfGrip(HandlingInput input) => OfGrip.Contains(input);

    /// <summary>True for what only side forces on the wheels make count.</summary>
    public static bool IsOfSideForce(HandlingInput input) =>
        ReferenceEquals(input, Front.CamberCompliance) || ReferenceEquals(input, Rear.CamberCompliance) || ReferenceEquals(input, Front.ToeCompliance) || ReferenceEquals(input, Rear.ToeCompliance);

    /// <summary>True for what only a bump stop that is met goes by.</summary>
    public static bool IsOfStop(HandlingInput input) => IsOfStop(input, Front) || IsOfStop(input, Rear);

    private static bool IsOfStop(HandlingInput input, AxleInputList list) =>
        ReferenceEquals(input, list.StopRate) || ReferenceEquals(input, list.StopLength) || ReferenceEquals(input, list.DamperMotionRatio);

    /// <summary>True when an input can move how a car stands in a turn at all, so that nothing is solved for one that cannot.</summary>
    public static bool CanMatter(HandlingInput input, HandlingCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            var (list, axle) = (For(at), car.At(at));
            var tells = axle.Suspension.Tells;
            if (ReferenceEquals(input, list.SwingArm) && tells.HasFlag(SuspensionFigures.CamberOverTravel)) return false;
            if (ReferenceEquals(input, list.RollCentreHeight) && tells.HasFlag(SuspensionFigures.RollCentre)) return false;
            if (ReferenceEquals(input, list.MotionRatio) && tells.HasFlag(SuspensionFigures.SpringMotionRatio)) return false;
            if (ReferenceEquals(input, list.Inclination) && tells.HasFlag(SuspensionFigures.SteeringAxis)) return false;
            if (at == CarAxle.Rear && (ReferenceEquals(input, list.Caster) || ReferenceEquals(input, list.Inclination))) return false;
            if (axle.StopCurve.Count > 0 && (ReferenceEquals(input, list.StopRate) || ReferenceEquals(input, list.StopLength))) return false;
            if (axle.BumpTravelMm is null && (ReferenceEquals(input, list.StopRate) || ReferenceEquals(input, list.StopLength) || ReferenceEquals(input, list.DamperMotionRatio))) return false;
        }

        return true;
    }

    private static (HandlingInput, TypicalValue, string) Coefficient(
        string name, string unit, Func<TyreCoefficients, double> read, Func<TyreCoefficients, double, TyreCoefficients> put, TypicalValue typical, string reason) =>
        (new("/tyreModel/" + name, unit, car => read(car.TyreSet), (car, value) => car with { TyreSet = put(car.TyreSet, value) }, 0.1, 0), typical, reason);
}
