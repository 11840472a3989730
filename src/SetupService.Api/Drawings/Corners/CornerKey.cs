using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Api.Drawings.Corners;

/// <summary>What stands under the views: angles and offsets, the names of the points, what the lines are, notes.</summary>
internal sealed class CornerKey
{
    private const double TextUnits = DrawingFrame.WidthUnits - (2 * DrawingFrame.EdgeUnits);
    private const double RowUnits = 23;
    private const double NumberUnits = 32;
    private const double ColumnGapUnits = 14;
    private const double RuleUnits = 20;

    private static readonly Lettering Plain = new(Lettering.Small, InkRole.Ink);
    private static readonly Lettering Number = new(Lettering.Small, InkRole.Ink, IsBold: true);
    private static readonly Lettering Quiet = new(Lettering.Small, InkRole.Soft);

    private readonly TextBlock _figures = new(TextUnits);
    private readonly TextBlock _notes = new(TextUnits);
    private readonly FlowLegend _lines;
    private readonly List<(double X, double Y, string Text, Lettering Lettering)> _names = [];
    private readonly double _namesUnits;

    public CornerKey(CornerShape shape, UnitSystem units)
    {
        foreach (var figure in CornerWords.Figures(shape, units)) _figures.Add(figure, Plain);
        foreach (var note in CornerWords.Notes(shape)) _notes.Add(note, Quiet);
        _lines = new(CornerSamples.List(shape), TextUnits);
        _namesUnits = AddNames(shape.Views.Points);
    }

    public double HeightUnits =>
        RuleUnits + _figures.HeightUnits + RuleUnits + _namesUnits + (RuleUnits / 2) + _lines.HeightUnits
        + (_notes.IsEmpty ? 0 : RuleUnits + _notes.HeightUnits);

    public void Paint(SvgWriter svg, double unit, double left, double top)
    {
        svg.OpenGroup("key");
        var (x, y) = (left + (DrawingFrame.EdgeUnits * unit), top);
        Rule();
        _figures.Write(svg, unit, x, y);
        y += _figures.HeightUnits * unit;
        Rule();
        foreach (var name in _names) svg.Letters(x + (name.X * unit), y + ((name.Y + (0.76 * RowUnits)) * unit), name.Text, name.Lettering);
        y += (_namesUnits + (RuleUnits / 2)) * unit;
        _lines.Paint(svg, unit, x, y);
        y += _lines.HeightUnits * unit;
        if (!_notes.IsEmpty)
        {
            Rule();
            _notes.Write(svg, unit, x, y);
        }

        svg.Close();

        void Rule()
        {
            svg.Line(x, y + (RuleUnits / 2 * unit), x + (TextUnits * unit), y + (RuleUnits / 2 * unit), Pen.Full(InkRole.Soft, 0.8));
            y += RuleUnits * unit;
        }
    }

    /// <summary>Numbers and names, in two columns where all names fit half the width; answers the height.</summary>
    private double AddNames(IReadOnlyList<CornerPoint> points)
    {
        var half = (TextUnits - ColumnGapUnits) / 2;
        var columns = points.All(point => (TextWidth.Em(point.Name, isBold: false) * Plain.Size) + NumberUnits <= half) ? 2 : 1;
        var perColumn = (points.Count + columns - 1) / columns;
        var (row, lowest) = (0, 0);
        for (var i = 0; i < points.Count; i++)
        {
            if (i % Math.Max(1, perColumn) == 0) row = 0;
            var x = i / Math.Max(1, perColumn) * (half + ColumnGapUnits);
            _names.Add((x, row * RowUnits, $"{i + 1}", Number));
            var width = (columns == 2 ? half : TextUnits) - NumberUnits;
            foreach (var line in TextWrap.Lines(points[i].Name, width / Plain.Size)) _names.Add((x + NumberUnits, row++ * RowUnits, line, Plain));
            lowest = Math.Max(lowest, row);
        }

        return lowest * RowUnits;
    }
}
