using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry;

/// <summary>What the calls on a suspension use although nobody gave it.</summary>
internal static class GeometryAssumptions
{
    private const string CommonPractice = "common practice, no source";

    public static Assumption MeasuringDiameter { get; } = new(
        "/measuringDiameterMm", AxleInputs.DefaultMeasuringDiameterMm, null, CommonPractice,
        "Toe in mm depends on the diameter it is measured at; degrees do not.");

    /// <summary>A twist beam of which nobody said how its wheels move.</summary>
    public static Assumption Parallel { get; } = new(
        "/motion", null, "parallel", "the contract's default", "A twist beam moves otherwise in roll than in heave; both wheels are taken to move alike.");

    /// <summary>The tyre as a disc; of every call that works out a contact centre.</summary>
    public static Assumption ThinTyre { get; } = new(
        "/loadedRadiusMm", null, "a disc of this radius in the wheel's plane", "ISO 8855 as to the contact centre; the disc is a model",
        "A tyre has width and gives: at camber its true contact centre moves some mm across, which no figure here contains.");

    /// <summary>Of a corner, by what it is known by.</summary>
    public static List<Assumption> Of(Corner corner)
    {
        var list = corner.Readings is not null ? OfReadings(corner) : corner.Document is null ? [] : OfPoints(corner);
        if (corner.Radius is { } radius) list.Insert(corner.Readings is null && corner.Document is not null ? 1 : 0, radius);
        return list;
    }

    /// <summary>Adds the motion that was given and means nothing, so that no member is passed over in silence.</summary>
    public static void AddUnusedMotion(List<Assumption> list, Corner corner, AxleMotion? motion)
    {
        if (motion is not null && corner.Document is not TwistBeamDocument)
            list.Add(new("/motion", null, "not used", "the points given", "Only a twist beam moves its wheel otherwise in roll than in heave."));
    }

    private static List<Assumption> OfPoints(Corner corner)
    {
        var list = new List<Assumption> { ThinTyre with { Input = corner.Pointer + "/loadedRadiusMm" } };
        var place = corner.Pointer + "/suspension/points/";
        if (SuspensionMapper.SpringDamper(corner.Document) is { } points)
        {
            var part = EnumNames<SuspensionMember>.Of(SuspensionMapper.DefaultPart(points));
            if (points is { SpringMoving: not null, SpringOn: null }) list.Add(OnPart("spring"));
            if (points is { DamperMoving: not null, DamperOn: null }) list.Add(OnPart("damper"));
            if (points is MacPhersonStrutPointsDocument { SpringMoving: null } or MacPhersonStrutPointsDocument { DamperMoving: null })
                list.Add(new(place + "springMoving", null, "along strutTop–strutLower", "the contract's default", "Spring or damper has no points of its own, so it acts along the strut."));

            Assumption OnPart(string name) => new(place + name + "On", null, part, CommonPractice, $"The part that carries the {name} decides its motion ratio.");
        }

        if (corner.Alignment.CasterDeg is not null) list.Add(OwnAxis("casterDeg"));
        if (corner.Alignment.SteeringAxisInclinationDeg is not null) list.Add(OwnAxis("steeringAxisInclinationDeg"));
        return list;

        Assumption OwnAxis(string member) => new(
            $"{corner.Pointer}/alignment/{member}", null, "that of the points", "the points given", "The steering axis follows from the points; the angle stated beside them is not used.");
    }

    private static List<Assumption> OfReadings(Corner corner)
    {
        var (readings, place, angles) = (corner.Readings!, corner.Pointer, corner.Alignment);
        var list = new List<Assumption>
        {
            new(place + "/suspension/readings", null, "a smooth curve within the gauge's error", "judgement on how suspensions bend: docs/methods/measured-corner", "Between the readings, and for 20 mm beyond them with growing ranges, the curve is our choice; a kink between two readings would not show."),
        };
        if (corner.Document is MeasuredSuspensionDocument { GaugeErrorDeg: null })
            list.Add(new(place + "/suspension/gaugeErrorDeg", CasterReadings.DefaultGaugeErrorDeg, null, CommonPractice, "The gauge's standard error decides how closely the curve follows the readings, and the ranges."));
        if (readings.StatedCamber is { IsContradiction: false } stated)
            list.Add(new(place + "/alignment/camberDeg", stated.StatedDeg, null, "the alignment given", "The camber stated for ride height counts as one more reading there, with the same gauge error."));
        if (readings.StatedCamber is { IsContradiction: true } apart)
            list.Add(new(place + "/alignment/camberDeg", apart.StatedDeg, "not used", "the readings given", Prose.Write(UnitSystem.Metric, $"The readings give {apart.ReadDeg.Value:deg} at ride height, {Math.Abs(apart.DifferenceDeg):deg} from the camber stated; more than {apart.AllowedDeg:deg} cannot be the gauge's error, and the curve keeps to the readings.")));
        if (angles.ToeDeg is not null && readings.ToeAt(0) is not null)
            list.Add(new(place + "/alignment/toeDeg", angles.ToeDeg, null, "the alignment given", "The curve keeps its shape and goes through the toe stated for ride height."));
        return list;
    }
}
