using SetupService.Domain.Wheels;

namespace SetupService.Api.Wheels;

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
