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

/// <summary>What a colour of the drawing stands for.</summary>
internal enum InkRole
{
    Paper,
    Ink,
    Soft,
    Candidate,
    Current,
    Third,
    Pass,
    Caution,
    Fail,
}

/// <summary>How a shape is drawn.</summary>
/// <param name="Line">Ink of the line; null for none.</param>
/// <param name="Width">Line width in text units.</param>
/// <param name="Dashes">Lengths of dash and gap in text units; empty for a full line.</param>
/// <param name="Fill">Ink of the filling; null for none.</param>
/// <param name="FillOpacity">How dense the filling is, 0 to 1.</param>
/// <param name="LineOpacity">How dense the line is, 0 to 1.</param>
internal readonly record struct Pen(InkRole? Line, double Width, double[] Dashes, InkRole? Fill = null, double FillOpacity = 1, double LineOpacity = 1)
{
    public static Pen Full(InkRole line, double width) => new(line, width, []);

    public static Pen Dashed(InkRole line, double width, params double[] dashes) => new(line, width, dashes);

    public static Pen Filled(InkRole fill, double opacity = 1) => new(null, 0, [], fill, opacity);

    public Pen WithFill(InkRole fill, double opacity) => this with { Fill = fill, FillOpacity = opacity };
}
