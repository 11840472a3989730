using System.Globalization;

namespace SetupService.Benchmarks.Service;

/// <summary>Makes catalogues of invented wheels and tyres; like real ones they repeat their markings.</summary>
internal static class Catalogue
{
    private static readonly string[] Markings =
    [
        "225/45R17 91W", "225/45R17 94W XL", "235/45R17 94Y", "215/45R17 91W XL", "235/40R17 90W", "245/40R17 91Y", "205/50R17 93V XL", "225/50R17 94W",
    ];

    public static string Car { get; } = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "fitment-batch.request.ndjson")).First();

    public static IEnumerable<string> Lines(int count) => Enumerable.Range(0, count).Select(static i => string.Create(
        CultureInfo.InvariantCulture,
        $$"""{"id":"part-{{i}}","candidate":{"wheel":{"rimDiameterIn":17,"rimWidthIn":{{Width(i)}},"offsetMm":{{Offset(i)}},"massKg":{{Mass(i)}},"boltCircle":"5x108","centreBoreMm":67.1,"loadRatingKg":690},"tyre":{"marking":"{{Marking(i)}}","pressureKpa":230} } }"""));

    public static IEnumerable<string> Rows(int count) =>
        Enumerable.Range(0, count).Select(static i => string.Create(
            CultureInfo.InvariantCulture, $"part-{i},17,{Width(i)},{Offset(i)},{Mass(i)},5x108,67.1,690,{Marking(i)},230"))
        .Prepend("id,rimDiameterIn,rimWidthIn,offsetMm,wheel.massKg,boltCircle,centreBoreMm,loadRatingKg,marking,pressureKpa");

    private static double Width(int i) => 7 + (i % 4 * 0.5);

    private static int Offset(int i) => 30 + (i % 26);

    private static double Mass(int i) => 8 + (i % 30 / 10.0);

    private static string Marking(int i) => Markings[i % Markings.Length];
}
