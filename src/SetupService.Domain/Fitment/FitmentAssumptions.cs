using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>The values a fitment answer used although nobody gave them.</summary>
public static class FitmentAssumptions
{
    private const string CommonPractice = "common practice, no source";
    private const string OurChoice = "our choice, no source";

    private static readonly Assumption Flange = new(
        "/candidate/wheel", null, "J flange", "JIS D 4218:2021 Table 3 (ISO 4000-2:2013)",
        "The wheel's edges are its rim width and two flanges of at least 11.0 mm; a thicker flange stands further out.");

    private static readonly Assumption SpeedometerExact = new(
        "/vehicle", null, "speedometer reads exactly now", CommonPractice,
        "The true speed after the change depends on what the speedometer shows too much today, which nobody measured.");

    private static readonly Assumption MinimumMargin = new(
        "/tolerances/minimumMarginMm", CheckSettings.DefaultMinimumMarginMm, null, CommonPractice,
        "Worst-case room below this makes a check of room a caution.");

    private static readonly Assumption ObliqueLock = new(
        "/vehicle/front/clearance/inboardAtFullLockMm", null, "a part up to 40° before or behind the tread", CommonPractice,
        "At lock nobody measured in which direction the nearest part stands: 64 % of an added radius, and of what the radius may grow, counts.");

    /// <summary>Up to here no symbol has an addition for speed (the handbook's p. 290).</summary>
    private const double SpeedWithoutAdditionKmh = 160;

    private static readonly Assumption NoSpeedAddition = new(
        "/candidate/tyre/pressureKpa", null, "no addition for sustained speed", "the handbook's sentence on these symbols is cut off in the copy read",
        "The pressure named carries the load; at sustained speed such a tyre may want more, which only its maker or the car's papers tell.");

    private static readonly AxleAssumptions Front = new("/vehicle/front");
    private static readonly AxleAssumptions Rear = new("/vehicle/rear");

    private static readonly Assumption NoSpacer = new(
        "/tyre", null, "no spacer", CommonPractice, "The offsets are for wheels straight on the hub; a spacer shifts them by its thickness.");

    /// <summary>What a check of a candidate assumed.</summary>
    public static IReadOnlyList<Assumption> ForCheck(AxleUnderCheck car, in Fitting candidate)
    {
        var list = new List<Assumption>(10) { Flange };
        AddForCar(car, list);
        AddForLoad(car, candidate, list);
        return list;
    }

    /// <summary>What a window of offsets assumed.</summary>
    public static IReadOnlyList<Assumption> ForWindow(AxleUnderCheck car)
    {
        var list = new List<Assumption>(6) { Flange with { Input = "/rimWidthsIn" }, NoSpacer };
        AddForCar(car, list);
        return list;
    }

    /// <summary>What a comparison of two fittings assumed.</summary>
    public static IReadOnlyList<Assumption> ForComparison { get; } = [Flange, SpeedometerExact with { Input = "/current" }];

    private static void AddForCar(AxleUnderCheck car, List<Assumption> list)
    {
        var axle = car.Position == CarAxle.Front ? Front : Rear;
        if (car.Settings.MinimumMarginMm is null) list.Add(MinimumMargin);
        if (car.Axle.Clearance.MeasuredAt is null) list.Add(axle.MeasuredAt);
        if (car.Axle.Clearance.UncertaintyMm is null) list.Add(axle.Uncertainty);
        if (car.HubBoltCircle is not null && car.Axle.Hub.BoltCircle is null) list.Add(axle.BoltCircle);
        if (car.Position == CarAxle.Front && car.Axle.Clearance.InboardAtFullLockMm is not null) list.Add(ObliqueLock);
        if (car.Applicable.Contains(CheckId.SpringSeatClearance) && car.Axle.Clearance.SpringSeatMm is not null) list.Add(axle.ObliqueSeat);
        if (car.Travel.IsExtrapolated) list.Add(axle.CamberCurve);
        if (car.Travel.Corner is { Extremes: not null } corner) AddForPoints(car, axle, corner, list);
        AddForCamber(car, list);
    }

    private static void AddForPoints(AxleUnderCheck car, AxleAssumptions axle, CornerLean corner, List<Assumption> list)
    {
        if (car.Axle.Left.CamberDeg is null) list.Add(axle.Camber);
        if (car.Axle.Left.ToeDeg is null) list.Add(axle.Toe);
        if (corner.IsOfBothMotions) list.Add(axle.BeamMotion);
    }

    private static void AddForCamber(AxleUnderCheck car, List<Assumption> list)
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

    private static void AddForLoad(AxleUnderCheck car, in Fitting candidate, List<Assumption> list)
    {
        var marking = candidate.Tyre.Marking;
        if (marking.LoadCapacityKg is null) return;
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

        if (LoadChecks.SpeedUsed(car, marking) > SpeedWithoutAdditionKmh && LoadCapacity.SpeedPressureAdditionKpa(marking, LoadChecks.SpeedUsed(car, marking)) is null)
        {
            list.Add(NoSpeedAddition);
        }

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

    private sealed class AxleAssumptions(string axle)
    {
        public Assumption MeasuredAt { get; } = new(
            axle + "/clearance/measuredAt", null, "worstTravel", CommonPractice,
            "The gaps are taken as the smallest over the whole travel; if they were measured at ride height there is less room than this answer says.");

        public Assumption Uncertainty { get; } = new(
            axle + "/clearance/uncertaintyMm", AxleUnderCheck.DefaultMeasuringErrorMm, null, CommonPractice,
            "A gap taken with a ruler is not known more closely; it enters every check of room.");

        public Assumption ObliqueSeat { get; } = new(
            axle + "/clearance/springSeatMm", null, "a seat up to 40° inboard of upright", CommonPractice,
            "Nobody measured in which direction the seat stands from the tread: 64 % of a movement inboard, and of what the width may grow, counts.");

        public Assumption CamberCurve { get; } = new(
            axle + "/suspension/readings", null, "the curve goes on by its end slope for up to 20 mm", CommonPractice,
            "The readings do not reach the whole bump travel.");

        public Assumption Camber { get; } = StaticAngle(axle, "camberDeg");

        public Assumption Toe { get; } = StaticAngle(axle, "toeDeg");

        public Assumption BeamMotion { get; } = new(
            axle + "/suspension", null, "the greater lean of both wheels moving alike and oppositely", OurChoice,
            "A twist beam leans its wheels otherwise in roll than in heave; which of the two comes first to the bump stop is not said.");

        public Assumption BoltCircle { get; } = new(
            axle + "/hub/boltCircle", null, "that of the wheel fitted now", CommonPractice,
            "The hub's bolt circle is not given; the wheel fitted now goes on it.");

        private static Assumption StaticAngle(string axle, string member) => new(
            $"{axle}/alignment/{member}", 0, null, OurChoice,
            "How far the wheel leans with travel follows from the suspension's points and hardly depends on how it stands in them: by less than half a millimetre of room at usual angles.");
    }
}
