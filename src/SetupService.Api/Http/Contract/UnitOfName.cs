namespace SetupService.Api.Http.Contract;

/// <summary>Tells the unit of a number from the end of its JSON name: <c>camberDeg</c> is in degrees.</summary>
public static class UnitOfName
{
    // Longest first, so that DegPerKn is not read as a number in kN and Kmh not as one without a unit.
    private static readonly (string Suffix, string Unit)[] Suffixes =
    [
        ("DegPer10Mm", "deg/10 mm"),
        ("MmPer10Mm", "mm/10 mm"),
        ("DegPerMm", "deg/mm"),
        ("NmPerDeg", "Nm/deg"),
        ("DegPerKn", "deg/kN"),
        ("NPerDeg", "N/deg"),
        ("DegPerG", "deg/g"),
        ("NsPerM", "Ns/m"),
        ("NPerMm", "N/mm"),
        ("KmPerYear", "km/year"),
        ("PerDay", "1/day"),
        ("Hours", "h"),
        ("PerKm", "1/km"),
        ("Arcmin", "arcmin"),
        ("Count", "count"),
        ("Deg", "deg"),
        ("Kpa", "kPa"),
        ("Kmh", "km/h"),
        ("Pct", "%"),
        ("Mm", "mm"),
        ("Nm", "N m"),
        ("Km", "km"),
        ("Kg", "kg"),
        ("Hz", "Hz"),
        ("Db", "dB"),
        ("In", "in"),
        ("Px", "px"),
        ("M", "m"),
        ("N", "N"),
        ("C", "°C"),
        ("G", "g"),
        ("S", "s"),
    ];

    /// <summary>Every unit a name can end in, with the suffix that says so.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } =
        Suffixes.ToDictionary(pair => pair.Suffix, pair => pair.Unit, StringComparer.Ordinal);

    /// <summary>The unit <paramref name="name"/> ends in, or null where it names a pure number.</summary>
    public static string? Read(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        foreach ((var suffix, var unit) in Suffixes)
        {
            if (name.Length > suffix.Length && name.EndsWith(suffix, StringComparison.Ordinal))
                return unit;
        }

        return null;
    }
}
