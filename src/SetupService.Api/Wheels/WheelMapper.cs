using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Wheels;

/// <summary>Maps a wheel document to the domain's wheel.</summary>
internal static class WheelMapper
{
    private static readonly ParseCache<BoltCircle> BoltCircles = new(BoltCircleReader.Read);

    private static readonly Refusal BeyondTheRim = new(Fault.At(
        "/innerProfile", FaultCodes.Inconsistent, "innerProfile has a radius beyond the rim's own bead seat, half of rimDiameterIn."));

    /// <summary>The wheel; refused where its bolt circle cannot be read, or a point of its inside lies beyond the rim itself.</summary>
    public static MapResult<Wheel> Map(WheelDocument? document)
    {
        if (document is null)
            return Refusal.Missing();
        Refusal? refusal = null;
        var circle = MapCircle(document.BoltCircle, ref refusal);
        if (!HasInsideWithinRim(document))
            refusal = refusal?.And(BeyondTheRim) ?? BeyondTheRim;
        if (refusal is not null)
            return refusal;

        return new Wheel
        {
            RimDiameterIn = document.RimDiameterIn,
            RimWidthIn = document.RimWidthIn,
            OffsetMm = document.OffsetMm,
            SpacerMm = document.SpacerMm ?? 0,
            SpacerPilotBoreMm = document.SpacerPilotBoreMm,
            SpacerPilotDiameterMm = document.SpacerPilotDiameterMm,
            SpacerHasOwnFasteners = document.SpacerHasOwnFasteners,
            MassKg = document.MassKg,
            BoltCircle = circle,
            CentreBoreMm = document.CentreBoreMm,
            LoadRatingKg = document.LoadRatingKg,
            FastenerSeat = document.FastenerSeat,
            PadThicknessMm = document.PadThicknessMm,
            InnerProfile = document.InnerProfile is { } profile
                ? ProfileMapper.Ascending(profile, static point => new ProfilePoint(point.FromMountingFaceMm, point.RadiusMm))
                : [],
        };
    }

    /// <summary>Whether no point of the inside lies beyond the rim itself. What was refused itself is zero or null here.</summary>
    private static bool HasInsideWithinRim(WheelDocument document) =>
        document.RimDiameterIn == 0 || document.InnerProfile is not { } profile || Array.TrueForAll(profile, point => point is null || Wheel.IsInside(document.RimDiameterIn, point.RadiusMm));

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
