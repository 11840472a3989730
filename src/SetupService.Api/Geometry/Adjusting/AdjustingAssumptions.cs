using SetupService.Domain.Suspension.Search;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What adjusting takes although nobody gave it.</summary>
internal static class AdjustingAssumptions
{
    private const string CommonPractice = "common practice, no source";

    private static readonly Assumption BothSides = new(
        "/suspension", null, "the right side adjusted alike", "the contract's convention", "Track counts both wheels; each other figure is the left corner's.");

    private static readonly Assumption NotReset = new(
        "/resetToe", null, "false", "the contract's default", "Toe is left to change with the adjustment; on the car it is reset afterwards, which moves the other angles a little too.");

    private static readonly Assumption Parallel = new(
        "/motion", null, "parallel", "the contract's default", "A twist beam moves otherwise in roll than in heave; gain and roll centre here are those of heave.");

    private static readonly Assumption ArchAtTop = new(
        "/archGapMm", null, "the arch is met by the tyre's top", CommonPractice, "How far up the arch's edge stands is not given; the tyre's top moves furthest when the wheel is leant.");

    private static readonly Assumption Pivot = new(
        "/adjustments/pivot", null, "strutLower", CommonPractice, "The bolt the knuckle turns about is not given; its place changes camber by little.");

    private static readonly Assumption Unlimited = new(
        "/limitsMm", 100, null, "the contract's range", "No limit is given, so the movement may be larger than any mount allows.");

    private static readonly Assumption NotUsed = new(
        "/limitsMm", 0, null, "our choice", "No limit is given and its angle is not asked for, so the mount is not moved this way.");

    /// <summary>Of a corner with points.</summary>
    public static List<Assumption> Of(SuspensionDocument suspension, AlignmentAnglesDocument alignment, bool? resetToe)
    {
        var list = GeometryAssumptions.ForCorner(suspension, alignment);
        list.Add(BothSides);
        if (resetToe is null && suspension is not (SemiTrailingArmDocument or TwistBeamDocument)) list.Add(NotReset);
        return list;
    }

    /// <summary>Of a top mount.</summary>
    public static List<Assumption> Of(TopMountMoveRequest request, SuspensionModel suspension)
    {
        if (suspension is MeasuredSuspension { Corner: { } corner }) return OfReadings(request, corner);
        var list = Of(request.Suspension, request.Alignment, request.ResetToe);
        GeometryAssumptions.AddUnused(list, request.Suspension, isMotionGiven: false);
        if (request.Target is null) return list;
        if (request.LimitsMm?.ArchGap is not null) list.Add(ArchAtTop with { Input = "/limitsMm/archGap" });
        AddRooms(list, request);
        return list;
    }

    /// <summary>Of a measured corner's top mount.</summary>
    private static List<Assumption> OfReadings(TopMountMoveRequest request, MeasuredCorner corner)
    {
        var list = MeasuredInputs.Assumptions(corner, request.Suspension, request.Alignment);
        list.Add(RigidStrut);
        if (request.Target is null) return list;
        AddRooms(list, request);
        return list;
    }

    /// <summary>Of a measured corner.</summary>
    private static List<Assumption> OfReadings(AdjustmentRequest request, MeasuredCorner corner)
    {
        var list = MeasuredInputs.Assumptions(corner, request.Suspension, request.Alignment);
        list.Add(RigidStrut);
        return list;
    }

    private static readonly Assumption RigidStrut = new(
        "/suspension/topMountReadings", null, "a strut rigid about its ball joint", "derivation in docs/methods/measured-corner",
        "Moved inboard the mount changes camber and inclination, moved rearward caster alone; of the little each does to the other nothing is known.");

    /// <summary>Of any adjustment.</summary>
    public static List<Assumption> Of(AdjustmentRequest request, SuspensionModel suspension)
    {
        if (suspension is MeasuredSuspension { Corner: { } corner }) return OfReadings(request, corner);
        var list = Of(request.Suspension, request.Alignment, request.ResetToe);
        GeometryAssumptions.AddUnused(list, request.Suspension, request.Motion is not null);
        if (request is { Suspension: TwistBeamDocument, Motion: null }) list.Add(Parallel);
        if (request.ArchGapMm is not null) list.Add(ArchAtTop);
        AddPivots(list, "/adjustments", request.Adjustments);
        AddPivots(list, "/adjusters", request.Adjusters);
        return list;
    }

    private static void AddRooms(List<Assumption> list, TopMountMoveRequest request)
    {
        if (request.LimitsMm?.Inboard is null) list.Add((request.Target?.CamberDeg is null ? NotUsed : Unlimited) with { Input = "/limitsMm/inboard" });
        if (request.LimitsMm?.Rearward is null) list.Add((request.Target?.CasterDeg is null ? NotUsed : Unlimited) with { Input = "/limitsMm/rearward" });
    }

    private static void AddPivots(List<Assumption> list, string member, IReadOnlyList<AdjusterDocument>? documents)
    {
        for (var i = 0; i < documents?.Count; i++)
        {
            if (documents[i] is { Adjuster: Adjuster.KnuckleEccentric, Pivot: null })
                list.Add(Pivot with { Input = FormattableString.Invariant($"{member}/{i}/pivot") });
        }
    }
}
