namespace SetupService.Api.Geometry;

/// <summary>Says which members a figure lacks.</summary>
internal static class Needs
{
    /// <summary>"needs a, b and c"; of one member at least.</summary>
    public static string Of(IReadOnlyList<string> missing) => missing.Count == 1
        ? "needs " + missing[0]
        : $"needs {string.Join(", ", missing.Take(missing.Count - 1))} and {missing[^1]}";
}
