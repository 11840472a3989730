namespace SetupService.Api.Drawings.Comparison;

/// <summary>Draws a comparison as SVG. Letters and places are in text units, of which a column of blocks is 560 wide; from 800 pixels on there are two columns.</summary>
public static class ComparisonDrawing
{
    private const double ColumnWidth = DrawingFrame.WidthUnits;
    private const double Edge = DrawingFrame.EdgeUnits;
    private const double TextUnits = ColumnWidth - (2 * Edge);
    private const double TwoColumnsPx = 800;
    private const double NameUnits = 52;
    private const double RowUnits = 33;
    private const double BarUnits = 8;
    private const double BlockGap = 14;
    private const double HeaderUnits = 50;
    private const double KeyUnits = 30;

    private static readonly Lettering Heading = new(Lettering.Figure, InkRole.Ink, IsBold: true);
    private static readonly Lettering Plain = new(Lettering.Small, InkRole.Ink);
    private static readonly Lettering Bold = new(Lettering.Small, InkRole.Ink, IsBold: true);
    private static readonly Lettering Quiet = new(Lettering.Small, InkRole.Soft);

    /// <summary>The picture, readable at 400 pixels, in light and in dark surroundings.</summary>
    /// <param name="chart">What is to be drawn.</param>
    /// <param name="widthPx">The width it will be shown at, pixels.</param>
    /// <returns>An SVG document without script and without reference to anything outside it.</returns>
    public static string Draw(ComparisonChart chart, double widthPx)
    {
        ArgumentNullException.ThrowIfNull(chart);
        var columns = widthPx >= TwoColumnsPx && chart.Blocks.Count > 2 ? 2 : 1;
        var width = columns * ColumnWidth;
        var head = Block(chart.Lines, width - (2 * Edge), chart.Heading);
        var notes = Block(chart.Notes, width - (2 * Edge), null);
        var blocks = chart.Blocks.Select(one => new Placed(one)).ToList();
        var perColumn = columns == 1 ? blocks.Count : Half(blocks);
        var tallest = Math.Max(blocks.Take(perColumn).Sum(one => one.HeightUnits), blocks.Skip(perColumn).Sum(one => one.HeightUnits));
        var top = Edge + head.HeightUnits + KeyUnits;
        var bottom = top + HeaderUnits + tallest;
        var height = bottom + (notes.IsEmpty ? 0 : (2 * BlockGap) + notes.HeightUnits) + Edge;
        using var svg = new SvgWriter(1);
        SvgDocument.Open(svg, "chart", (0, 0, width, height), chart.Heading, string.Join(' ', chart.Lines.Concat(chart.Blocks.Select(one => Describe(chart, one)))));
        head.Write(svg, 1, Edge, Edge);
        Key(svg, Edge + head.HeightUnits);
        for (var column = 0; column < columns; column++)
        {
            var left = column * ColumnWidth;
            Header(svg, chart, left, top);
            var y = top + HeaderUnits;
            foreach (var block in column == 0 ? blocks.Take(perColumn) : blocks.Skip(perColumn))
            {
                svg.OpenGroup(FormattableString.Invariant($"change-{blocks.IndexOf(block)}"));
                Paint(svg, chart, block, left, y);
                svg.Close();
                y += block.HeightUnits;
            }
        }

        if (!notes.IsEmpty)
        {
            svg.Line(Edge, bottom + BlockGap, width - Edge, bottom + BlockGap, Pen.Full(InkRole.Soft, 0.8));
            notes.Write(svg, 1, Edge, bottom + (1.5 * BlockGap));
        }

        svg.Close();
        return svg.Finish();
    }

    /// <summary>How many blocks stand in the first of two columns, so that both are as long.</summary>
    private static int Half(List<Placed> blocks)
    {
        var (all, sum, count) = (blocks.Sum(one => one.HeightUnits), 0.0, 0);
        while (count < blocks.Count && sum + (blocks[count].HeightUnits / 2) < all / 2) sum += blocks[count++].HeightUnits;
        return count;
    }

    private static double CellUnits(ComparisonChart chart) => (TextUnits - NameUnits) / chart.Columns.Count;

    private static double CentreOf(ComparisonChart chart, double left, int column) => left + Edge + NameUnits + (CellUnits(chart) * (column + 0.5));

    // Filled, outlined and grey: nobody needs to tell the colours apart.
    private static void Key(SvgWriter svg, double top)
    {
        var x = Edge;
        foreach (var (tone, word) in (ReadOnlySpan<(ComparisonTone, string)>)[(ComparisonTone.Better, "better"), (ComparisonTone.Worse, "worse"), (ComparisonTone.Neutral, "more or less of it")])
        {
            Bar(svg, x, top + 9, 26, tone);
            svg.Letters(x + 34, top + 19, word, Quiet);
            x += 34 + (TextWidth.Em(word, isBold: false) * Lettering.Small) + 22;
        }
    }

    private static void Header(SvgWriter svg, ComparisonChart chart, double left, double top)
    {
        for (var i = 0; i < chart.Columns.Count; i++)
        {
            var x = CentreOf(chart, left, i);
            svg.Letters(x, top + 18, chart.Columns[i].Upper, Quiet with { Anchor = "middle" });
            svg.Letters(x, top + 39, chart.Columns[i].Lower, Quiet with { Anchor = "middle" });
        }
    }

    private static void Paint(SvgWriter svg, ComparisonChart chart, Placed block, double left, double top)
    {
        svg.Line(left + Edge, top + 3, left + ColumnWidth - Edge, top + 3, Pen.Full(block.Block.StandsApart ? InkRole.Ink : InkRole.Soft, block.Block.StandsApart ? 1.6 : 0.5));
        var y = top + (BlockGap / 2);
        block.Name.Write(svg, 1, left + Edge, y);
        y += block.Name.HeightUnits;
        if (block.Block.Instead is not null)
        {
            block.Instead.Write(svg, 1, left + Edge, y);
            return;
        }

        Row(svg, chart, chart.Rows.Upper, block.Block.Upper, left, y);
        Row(svg, chart, chart.Rows.Lower, block.Block.Lower, left, y + RowUnits);
    }

    private static void Row(SvgWriter svg, ComparisonChart chart, string name, IReadOnlyList<ComparisonCell> cells, double left, double top)
    {
        svg.Letters(left + Edge, top + 17, name, Quiet);
        var half = (CellUnits(chart) / 2) - 6;
        for (var i = 0; i < cells.Count; i++)
        {
            var (cell, x) = (cells[i], CentreOf(chart, left, i));
            svg.Letters(x, top + 17, cell.Text, (cell.Length == 0 && cell.Tone == ComparisonTone.Neutral ? Quiet : Plain) with { Anchor = "middle" });
            if (cell.Length == 0) continue;
            var length = Math.Min(1, Math.Abs(cell.Length)) * half;
            var y = top + 21;
            svg.Line(x, y - 1, x, y + BarUnits + 1, Pen.Full(InkRole.Soft, 1));
            Bar(svg, cell.Length < 0 ? x - length : x, y, length, cell.Tone);

            // An arrow where the bar goes beyond its scale.
            if (Math.Abs(cell.Length) > 1) Arrow(svg, cell.Length < 0 ? x - half : x + half, y + (BarUnits / 2), cell.Length < 0 ? -5 : 5);
        }
    }

    private static void Bar(SvgWriter svg, double x, double y, double length, ComparisonTone tone)
    {
        if (tone == ComparisonTone.Worse) svg.Rectangle(x + 1, y + 1, Math.Max(0.5, length - 2), BarUnits - 2, Pen.Full(InkRole.Current, 2));
        else svg.Rectangle(x, y, length, BarUnits, tone == ComparisonTone.Better ? Pen.Filled(InkRole.Candidate) : Pen.Filled(InkRole.Soft, 0.45));
    }

    private static void Arrow(SvgWriter svg, double x, double y, double ahead) =>
        svg.Path($"M {SvgNumber.Write(x)} {SvgNumber.Write(y - 5)} L {SvgNumber.Write(x + ahead)} {SvgNumber.Write(y)} L {SvgNumber.Write(x)} {SvgNumber.Write(y + 5)} Z", Pen.Filled(InkRole.Ink));

    private static string Describe(ComparisonChart chart, ComparisonBlock block)
    {
        if (block.Instead is { } instead) return $"{block.Name}: {instead}";
        return $"{block.Name}: {chart.Rows.Upper} {Cells(block.Upper)}; {chart.Rows.Lower} {Cells(block.Lower)}.";

        string Cells(IReadOnlyList<ComparisonCell> cells) => string.Join(", ", cells.Select((cell, i) => $"{chart.Columns[i].Upper} {cell.Text}{cell.Tone switch
        {
            ComparisonTone.Better => " (better)",
            ComparisonTone.Worse => " (worse)",
            _ => "",
        }}"));
    }

    private static TextBlock Block(IReadOnlyList<string> lines, double width, string? heading)
    {
        var block = new TextBlock(width);
        if (heading is not null) block.Add(heading, Heading);
        foreach (var line in lines) block.Add(line, Quiet);
        return block;
    }

    /// <summary>A block with its texts broken into lines.</summary>
    private sealed class Placed
    {
        public Placed(ComparisonBlock block)
        {
            Block = block;
            Name.Add(block.Name, Bold);
            if (block.Instead is { } instead) Instead.Add(instead, Quiet);
        }

        public ComparisonBlock Block { get; }

        public TextBlock Name { get; } = new(TextUnits);

        public TextBlock Instead { get; } = new(TextUnits);

        public double HeightUnits => BlockGap + Name.HeightUnits + (Block.Instead is null ? 2 * RowUnits : Instead.HeightUnits);
    }
}
