using System.Globalization;

namespace SetupService.Api.Http.Faults;

/// <summary>The sentence for a number outside its limits, the same for bodies and query parameters.</summary>
internal static class RangeText
{
    public static string Message(string label, string typed, double minimum, double maximum, string? unit) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{label} is {typed}; it must be from {minimum} to {maximum}{(unit is null or "count" ? "" : " " + unit)}.");
}
