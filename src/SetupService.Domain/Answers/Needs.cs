namespace SetupService.Domain.Answers;

/// <summary>Says which members a figure lacks.</summary>
public static class Needs
{
    /// <summary>"needs a, b and c"; of one member at least.</summary>
    public static string Describe(IReadOnlyList<string> missing)
    {
        ArgumentNullException.ThrowIfNull(missing);
        return missing.Count == 1 ? "needs " + missing[0] : $"needs {string.Join(", ", missing.Take(missing.Count - 1))} and {missing[^1]}";
    }
}
