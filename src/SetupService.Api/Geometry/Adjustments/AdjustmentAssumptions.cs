using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjustments;

/// <summary>What an adjustment uses although nobody gave it.</summary>
internal static class AdjustmentAssumptions
{
    private const string CommonPractice = "common practice, no source";

    private static readonly Assumption BothSides = new(
        "/vehicle", null, "the right side adjusted alike", "the contract's convention", "Track counts both wheels; each other figure is the left corner's.");

    private static readonly Assumption NotReset = new(
        "/resetToe", null, "false", "the contract's default", "Toe is left to change with the adjustment; on the car it is reset afterwards, which moves the other angles a little too.");

    private static readonly Assumption Parallel = new(
        "/motion", null, "parallel", "the contract's default", "A twist beam moves otherwise in roll than in heave; gain and roll centre here are those of heave.");

    private static readonly Assumption ArchAtTop = new(
        "/archGapMm", null, "the arch is met by the tyre's top", CommonPractice, "How far up the arch's edge stands is not given; the tyre's top moves furthest when the wheel is leant.");

    /// <summary>The list.</summary>
    public static List<Assumption> Of(AdjustmentRequest request, Corner corner)
    {
        var list = GeometryAssumptions.Of(corner);
        AdjusterDocument[] used = [.. request.Adjustments ?? [], .. request.Adjusters ?? []];
        if (corner.Readings is not null || corner.Document is null)
        {
            if (Array.Exists(used, one => one.Adjuster is Adjuster.StrutTopInboard or Adjuster.StrutTopRearward))
                list.Add(new(corner.Pointer + "/suspension/topMountReadings", null, "a strut rigid about its ball joint", "derivation in docs/methods/measured-corner", "Moved inboard the mount changes camber and inclination, moved rearward caster alone; of the little each does to the other nothing is known."));
            if (Array.Exists(used, one => one.Adjuster == Adjuster.KnuckleEccentric))
                list.Add(new(corner.Pointer + "/suspension/points", null, "the strut keeps its place", "derivation in docs/methods/suspension-adjustment", "The wheel turns by the angle whose sine is the throw by the distance of the bolts; the strut itself leans back by a little, which needs the points."));
            return list;
        }

        list.Add(BothSides);
        if (corner.Suspension is HardpointSuspension { PointErrorMm: > 0 })
            list.Add(new(corner.Pointer + "/suspension/points/pointErrorMm", null, "used for camber and caster after the adjustment", "derivation in docs/methods/suspension-adjustment", "The other figures are told as if the points were exact; what the error leaves open in them a travel sweep tells."));
        if (request.ResetToe is null && corner.Document is not (SemiTrailingArmDocument or TwistBeamDocument)) list.Add(NotReset);
        GeometryAssumptions.AddUnusedMotion(list, corner, request.Motion);
        if (request is { Suspension: TwistBeamDocument, Motion: null }) list.Add(Parallel);
        if (request.ArchGapMm is not null) list.Add(ArchAtTop);
        AddPivots(list, "/adjustments", request.Adjustments);
        AddPivots(list, "/adjusters", request.Adjusters);
        return list;
    }

    private static void AddPivots(List<Assumption> list, string member, IReadOnlyList<AdjusterDocument>? documents)
    {
        for (var i = 0; i < documents?.Count; i++)
        {
            if (documents[i] is { Adjuster: Adjuster.KnuckleEccentric, Pivot: null })
                list.Add(new(FormattableString.Invariant($"{member}/{i}/pivot"), null, "strutLower", CommonPractice, "The bolt the knuckle turns about is not given; its place changes camber by little."));
        }
    }
}
