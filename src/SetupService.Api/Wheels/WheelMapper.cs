using System.Globalization;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Wheels;

/// <summary>Maps a wheel document to the domain's wheel.</summary>
internal static class WheelMapper
{
    private static readonly ParseCache<WheelMarking> Markings = new(WheelMarkingReader.Read);
    private static readonly ParseCache<BoltCircle> BoltCircles = new(BoltCircleReader.Read);

    private static readonly Refusal BeyondTheRim = new(Fault.At(
        "/innerProfile", FaultCodes.Inconsistent, "innerProfile has a radius beyond the rim's own bead seat, half of rimDiameterIn."));

    /// <summary>
    /// The wheel; refused where its marking or bolt circle cannot be read, a member contradicts the marking, diameter, width or offset are told by neither,
    /// or a point of its inside lies beyond the rim itself.
    /// </summary>
    public static MapResult<Wheel> Map(WheelDocument? document)
    {
        if (document is null)
            return Refusal.Missing();
        Refusal? refusal = null;
        var circle = MapCircle(document.BoltCircle, ref refusal);
        var marking = document.Marking is { } text ? Markings.Map(text).Take("marking", ref refusal) : null;
        if (document.Marking is not null && marking is null)
            return refusal!;

        var diameterIn = Needed("rimDiameterIn", document.RimDiameterIn, marking, marking?.RimDiameterIn, ref refusal);
        var widthIn = Needed("rimWidthIn", document.RimWidthIn, marking, marking?.RimWidthIn, ref refusal);
        var offsetMm = Needed("offsetMm", document.OffsetMm, marking, marking?.OffsetMm, ref refusal);
        var boreMm = Agreed("centreBoreMm", document.CentreBoreMm, marking, marking?.CentreBoreMm, ref refusal);
        var ratingKg = Agreed("loadRatingKg", document.LoadRatingKg, marking, marking?.LoadRatingKg, ref refusal);
        if (circle is not null && marking?.BoltCircle is { } stamped && !stamped.Matches(circle))
            Add(Contradiction("boltCircle", circle.ToString(), marking, stamped.ToString()), ref refusal);
        if (diameterIn is { } rimIn && !HasInsideWithinRim(document, rimIn))
            refusal = refusal?.And(BeyondTheRim) ?? BeyondTheRim;
        if (refusal is not null)
            return refusal;

        return new Wheel
        {
            RimDiameterIn = diameterIn!.Value,
            RimWidthIn = widthIn!.Value,
            OffsetMm = offsetMm!.Value,
            SpacerMm = document.SpacerMm ?? 0,
            SpacerPilotBoreMm = document.SpacerPilotBoreMm,
            SpacerPilotDiameterMm = document.SpacerPilotDiameterMm,
            SpacerHasOwnFasteners = document.SpacerHasOwnFasteners,
            MassKg = document.MassKg,
            BoltCircle = circle ?? marking?.BoltCircle,
            CentreBoreMm = boreMm,
            LoadRatingKg = ratingKg,
            StampedFlange = marking?.StampedFlange,
            FastenerSeat = document.FastenerSeat,
            PadThicknessMm = document.PadThicknessMm,
            InnerProfile = document.InnerProfile is { } profile
                ? ProfileMapper.Ascending(profile, static point => new ProfilePoint(point.FromMountingFaceMm, point.RadiusMm))
                : [],
        };
    }

    /// <summary>A figure no wheel can do without: the member's, else the marking's.</summary>
    private static double? Needed(string member, double? given, WheelMarking? marking, double? stamped, ref Refusal? refusal)
    {
        var value = Agreed(member, given, marking, stamped, ref refusal);
        if (value is not null)
            return value;
        var message = marking is null
            ? $"{member} is missing; give it, or a marking that tells it."
            : $"{member} is missing, and the marking “{marking.Text}” does not tell it.";
        Add(Fault.At("/" + member, FaultCodes.Required, message), ref refusal);
        return null;
    }

    /// <summary>A figure that member and marking may both tell, and then alike.</summary>
    private static double? Agreed(string member, double? given, WheelMarking? marking, double? stamped, ref Refusal? refusal)
    {
        if (marking is not null && given is { } one && stamped is { } other && one != other)
            Add(Contradiction(member, one.ToString(CultureInfo.InvariantCulture), marking, other.ToString(CultureInfo.InvariantCulture)), ref refusal);
        return given ?? stamped;
    }

    private static Fault Contradiction(string member, string given, WheelMarking marking, string stamped) => Fault.At(
        "/" + member, FaultCodes.Inconsistent, $"{member} is {given} and the marking “{marking.Text}” says {stamped}; give one of them, or both alike.");

    private static void Add(Fault fault, ref Refusal? refusal)
    {
        var one = new Refusal(fault);
        refusal = refusal?.And(one) ?? one;
    }

    /// <summary>Whether no point of the inside lies beyond the rim itself. What was refused itself is null here.</summary>
    private static bool HasInsideWithinRim(WheelDocument document, double rimDiameterIn) =>
        document.InnerProfile is not { } profile || Array.TrueForAll(profile, point => point is null || Wheel.IsInside(rimDiameterIn, point.RadiusMm));

    /// <summary>Maps a bolt circle as people write it; one that is not given is null.</summary>
    internal static BoltCircle? MapCircle(string? text, ref Refusal? refusal) =>
        text is null ? null : BoltCircles.Map(text).Take("boltCircle", ref refusal);
}

/// <summary>Reads an outline that a person measured in any order.</summary>
internal static class ProfileMapper
{
    /// <summary>The points in ascending order of station, those of one station as they came.</summary>
    public static ProfilePoint[] Ascending<T>(T[] points, Converter<T, ProfilePoint> read)
        where T : class
    {
        // A point that could not be bound is null here, and its fault is known already.
        var outline = Array.ConvertAll(Array.TrueForAll(points, static point => point is not null) ? points : [.. points.OfType<T>()], read);
        return [.. outline.OrderBy(static point => point.StationMm)];
    }
}
