using SetupService.Api.Geometry.Sweeps;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry;

/// <summary>What the calls on a suspension take although nobody gave it.</summary>
internal static class GeometryAssumptions
{
    private const string CommonPractice = "common practice, no source";

    public static Assumption MeasuringDiameter { get; } = new(
        "/measuringDiameterMm", AxleInputs.DefaultMeasuringDiameterMm, null, CommonPractice,
        "Toe in mm depends on the diameter it is measured at; degrees do not.");

    private static readonly Assumption Parallel = new(
        "/motion", null, "parallel", "the contract's default", "A twist beam moves otherwise in roll than in heave; both wheels are taken to move alike.");

    /// <summary>The tyre as a disc; of every call that works out a contact centre.</summary>
    public static Assumption ThinTyre { get; } = new(
        "/loadedRadiusMm", null, "a disc of this radius in the wheel's plane", "ISO 8855 as to the contact centre; the disc is a model",
        "A tyre has width and gives: at camber its true contact centre moves some mm across, which no figure here contains.");

    /// <summary>Of a sweep, by what its suspension is known by.</summary>
    public static List<Assumption> ForSweep(TravelSweepRequest request, SuspensionModel suspension)
    {
        if (suspension is MeasuredSuspension { Corner: { } corner })
        {
            var read = MeasuredInputs.Assumptions(corner, request.Suspension, request.Alignment);
            if (request.MeasuringDiameterMm is null && corner.ToeGap is null) read.Add(MeasuringDiameter);
            return read;
        }

        var list = ForSweep(request.Suspension, request.Alignment, request.MeasuringDiameterMm, request.Motion is not null);
        AddUnused(list, request.Suspension, request.Motion is not null, request.TrackMm is not null);
        return list;
    }

    private static List<Assumption> ForSweep(SuspensionDocument suspension, AlignmentAnglesDocument alignment, double? measuringDiameterMm, bool isMotionGiven)
    {
        var list = ForCorner(suspension, alignment);
        if (measuringDiameterMm is null) list.Add(MeasuringDiameter);
        if (suspension is TwistBeamDocument && !isMotionGiven) list.Add(Parallel);
        return list;
    }

    /// <summary>Of any corner with points.</summary>
    public static List<Assumption> ForCorner(SuspensionDocument suspension, AlignmentAnglesDocument alignment)
    {
        var list = new List<Assumption> { ThinTyre };
        if (SuspensionMapper.SpringDamper(suspension) is { } points)
        {
            var part = EnumNames<SuspensionPart>.Of(SuspensionMapper.DefaultPart(points));
            if (points is { SpringMoving: not null, SpringOn: null }) list.Add(OnPart("spring", part));
            if (points is { DamperMoving: not null, DamperOn: null }) list.Add(OnPart("damper", part));
            if (points is MacPhersonStrutPointsDocument { SpringMoving: null } or MacPhersonStrutPointsDocument { DamperMoving: null }) list.Add(AlongStrut);
        }

        if (alignment.CasterDeg is not null) list.Add(OwnAxis("casterDeg"));
        if (alignment.SteeringAxisInclinationDeg is not null) list.Add(OwnAxis("steeringAxisInclinationDeg"));
        return list;
    }

    /// <summary>Adds what was given and means nothing for points, so that no member is passed over in silence.</summary>
    public static void AddUnused(List<Assumption> list, SuspensionDocument suspension, bool isMotionGiven, bool isTrackGiven = false)
    {
        if (isMotionGiven && suspension is not TwistBeamDocument) list.Add(Unused("motion", "Only a twist beam moves its wheel otherwise in roll than in heave."));
        if (isTrackGiven) list.Add(Unused("trackMm", "The points say where the wheel stands; the track stated beside them is not used."));
    }

    private static Assumption Unused(string member, string reason) => new($"/{member}", null, "not used", "the points given", reason);

    private static readonly Assumption AlongStrut = new(
        "/suspension/points/springMoving", null, "along strutTop–strutLower", "the contract's default",
        "Spring or damper has no points of its own, so it acts along the strut.");

    private static Assumption OnPart(string name, string? part) => new(
        $"/suspension/points/{name}On", null, part, CommonPractice, $"The part that carries the {name} decides its motion ratio.");

    private static Assumption OwnAxis(string member) => new(
        $"/alignment/{member}", null, "that of the points", "the points given", "The steering axis follows from the points; the angle stated beside them is not used.");
}
