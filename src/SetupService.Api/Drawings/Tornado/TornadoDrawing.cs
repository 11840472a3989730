using SetupService.Api.Drawings.Charts;

namespace SetupService.Api.Drawings.Tornado;

/// <summary>Draws a tornado as SVG. Letters and places are in text units, of which the picture is 560 wide.</summary>
public static class TornadoDrawing
{
    private const double Width = DrawingFrame.WidthUnits;
    private const double Edge = DrawingFrame.EdgeUnits;
    private const double TextUnits = Width - (2 * Edge);
    private const double PanelGap = 26;
    private const double RowUnits = 26;
    private const double BarUnits = 16;
    private const double HeaderUnits = 32;
    private const double NameShare = 0.42;
    private const double FigureUnits = 84;
    private const double GapUnits = 8;

    private static readonly Lettering Heading = new(Lettering.Figure, InkRole.Ink, IsBold: true);
    private static readonly Lettering Name = new(Lettering.Small, InkRole.Ink);
    private static readonly Lettering Bold = new(Lettering.Small, InkRole.Ink, IsBold: true);
    private static readonly Lettering Quiet = new(Lettering.Small, InkRole.Soft);

    /// <summary>The picture, readable at 400 pixels, in light and in dark surroundings.</summary>
    /// <param name="tornado">What is to be drawn.</param>
    /// <returns>An SVG document without script and without reference to anything outside it.</returns>
    public static string Draw(Tornado tornado)
    {
        ArgumentNullException.ThrowIfNull(tornado);
        var head = Block(tornado.Lines, Quiet, tornado.Heading);
        var notes = Block(tornado.Notes, Quiet, null);
        var height = Edge + head.HeightUnits + tornado.Panels.Sum(PanelHeight) + (notes.IsEmpty ? 0 : (2 * PanelGap) + notes.HeightUnits) + Edge;
        using var svg = new SvgWriter(1);
        SvgDocument.Open(svg, "chart", (0, 0, Width, height), tornado.Heading, string.Join(' ', tornado.Lines.Concat(tornado.Panels.Select(Describe))));
        head.Write(svg, 1, Edge, Edge);
        var y = Edge + head.HeightUnits;
        for (var i = 0; i < tornado.Panels.Count; i++)
        {
            svg.OpenGroup(FormattableString.Invariant($"panel-{i + 1}"));
            Panel(svg, tornado.Panels[i], y + PanelGap);
            svg.Close();
            y += PanelHeight(tornado.Panels[i]);
        }

        if (!notes.IsEmpty)
        {
            svg.Line(Edge, y + PanelGap, Width - Edge, y + PanelGap, Pen.Full(InkRole.Soft, 0.8));
            notes.Write(svg, 1, Edge, y + (1.5 * PanelGap));
        }

        svg.Close();
        return svg.Finish();
    }

    private static double PanelHeight(TornadoPanel panel) => PanelGap + HeaderUnits + (RowUnits * panel.Bars.Count);

    private static void Panel(SvgWriter svg, TornadoPanel panel, double top)
    {
        svg.Letters(Edge, top + 15, ChartNumber.WithUnit(panel.Name + (panel.Unit.Length > 0 ? "," : ""), panel.Unit == "°" ? " °" : panel.Unit), Bold);
        svg.Letters(Width - Edge, top + 15, "as given " + Read(panel.Base, panel), Quiet with { Anchor = "end" });
        var rows = Ordered(panel);
        var (left, right) = (Edge + (NameShare * TextUnits) + FigureUnits, Width - Edge - FigureUnits);
        var most = rows.Max(bar => Math.Abs(bar.Change));
        var scale = most > 0 ? (right - left) / 2 / most : 0;
        var zero = (left + right) / 2;
        var y = top + HeaderUnits;
        svg.Line(zero, y - 2, zero, y + (RowUnits * rows.Count), Pen.Full(InkRole.Soft, 1));
        foreach (var bar in rows)
        {
            Row(svg, panel, bar, (zero, scale), y);
            y += RowUnits;
        }
    }

    private static void Row(SvgWriter svg, TornadoPanel panel, TornadoBar bar, (double Zero, double Scale) axis, double y)
    {
        var width = Math.Abs(bar.Change) * axis.Scale;
        var from = bar.Change < 0 ? axis.Zero - width : axis.Zero;
        svg.Letters(Edge, y + 17, Short(bar.Name, bar.IsTogether), bar.IsTogether ? Bold : Name);

        // Together is drawn as an outline, so that it is not read as one bar more to be added.
        if (width > 0) svg.Rectangle(from, y + ((RowUnits - BarUnits) / 2), width, BarUnits, bar.IsTogether ? Pen.Full(InkRole.Ink, 2) : Pen.Filled(InkRole.Candidate, 0.75));
        var text = Signed(bar.Change, panel);
        svg.Letters(bar.Change < 0 ? from - GapUnits : from + width + GapUnits, y + 17, text, (bar.IsTogether ? Bold : Name) with { Anchor = bar.Change < 0 ? "end" : null });
    }

    /// <summary>The longest bar first; all together at the foot.</summary>
    private static List<TornadoBar> Ordered(TornadoPanel panel) =>
        [.. panel.Bars.OrderBy(bar => bar.IsTogether).ThenByDescending(bar => Math.Abs(bar.Change))];

    private static string Short(string name, bool isBold)
    {
        var room = NameShare * TextUnits / Lettering.Small;
        if (TextWidth.Em(name, isBold) <= room) return name;
        var length = name.Length;
        while (length > 1 && TextWidth.Em(name.AsSpan(0, length), isBold) + TextWidth.Em("…", isBold) > room) length--;
        return name[..length].TrimEnd() + "…";
    }

    private static string Describe(TornadoPanel panel) =>
        $"{panel.Name}, as given {Read(panel.Base, panel)}: " + string.Join(", ", Ordered(panel).Select(bar => $"{bar.Name} {Signed(bar.Change, panel)}")) + ".";

    private static string Read(double value, TornadoPanel panel) => ChartNumber.Read(value, panel.Unit, Math.Abs(panel.Base));

    private static string Signed(double value, TornadoPanel panel)
    {
        var text = ChartNumber.Read(value, panel.Unit, Math.Abs(panel.Base));
        return value > 0 ? "+" + text : text;
    }

    private static TextBlock Block(IReadOnlyList<string> lines, Lettering lettering, string? heading)
    {
        var block = new TextBlock(TextUnits);
        if (heading is not null) block.Add(heading, Heading);
        foreach (var line in lines) block.Add(line, lettering);
        return block;
    }
}
