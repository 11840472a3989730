using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Cornering;

/// <summary>Reads what a call on a turn asks into domain values.</summary>
internal static class TurnReading
{
    /// <summary>Radius or speed, and which way.</summary>
    public static TurnPath Path(TurnRequest request) => request.CornerRadiusM is { } radiusM
        ? TurnPath.AtRadius(request.Turn, radiusM)
        : TurnPath.AtSpeed(request.Turn, request.SpeedKmh!.Value);
}
