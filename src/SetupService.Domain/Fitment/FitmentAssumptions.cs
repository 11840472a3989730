using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Suspension;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>The values a fitment answer used although nobody gave them.</summary>
public static class FitmentAssumptions
{
    private const string CommonPractice = "common practice, no source";
    private const string OurChoice = "our choice, no source";

    private static readonly Assumption SpeedometerExact = new(
        "/vehicle", null, "speedometer reads exactly now", CommonPractice,
        "The true speed after the change depends on what the speedometer shows too much today, which nobody measured.");

    private static readonly Assumption MinimumMargin = new(
        "/tolerances/minimumMarginMm", CheckSettings.DefaultMinimumMarginMm, null, CommonPractice,
        "Worst-case room below this makes a check of room a caution.");

    private static readonly Assumption ObliqueLock = new(
        "/vehicle/front/clearance/inboardAtFullLockMm", null, "a part up to 40° before or behind the tread", CommonPractice,
        "At lock nobody measured in which direction the nearest part stands: 64 % of an added radius, and of what the radius may grow, counts.");

    private const double SpeedWithoutAdditionKmh = 160; // up to here no symbol has an addition for speed (the handbook's p. 290)

    private static readonly Assumption NoSpeedAddition = new(
        "/candidate/tyre/pressureKpa", null, "no addition for sustained speed", "the handbook's sentence on these symbols is cut off in the copy read",
        "The pressure named carries the load; at sustained speed such a tyre may want more, which only its maker or the car's papers tell.");

    private const double TravelBeyondReadingsMm = 20;

    private static readonly AxleAssumptions Front = new("/vehicle/front");
    private static readonly AxleAssumptions Rear = new("/vehicle/rear");

    private static readonly Assumption NoSpacer = new(
        "/tyre", null, "no spacer", CommonPractice, "The offsets are for wheels straight on the hub; a spacer shifts them by its thickness.");

    private static readonly Assumption NoProtector = new(
        "/candidate/tyre/rimProtectorMm", 0, null, CommonPractice,
        "A rim protector stands out beyond the section width; measure it where the tyre has one.");

    private static readonly Assumption NoProtectorInWindow = NoProtector with { Input = "/tyre/rimProtectorMm" };

    private static readonly Assumption ThroughSpacer = new(
        "/candidate/wheel/spacerHasOwnFasteners", null, "long fasteners through the spacer", CommonPractice,
        "A spacer bolted to the hub by itself, with fasteners of its own for the wheel, is judged otherwise.");

    /// <summary>What a check of a candidate assumed.</summary>
    public static IReadOnlyList<Assumption> ForCheck(FitmentContext car, in Fitting candidate, UnitSystem units = UnitSystem.Metric)
    {
        var list = new List<Assumption>(16);
        if (candidate.Wheel.StampedFlange is null) list.Add(Flange("/candidate/wheel", units));
        AddForCar(car, list, units);
        if (candidate.Tyre.RimProtectorMm is null) list.Add(NoProtector);
        if (candidate.Wheel is { SpacerMm: > 0, SpacerHasOwnFasteners: null }) list.Add(ThroughSpacer);
        AddForRims(candidate.Tyre.Marking, "/candidate/tyre/marking", list);
        AddForBrake(car, candidate, list);
        AddForLoad(car, candidate, list, units);
        return list;
    }

    /// <summary>What a window of offsets assumed.</summary>
    public static IReadOnlyList<Assumption> ForWindow(FitmentContext car, Tyre tyre, UnitSystem units = UnitSystem.Metric)
    {
        var list = new List<Assumption>(12) { Flange("/rimWidthsIn", units), NoSpacer };
        AddForCar(car, list, units);
        if (tyre.RimProtectorMm is null) list.Add(NoProtectorInWindow);
        AddForRims(tyre.Marking, "/tyre/marking", list);
        return list;
    }

    /// <summary>What a comparison of two fittings assumed.</summary>
    public static IReadOnlyList<Assumption> ForComparison(UnitSystem units) => [Flange("/candidate/wheel", units), SpeedometerExact with { Input = "/current" }];

    private static void AddForCar(FitmentContext car, List<Assumption> list, UnitSystem units)
    {
        var axle = car.Position == CarAxle.Front ? Front : Rear;
        if (car.Settings.MinimumMarginMm is null) list.Add(MinimumMargin);
        if (car.Axle.Clearance.MeasuredAt is null) list.Add(axle.MeasuredAt);
        if (car.Axle.Clearance.UncertaintyMm is null) list.Add(axle.Uncertainty);
        if (car.HubBoltCircle is not null && car.Axle.Hub.BoltCircle is null) list.Add(axle.BoltCircle);
        if (car.Position == CarAxle.Front && car.Axle.Clearance.InboardAtFullLockMm is not null) list.Add(ObliqueLock);
        if (car.Applicable.Contains(CheckId.SpringSeatClearance) && car.Axle.Clearance.SpringSeatMm is not null) list.Add(axle.ObliqueSeat);
        if (car.Axle is { Tyre.RimProtectorMm: null, Tyre: not null }) list.Add(axle.PresentProtector);
        if (car.Axle.RideHeightChangeMm is not (null or 0)) list.Add(axle.RideHeight);
        if (PointErrorUse.Describe(car) is { } points) list.Add(points);
        AddForTravel(car, axle, list, units);
        AddForCamber(car, list);
    }

    private static void AddForTravel(FitmentContext car, AxleAssumptions axle, List<Assumption> list, UnitSystem units)
    {
        if (car.Travel.Upward is not { } upward) return;
        if (upward.IsLengthAssumed) list.Add(axle.StopLength);
        if (upward.IsShareAssumed) list.Add(axle.CompressedLength(upward));
        if (upward.IsRatioAssumed) list.Add(axle.StopRatio(upward, car.Axle.Damper.MotionRatio is not null));
        if (car.Travel.Path is not { Missing: UnknownReason.Computed } path) return;
        if (path.IsExtrapolated) list.Add(Sent(axle.CamberCurve(units)));
        if (!path.IsSidewaysKnown) list.Add(Sent(axle.StraightUp(units)));
        if (car.Axle.Left.CamberDeg is null && car.Axle.Suspension.ReadCamberDeg is null) list.Add(axle.StaticAngle("camberDeg", units));
        if (path.IsSidewaysKnown && car.Axle.Left.ToeDeg is null) list.Add(axle.StaticAngle("toeDeg", units));
        if (path.IsOfBothMotions) list.Add(axle.BeamMotion);
        if (car.Axle.Clearance.InboardMm is null) return;
        switch (car.Axle.Clearance.InboardTo)
        {
            case null: list.Add(axle.InboardTo); break;
            case InboardNeighbour.Arm: list.Add(axle.ArmShare); break;
            case InboardNeighbour.Strut when car.Axle.Suspension.Layout is not (null or SuspensionLayout.MacPhersonStrut or SuspensionLayout.Measured): list.Add(axle.StrutShare); break;
            case InboardNeighbour.Strut: return;
            default: break;
        }

        if (car.Axle.Clearance.InboardHeightMm is null) list.Add(axle.InboardHeight);
        else if (car.LoadedRadius is { IsEstimated: true } radius) list.Add(axle.LoadedRadius(radius.Mm));

        // Readings that came as a table stand under another name.
        Assumption Sent(Assumption one) => one with { Input = one.Input.Replace("/suspension/readings", car.Axle.Suspension.ReadingsPointer, StringComparison.Ordinal) };
    }

    private static Assumption Flange(string input, UnitSystem units) => new(
        input, null, "J flange", "JIS D 4218:2021 Table 3 (ISO 4000-2:2013)",
        Prose.Write(units, $"The wheel's edges are its rim width and two flanges of at least {11.0:mm}; a thicker flange stands further out."));

    private static void AddForRims(TyreMarking marking, string input, List<Assumption> list)
    {
        if (!marking.HasDimensions) return;
        var permitted = marking.PermittedRimWidth;
        list.Add(new Assumption(
            input, null, Prose.Write(UnitSystem.Metric, $"rims from {permitted.MinimumIn:in} to {permitted.MaximumIn:in}"), permitted.Source,
            permitted.IsListed
                ? "The rims a tyre may be fitted to are its maker's to state; these are recalled for the size."
                : "The rims a tyre may be fitted to are its maker's to state; these follow from a pattern over sizes."));
    }

    private static void AddForBrake(FitmentContext car, in Fitting candidate, List<Assumption> list)
    {
        if (car.Axle.Hub.CaliperProfile.Count == 0 || candidate.Wheel.InnerProfile.Count == 0) return;
        var profile = (car.Position == CarAxle.Front ? "/vehicle/front" : "/vehicle/rear") + "/hub/caliperProfile";
        list.Add(new Assumption(
            profile, BrakeCheck.PadWearMm, null, CommonPractice,
            "A floating caliper follows its pads inboard by this much until they are worn. Its outline is taken as measured with new pads: measured with worn ones, it comes outboard when new ones go in."));
        list.Add(new Assumption(profile, BrakeCheck.FloatMm, null, CommonPractice, "A floating caliper has this much play along the wheel's axis, to either side."));
    }

    private static void AddForCamber(FitmentContext car, List<Assumption> list)
    {
        if (car.Settings.CamberChange is not { PivotHeightMm: null, ChangeDeg: not 0 } change || change.At == CamberChangePlace.LowerJoint) return;
        var towardsCentre = change.ChangeDeg < 0;
        list.Add(new Assumption(
            "/camberChange/pivotHeightMm",
            towardsCentre ? null : 0,
            towardsCentre ? "wheel-centre height" : null,
            CommonPractice,
            "The place the wheel turns about is not given; of its plausible heights the one that leaves least room at the arch is used."));
    }

    private static void AddForLoad(FitmentContext car, in Fitting candidate, List<Assumption> list, UnitSystem units)
    {
        var marking = candidate.Tyre.Marking;
        if (marking.LoadCapacityKg is null) return;
        if (!marking.IsLoadVersionMarked && LoadCapacity.ReferencePressureKpa(marking) is { } standardKpa) list.Add(StandardLoad(car, candidate, standardKpa, units));
        if (candidate.Tyre.PressureKpa is null && LoadCapacity.ReferencePressureKpa(marking) is { } referenceKpa)
        {
            var present = car.Axle.Tyre?.PressureKpa;
            list.Add(new Assumption(
                "/candidate/tyre/pressureKpa",
                present ?? referenceKpa,
                null,
                present is null ? "reference pressure of the load index, from memory" : "the pressure of the tyre fitted now",
                "The load a tyre carries depends on its pressure, and none is given for the candidate."));
        }

        var speedKmh = LoadChecks.SpeedUsed(car, marking);
        if (speedKmh > SpeedWithoutAdditionKmh && LoadCapacity.SpeedPressureAdditionKpa(marking, speedKmh) is null) list.Add(NoSpeedAddition);

        if (car.Vehicle.TopSpeedKmh is null && marking.MaximumSpeedKmh is { } symbolKmh)
        {
            list.Add(new Assumption(
                "/vehicle/topSpeedKmh", symbolKmh, null, "the tyre's own speed symbol, where it carries least",
                "The load a tyre carries falls with the car's top speed, which is not given."));
        }

        if (LoadChecks.IsSlowerSnowTyre(car, marking))
        {
            list.Add(new Assumption(
                "/vehicle/topSpeedKmh", marking.MaximumSpeedKmh, null, "the winter tyre's own speed symbol",
                "The car is faster than the winter tyre; its load is judged at the speed that a label would hold the driver to."));
        }

        if (car.LoadPerWheelKg is null && car.Axle.MinimumLoadIndex is not null)
        {
            list.Add(new Assumption(
                car.Position == CarAxle.Front ? "/vehicle/front/maximumAxleLoadKg" : "/vehicle/rear/maximumAxleLoadKg",
                LoadChecks.RequiredLoad(car) * 2,
                null,
                "the lowest load index allowed, on two wheels",
                "The axle's greatest load is not given, so the lowest load index that the papers allow stands for it."));
        }
    }

    /// <summary>The tyre's load version where its marking does not state it, with whether extra load would change the verdict.</summary>
    private static Assumption StandardLoad(FitmentContext car, in Fitting candidate, double standardKpa, UnitSystem units)
    {
        var now = LoadChecks.Capacity(car, candidate).Status;
        var reading = TyreMarkingReader.Read(candidate.Tyre.Marking.StandardText + " XL");
        var extra = reading.TryGet(out var marking, out _) ? LoadChecks.Capacity(car, candidate with { Tyre = candidate.Tyre with { Marking = marking } }).Status : now;
        var effect = extra == now
            ? "marked XL, the verdict on its load would be the same"
            : $"marked XL, the verdict on its load would be {Name(extra)} and not {Name(now)}";
        return new Assumption(
            "/candidate/tyre/marking", null, "standard load", CommonPractice,
            Prose.Write(units, $"The marking does not say XL, so its load index belongs to {standardKpa:kPa}; {effect}."));
    }

    private static string Name(CheckStatus status) => status switch
    {
        CheckStatus.Pass => "pass",
        CheckStatus.Caution => "caution",
        CheckStatus.Fail => "fail",
        _ => "unknown",
    };

    private sealed class AxleAssumptions(string axle)
    {
        public Assumption MeasuredAt { get; } = new(
            axle + "/clearance/measuredAt", null, "worstTravel", CommonPractice,
            "The gaps are taken as the smallest over the whole travel; if they were measured at ride height there is less room than this answer says.");

        public Assumption Uncertainty { get; } = new(
            axle + "/clearance/uncertaintyMm", FitmentContext.DefaultMeasuringErrorMm, null, CommonPractice,
            "A gap taken with a ruler is not known more closely; it enters every check of room.");

        public Assumption ObliqueSeat { get; } = new(
            axle + "/clearance/springSeatMm", null, "a seat up to 40° inboard of upright", CommonPractice,
            "Nobody measured in which direction the seat stands from the tread: 64 % of a movement inboard, and of what the width may grow, counts.");

        public Assumption CamberCurve(UnitSystem units) => new(
            axle + "/suspension/readings", null, Prose.Write(units, $"the curve goes on for up to {TravelBeyondReadingsMm:gap} beyond the readings"), CommonPractice,
            "The readings do not reach the whole bump travel.");

        public Assumption StraightUp(UnitSystem units) => new(
            axle + "/suspension/readings", 0, null, OurChoice,
            Prose.Write(units, $"Readings of camber do not tell how the wheel centre moves sideways; it is taken to go straight up. A strut's may move {5.0:gap} to {10.0:gap} inboard over its travel: measure it, or give the points."));

        public Assumption StopLength { get; } = new(
            axle + "/bumpStop/lengthMm", UpwardTravel.TypicalLengthMm, null, CommonPractice,
            "The wheel goes on upward through the bump stop, whose length is not given.");

        public Assumption InboardTo { get; } = new(
            axle + "/clearance/inboardTo", null, "body", CommonPractice,
            "What was nearest inboard is not said; of body, strut and arm the body leaves least room.");

        public Assumption InboardHeight { get; } = new(
            axle + "/clearance/inboardHeightMm", null, "the height that leaves least room", CommonPractice,
            "How high the narrowest place inboard stands is not said; the wheel leans most at the top and bottom of the tyre.");

        public Assumption ArmShare { get; } = new(
            axle + "/clearance/inboardTo", TravelAllowance.ArmShare, null, OurChoice,
            "An arm is held by the body at one end and by the upright at the other; the wheel is taken to near it by this share of what it nears the body.");

        public Assumption StrutShare { get; } = new(
            axle + "/clearance/inboardTo", TravelAllowance.ArmShare, null, OurChoice,
            "The strut of this suspension is not one piece with the upright; the wheel is taken to near it by this share of what it nears the body.");

        public Assumption RideHeight { get; } = new(
            axle + "/rideHeightChangeMm", null, "the bump stop is where it was", CommonPractice,
            "The gaps were taken before the body was lowered or raised. The wheel still goes up to the same stop, so no room is lost over the travel; a shorter stop or damper would change that. What the arch covers at rest is judged as the car stands now, where the wheel's path is known.");

        public Assumption PresentProtector { get; } = new(
            axle + "/tyre/rimProtectorMm", 0, null, CommonPractice,
            "A rim protector on the present tyre would have narrowed the gaps as they were measured.");

        public Assumption CompressedLength(in UpwardTravel upward) => new(
            axle + "/bumpStop/compressedLengthMm", upward.CompressionMm / UpwardTravel.CompressibleShare * (1 - UpwardTravel.CompressibleShare), null, CommonPractice,
            "A bump stop of foam or rubber is taken to be compressed by 60 % of its length; measure it, or the wheel may go higher.");

        public Assumption StopRatio(in UpwardTravel upward, bool isDampers) => new(
            axle + "/bumpStop/motionRatio", upward.MotionRatio, null, isDampers ? "the damper's motion ratio: the stop is taken to sit on its rod" : CommonPractice,
            "How far the wheel goes up while the stop is compressed depends on the stop's motion ratio, which is not given.");

        public Assumption LoadedRadius(double radiusMm) => new(
            axle + "/loadedRadiusMm", radiusMm, null, StandingRadius.EstimateSource,
            "The height of the narrowest place is counted from the wheel centre, whose height above the ground was not measured.");

        public Assumption BeamMotion { get; } = new(
            axle + "/suspension", null, "the greater lean of both wheels moving alike and oppositely", OurChoice,
            "A twist beam leans its wheels otherwise in roll than in heave; which of the two comes first to the bump stop is not said.");

        public Assumption BoltCircle { get; } = new(
            axle + "/hub/boltCircle", null, "that of the wheel fitted now", CommonPractice,
            "The hub's bolt circle is not given; the wheel fitted now goes on it.");

        public Assumption StaticAngle(string member, UnitSystem units) => new(
            $"{axle}/alignment/{member}", 0, null, OurChoice,
            Prose.Write(units, $"How far the wheel leans with travel follows from the suspension's points and hardly depends on how it stands in them: by less than {0.5:gap} of room at usual angles."));
    }
}
