using System.Globalization;
using System.Text;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>Draws how often causes are there against how likely they were told to be.</summary>
internal static class ReliabilityPicture
{
    private const int Side = 360;
    private const int Margin = 56;
    private const int Fewest = 400;

    /// <summary>The picture as SVG; only bins that hold enough, each as wide as its count is large.</summary>
    public static string Draw(IReadOnlyList<Reliability.Bin> bins, int cars)
    {
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {Side + (2 * Margin)} {Side + (2 * Margin)}" role="img" aria-label="Share found against probability told">""");
        svg.Append("<style>text{font:14px sans-serif;fill:#4a5560}.l{stroke:#8894a0;fill:none}.d{fill:#1f7a8c;stroke:none}.b{fill:#1f7a8c;opacity:.15}@media(prefers-color-scheme:dark){text{fill:#c3ccd4}.d{fill:#66c2d4}.b{fill:#66c2d4}}</style>");
        svg.Append(CultureInfo.InvariantCulture, $"""<polygon class="b" points="{At(0, 0.05)} {At(0.95, 1)} {At(1, 1)} {At(1, 0.95)} {At(0.05, 0)} {At(0, 0)}"/>""");
        svg.Append(CultureInfo.InvariantCulture, $"""<polyline class="l" points="{At(0, 1)} {At(0, 0)} {At(1, 0)}"/><polyline class="l" stroke-dasharray="5 4" points="{At(0, 0)} {At(1, 1)}"/>""");
        foreach (var tick in new[] { 0, 0.2, 0.4, 0.6, 0.8, 1 })
        {
            svg.Append(CultureInfo.InvariantCulture, $"""<text x="{X(tick)}" y="{Y(0) + 20}" text-anchor="middle">{tick}</text><text x="{X(0) - 8}" y="{Y(tick) + 5}" text-anchor="end">{tick}</text>""");
        }

        foreach (var bin in bins.Where(bin => bin.Count >= Fewest))
            svg.Append(CultureInfo.InvariantCulture, $"""<circle class="d" cx="{X(bin.Told):0.#}" cy="{Y(bin.Found):0.#}" r="5"><title>told {bin.Told:0.000}, found {bin.Found:0.000}, {bin.Count} times</title></circle>""");
        svg.Append(CultureInfo.InvariantCulture, $"""<text x="{Margin + (Side / 2)}" y="{Side + (2 * Margin) - 8}" text-anchor="middle">probability told ({cars} simulated cars)</text>""");
        svg.Append(CultureInfo.InvariantCulture, $"""<text x="{Margin}" y="{Margin - 16}">share found; the band is ±5 points</text></svg>""");
        return svg.Append('\n').ToString();
    }

    private static string At(double told, double found) => string.Create(CultureInfo.InvariantCulture, $"{X(told)},{Y(found)}");

    private static double X(double told) => Margin + (told * Side);

    private static double Y(double found) => Margin + ((1 - found) * Side);
}
