using System.Diagnostics.CodeAnalysis;
using SetupService.Api.Http;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Wheels;

/// <summary>Reads a wheel document into the domain's wheel.</summary>
internal static class WheelMapper
{
    private static readonly ParseCache<BoltCircle> BoltCircles = new(BoltCircleReader.Read);

    /// <summary>False where the bolt circle cannot be read.</summary>
    public static bool TryRead(WheelDocument document, [NotNullWhen(true)] out Wheel? wheel)
    {
        wheel = null;
        if (!TryReadCircle(document.BoltCircle, out var circle) || !HasInsideWithinRim(document))
            return false;

        wheel = new Wheel
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
        return true;
    }

    /// <summary>Whether no point of the inside lies beyond the rim itself. A point whose own fault is known already is null here.</summary>
    internal static bool HasInsideWithinRim(WheelDocument document) =>
        document.InnerProfile is not { } profile || Array.TrueForAll(profile, point => point is null || Wheel.IsInside(document.RimDiameterIn, point.RadiusMm));

    /// <summary>As <see cref="TryRead"/>; a wheel that is not described reads as null.</summary>
    public static bool TryReadOptional(WheelDocument? document, out Wheel? wheel)
    {
        wheel = null;
        return document is null || TryRead(document, out wheel);
    }

    /// <summary>Reads a bolt circle as people write it; one that is not given reads as null.</summary>
    internal static bool TryReadCircle(string? text, out BoltCircle? circle)
    {
        circle = text is null ? null : BoltCircles.Find(text);
        return text is null || circle is not null;
    }
}
