using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>A car as it stands on its springs: as given, or after changes. Method page: docs/methods/ride.</summary>
public sealed record StandingCar
{
    // Half the travel over which camber is looked at to find the swing arm, mm.
    private const double SwingStepMm = 5;
    private const double RoundingShare = 1e-9;

    /// <summary>As stated, with all that follows a change.</summary>
    public required Vehicle Stated { get; init; }

    /// <summary>As made ready for the model, at its stated ride height, with what is assumed.</summary>
    public required ResolvedHandlingCar Reading { get; init; }

    /// <summary>At the ride height its springs hold it.</summary>
    public required HandlingCar Stands { get; init; }

    /// <summary>How its front axle rides.</summary>
    public required RideAxle Front { get; init; }

    /// <summary>How its rear axle rides.</summary>
    public required RideAxle Rear { get; init; }

    /// <summary>How much higher the body stands over the ground than that of the car as given, mm; null where that is not known and is taken as nothing by its springs.</summary>
    public (double? Front, double? Rear) HeightMm { get; init; } = (0, 0);

    /// <summary>What followed the change, as it stands in an answer, its places within the change.</summary>
    public IReadOnlyList<Assumption> Followed { get; init; } = [];

    /// <summary>What of the change could not be told.</summary>
    public IReadOnlyList<ChangeGap> Unknown { get; init; } = [];

    /// <summary>How one axle rides.</summary>
    public RideAxle At(CarAxle at) => at == CarAxle.Front ? Front : Rear;

    /// <summary>The car as given; null where its points hold no wheel, its spring holds nothing up, or something it needs is missing.</summary>
    public static StandingCar? AsGiven(Vehicle stated, UnitSystem units = UnitSystem.Metric) =>
        HandlingCarBuilder.Build(stated, units) is { } reading ? Create(stated, reading, reading.Car, out _) : null;

    /// <summary>A car that stands as it is said to; null where a spring holds nothing up.</summary>
    /// <param name="stated">As stated.</param>
    /// <param name="reading">As made ready.</param>
    /// <param name="stands">As it stands.</param>
    /// <param name="fault">Why there is none; null where there is.</param>
    public static StandingCar? Create(Vehicle stated, ResolvedHandlingCar reading, HandlingCar stands, out StandingFault? fault)
    {
        ArgumentNullException.ThrowIfNull(stated);
        fault = null;
        if (RideAxleBuilder.Build(stands, CarAxle.Front, stated.Front) is not { } front) fault = new(CarAxle.Front, StandingReason.NoLeverage);
        else if (RideAxleBuilder.Build(stands, CarAxle.Rear, stated.Rear) is not { } rear) fault = new(CarAxle.Rear, StandingReason.NoLeverage);
        else return new() { Stated = stated, Reading = reading, Stands = stands, Front = front, Rear = rear };
        return null;
    }

    /// <summary>This car, the one as given, after a change; null where it cannot stand.</summary>
    /// <param name="merged">The car with the values of the change.</param>
    /// <param name="change">What the change says beside them.</param>
    /// <param name="fault">Why it cannot stand; null where it can.</param>
    /// <param name="units">The units of what is said about it.</param>
    public StandingCar? Changed(Vehicle merged, CarChange change, out StandingFault? fault, UnitSystem units = UnitSystem.Metric) =>
        Changed(merged, change, change, this, out fault, units);

    /// <summary>This car, the one as given, after several changes, of which only the last is not yet made.</summary>
    /// <param name="merged">The car with the values of all changes.</param>
    /// <param name="all">What all changes say beside them.</param>
    /// <param name="last">What the last one says.</param>
    /// <param name="previous">The car after the changes before it.</param>
    /// <param name="fault">Why it cannot stand; null where it can.</param>
    /// <param name="units">The units of what is said about it.</param>
    public StandingCar? Changed(Vehicle merged, CarChange all, CarChange last, StandingCar previous, out StandingFault? fault, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(merged);
        ArgumentNullException.ThrowIfNull(last);
        ArgumentNullException.ThrowIfNull(previous);
        var parts = new ChangedParts(this, merged, all);
        var stated = parts.Follow();
        fault = null;
        if (LoadContradiction.Find(stated) is [var heavy, ..])
        {
            fault = new(heavy.Place.StartsWith("/front", StringComparison.Ordinal) ? CarAxle.Front : CarAxle.Rear, StandingReason.NothingSprung);
            return null;
        }

        if (HandlingCarBuilder.Build(stated, units) is not { } reading)
        {
            fault = new(OpenHardpoints.Find(stated) is [CarAxle.Rear, ..] ? CarAxle.Rear : CarAxle.Front, StandingReason.PointsDoNotHold);
            return null;
        }

        var moved = Moved(reading.Car, stated, all);
        reading = reading with { Car = moved, Assumed = [.. reading.Assumed, .. Kept(merged, moved)] };
        var stands = reading.Car;
        (double? front, double? rear) = (0, 0);
        if (!TrySettle(previous, stated, last, CarAxle.Front, ref stands, ref front, out fault) || !TrySettle(previous, stated, last, CarAxle.Rear, ref stands, ref rear, out fault)) return null;
        return Create(stated, reading, stands, out fault) is { } car ? car with { HeightMm = (front, rear), Followed = parts.Followed, Unknown = parts.Unknown } : null;
    }

    /// <summary>What was assumed of the car as given and still is, since nobody gave it with the change; its range goes with its value.</summary>
    private List<AssumedInput> Kept(Vehicle merged, HandlingCar car)
    {
        var list = new List<AssumedInput>();
        if (merged.CentreOfGravityHeightMm is null && Assumed(HandlingInputs.CentreOfGravityHeight) is { } height) list.Add(height);
        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            if (merged.At(at).UnsprungMassKg is null && Assumed(HandlingInputs.For(at).UnsprungMass) is { } mass) list.Add(mass);
            if (merged.At(at).BarRollRateNmPerDeg is null && Assumed(HandlingInputs.For(at).BarRollRate) is { } bar) list.Add(bar);
        }

        return list;

        AssumedInput? Assumed(HandlingInput input) => Reading.AssumedFor(input) is { } one && input.Read(car) - one.Value is var more
            ? one with { Value = one.Value + more, Lower = one.Lower + more, Upper = one.Upper + more }
            : null;
    }

    /// <summary>What of the car's figures goes by where its wheels stand: leverage at their new place, the height their tyres give the body.</summary>
    private HandlingCar Moved(HandlingCar car, Vehicle stated, CarChange change)
    {
        var (given, moved) = (Reading.Car, car);
        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            var (outMm, raisedMm) = (ChangedParts.OutboardMm(Stated.At(at), stated.At(at)), car.At(at).LoadedRadiusMm - given.At(at).LoadedRadiusMm);
            if (outMm != 0 || raisedMm != 0) moved = moved.With(at, Levered(car.At(at), at, outMm, raisedMm, change));
        }

        if (change.States("/centreOfGravityHeightMm")) return moved;

        // The body goes up with its wheels; what the wheels weigh more is at their own height.
        var heightMm = car.CentreOfGravityHeightMm + (given.ShareFront * (car.Front.LoadedRadiusMm - given.Front.LoadedRadiusMm)) + ((1 - given.ShareFront) * (car.Rear.LoadedRadiusMm - given.Rear.LoadedRadiusMm));
        var (frontKg, rearKg) = (2 * (car.Front.UnsprungMassKg - given.Front.UnsprungMassKg), 2 * (car.Rear.UnsprungMassKg - given.Rear.UnsprungMassKg));
        if (change.States("/cornerWeightsKg") || change.States("/frontAxleLoadKg")) frontKg = 0;
        if (change.States("/cornerWeightsKg") || change.States("/rearAxleLoadKg")) rearKg = 0;
        var massKg = car.MassKg;
        heightMm = (((massKg - frontKg - rearKg) * heightMm) + (frontKg * car.Front.LoadedRadiusMm) + (rearKg * car.Rear.LoadedRadiusMm)) / massKg;
        return moved with { CentreOfGravityHeightMm = heightMm };
    }

    private HandlingAxle Levered(HandlingAxle axle, CarAxle at, double outMm, double raisedMm, CarChange change)
    {
        var place = CarChange.PlaceOf(at);
        var told = axle.Suspension.AtStated(axle.SetupOf(at, WheelSide.Left));
        var curvature = SwingCurvature(at);
        var further = 1 + (outMm * curvature);
        var half = Reading.Car.At(at).TrackMm / 2;

        // The instant centre stays with the body: its height over the new contact, along the longer arm, at the new half track.
        var rollCentreMm = ((axle.RollCentreHeightMm + (raisedMm * half * curvature)) / further) * ((half + outMm) / half);
        return axle with
        {
            MotionRatio = told?.SpringMotionRatio is not null || change.States(place + "/spring/motionRatio") ? axle.MotionRatio : axle.MotionRatio / further,
            DamperMotionRatio = told?.DamperMotionRatio is not null || change.States(place + "/damper/motionRatio") ? axle.DamperMotionRatio : axle.DamperMotionRatio / further,
            RollCentreHeightMm = told?.RollCentreHeightMm is not null || change.States(place + "/rollCentreHeightMm") ? axle.RollCentreHeightMm : rollCentreMm,
            SwingArmMm = axle.SwingArmMm + outMm,
            BumpTravelMm = change.States(place + "/bumpTravelMm") ? axle.BumpTravelMm : axle.BumpTravelMm * further,
            ReboundTravelMm = change.States(place + "/reboundTravelMm") ? axle.ReboundTravelMm : axle.ReboundTravelMm * further,
        };
    }

    /// <summary>One by the front-view swing arm, 1/mm: how camber changes over travel; positive = the instant centre is inboard.</summary>
    private double SwingCurvature(CarAxle at)
    {
        var axle = Reading.Car.At(at);
        if (axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Left)) is not { } motion) return 0;
        var (up, down) = (motion.Origin, motion.Origin);
        return motion.TryAt(SwingStepMm, 0, ref up, out var above) && motion.TryAt(-SwingStepMm, 0, ref down, out var below)
            ? -double.DegreesToRadians(above.CamberDeg - below.CamberDeg) / (2 * SwingStepMm)
            : 0;
    }

    /// <summary>Stands one axle at the height its springs, the tyres and the change give it.</summary>
    private bool TrySettle(StandingCar previous, Vehicle stated, CarChange change, CarAxle at, ref HandlingCar car, ref double? heightMm, out StandingFault? fault)
    {
        fault = null;
        var (before, after, place) = (previous.Stands.At(at), car.At(at), CarChange.PlaceOf(at));
        var rideMm = after.RideHeightChangeMm;
        var previousMm = at == CarAxle.Front ? previous.HeightMm.Front : previous.HeightMm.Rear;
        var isKnown = true;
        double? bySpringsMm = null;
        if (!change.States(place + "/rideHeightChangeMm"))
        {
            rideMm = before.RideHeightChangeMm;
            isKnown = previousMm is not null;
            if (change.KeepsRideHeight)
            {
                rideMm -= after.LoadedRadiusMm - before.LoadedRadiusMm;
            }
            else
            {
                if (!TryHeight(previous, stated, change, at, car, out bySpringsMm))
                {
                    fault = new(at, StandingReason.PointsDoNotHold);
                    return false;
                }

                isKnown &= bySpringsMm is not null;
                rideMm += bySpringsMm ?? 0;
            }
        }

        after = after with { RideHeightChangeMm = rideMm };
        car = car.With(at, after);
        if (bySpringsMm is > 0 and { } risenMm && after.DroopLeftMm < 0)
        {
            fault = new(at, StandingReason.BeyondDroop, risenMm, before.DroopLeftMm);
            return false;
        }

        if (after.Suspension.MotionOf(after.SetupOf(at, WheelSide.Left)) is null || after.Suspension.MotionOf(after.SetupOf(at, WheelSide.Right)) is null)
        {
            fault = new(at, bySpringsMm is { } movedMm && movedMm != 0 ? StandingReason.BeyondSuspension : StandingReason.PointsDoNotHold, bySpringsMm ?? 0);
            return false;
        }

        var given = Reading.Car.At(at);
        heightMm = isKnown ? rideMm - given.RideHeightChangeMm + after.LoadedRadiusMm - given.LoadedRadiusMm : null;
        return true;
    }

    /// <summary>How much higher its springs stand an axle than before the change, mm; null where lengths do not tell. False where the points do not close.</summary>
    private static bool TryHeight(StandingCar previous, Vehicle stated, CarChange change, CarAxle at, HandlingCar car, out double? heightMm)
    {
        var (springBefore, springAfter, before, after) = (previous.Stated.At(at).Spring, stated.At(at).Spring, previous.Stands.At(at), car.At(at));
        heightMm = 0;
        if (springBefore == springAfter && Math.Abs(before.SprungLoadN - after.SprungLoadN) <= RoundingShare * before.SprungLoadN) return true;
        heightMm = null;
        if (!TryForce(before, at, out var forceBefore, out var ratio) || !TryForce(after with { RideHeightChangeMm = before.RideHeightChangeMm }, at, out var forceAfter, out _)) return false;
        var place = CarChange.PlaceOf(at) + "/spring";
        heightMm = SpringHeight.HeightChangeMm(
            springBefore, forceBefore, springAfter, forceAfter, ratio, before.DroopLeftMm, change.States(place + "/installedLengthMm"), change.States(place + "/preloadMm"));
        return true;
    }

    private static bool TryForce(HandlingAxle axle, CarAxle at, out double forceN, out double motionRatio)
    {
        (forceN, motionRatio) = (0, 0);
        if (axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Left)) is not { } motion) return false;
        var state = motion.Origin;
        if (!motion.TryAt(0, 0, ref state, out var rest)) return false;
        motionRatio = rest.SpringMotionRatio;
        forceN = axle.SprungLoadN / 2 * rest.RisePerTravel / motionRatio;
        return true;
    }
}
