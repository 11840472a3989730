namespace SetupService.Api.Http.Faults;

/// <summary>Finds the name a person most likely meant.</summary>
internal static class NearestName
{
    private const int LongestCompared = 64;

    /// <summary>The name nearest to <paramref name="typed"/>, or null where none is near: at least half of its letters must be there.</summary>
    public static string? Find(string typed, IEnumerable<string> names)
    {
        if (typed.Length > LongestCompared)
            return null;

        string? nearest = null;
        var fewest = 1 + Math.Max(2, typed.Length / 4);
        foreach (var name in names)
        {
            var changes = string.Equals(name, typed, StringComparison.OrdinalIgnoreCase) ? 0 : Changes(typed, name);
            if (changes < fewest && changes < typed.Length && 2 * changes <= name.Length)
                (nearest, fewest) = (name, changes);
        }

        return nearest;
    }

    /// <summary>The number of letters to insert, delete or replace (Levenshtein distance).</summary>
    private static int Changes(string from, string to)
    {
        int[] row = [.. Enumerable.Range(0, to.Length + 1)];
        for (var i = 1; i <= from.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var replaced = diagonal + (from[i - 1] == to[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
