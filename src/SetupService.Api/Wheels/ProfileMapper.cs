using SetupService.Domain.Wheels;

namespace SetupService.Api.Wheels;

/// <summary>Reads an outline that a person measured in any order.</summary>
internal static class ProfileMapper
{
    /// <summary>The points in ascending order of station, those of one station as they came.</summary>
    public static ProfilePoint[] Ascending<T>(T[] points, Converter<T, ProfilePoint> read)
    {
        var outline = Array.ConvertAll(points, read);
        return [.. outline.OrderBy(static point => point.StationMm)];
    }
}
