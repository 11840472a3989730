using System.Text;

namespace SetupService.Api.Drawings;

/// <summary>
/// The colours of the drawings, for light and for dark surroundings. Every one of them stands at a contrast of 4.5 or more to
/// its paper (WCAG 2.2, success criterion 1.4.3), and none of them says anything that a word beside it does not say too.
/// </summary>
internal static class Palette
{
    /// <summary>The class of a drawing's root, which keeps the style sheet to it.</summary>
    public const string RootClass = "drawing";

    private const string Scope = "." + RootClass;

    private static readonly (InkRole Role, string Name, string Light, string Dark)[] Inks =
    [
        (InkRole.Paper, "paper", "#fbfaf6", "#12181d"),
        (InkRole.Ink, "ink", "#1b2530", "#e9ecee"),
        (InkRole.Soft, "soft", "#55616d", "#a3afba"),
        (InkRole.Candidate, "candidate", "#125d73", "#6fc3d6"),
        (InkRole.Current, "now", "#6a5340", "#d3bba3"),
        (InkRole.Third, "third", "#6d3a86", "#d0a9e6"),
        (InkRole.Pass, "pass", "#1c6a3d", "#7dd49d"),
        (InkRole.Caution, "caution", "#875003", "#f0bd68"),
        (InkRole.Fail, "fail", "#af1d28", "#ff9a92"),
    ];

    /// <summary>The style sheet: custom properties for both surroundings and one class each to fill and to draw with.</summary>
    public static string StyleSheet { get; } = Write();

    /// <summary>The class that fills with an ink.</summary>
    public static string FillClass(InkRole role) => Inks[(int)role].Name;

    /// <summary>The class that draws lines with an ink.</summary>
    public static string LineClass(InkRole role) => Inks[(int)role].Name + "-line";

    /// <summary>The light colour, for readers of the picture that know no style sheets.</summary>
    public static string Fallback(InkRole role) => Inks[(int)role].Light;

    private static string Write()
    {
        var css = new StringBuilder();
        css.Append('\n').Append(Scope).Append('{');
        foreach (var ink in Inks) css.Append("--").Append(ink.Name).Append(':').Append(ink.Light).Append(';');
        css.Append("}\n@media (prefers-color-scheme:dark){").Append(Scope).Append('{');
        foreach (var ink in Inks) css.Append("--").Append(ink.Name).Append(':').Append(ink.Dark).Append(';');
        css.Append("}}\n");
        foreach (var ink in Inks)
        {
            css.Append(Scope).Append(" .").Append(ink.Name).Append("{fill:var(--").Append(ink.Name).Append(")}");
            css.Append(Scope).Append(" .").Append(ink.Name).Append("-line{stroke:var(--").Append(ink.Name).Append(")}\n");
        }

        return css.ToString();
    }
}
