using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;

namespace SetupService.Api.Drawings.Corners;

/// <summary>One view to be drawn on, with the places its labels have taken.</summary>
internal sealed class ViewCanvas(SvgWriter svg, CornerShape shape, ViewPlace place, double unit, UnitSystem units)
{
    // Words may stand a little further off to be clear of lines.
    private const double WordStepCost = 0.15;

    private const double LineSpacing = 1.22;
    private const double BaselineShare = 0.78;

    public SvgWriter Svg => svg;

    public CornerShape Shape => shape;

    public ViewPlace Place => place;

    /// <summary>Size of a text unit, mm.</summary>
    public double Unit => unit;

    public UnitSystem Units => units;

    public bool IsFront => place.Projection.IsFront;

    public LabelPlacer Labels { get; } = new(place.Region);

    /// <summary>The id of a group: plain in the view from behind, with the view's name in the other, since ids are the document's.</summary>
    public string Id(string name) => IsFront ? name : $"side-{name}";

    public (double X, double Y) ToPage(Vector3 point) => place.Projection.ToPage(point);

    /// <summary>A line, as far as it is inside the view; labels keep clear of it.</summary>
    public void Line(Vector3 from, Vector3 to, Pen pen) => Line(ToPage(from), ToPage(to), pen);

    /// <summary>A line of the picture, as far as it is inside the view; labels keep clear of it.</summary>
    public void Line((double X, double Y) from, (double X, double Y) to, Pen pen)
    {
        if (place.Region.Clip(from, to) is not { } inside) return;
        svg.Line(inside.From.X, inside.From.Y, inside.To.X, inside.To.Y, pen);
        Labels.Keep(inside.From, inside.To);
    }

    /// <summary>A label at the best of several places for its middle; lines of text one under another.</summary>
    public PictureBox Label(IReadOnlyList<string> lines, Lettering lettering, IEnumerable<(double X, double Y)> centres, double stepCost = WordStepCost)
    {
        var size = lettering.Size * unit;
        var width = lines.Max(line => TextWidth.Em(line, lettering.IsBold)) * size;
        var box = Labels.Place(width, lines.Count * LineSpacing * size, centres, stepCost);
        for (var i = 0; i < lines.Count; i++)
        {
            var baseline = box.Top + ((i + BaselineShare) * LineSpacing * size);
            svg.Letters((box.Left + box.Right) / 2, baseline, lines[i], lettering with { Anchor = "middle", HasHalo = true });
        }

        return box;
    }
}

/// <summary>Where one view stands in the picture.</summary>
/// <param name="Projection">How points get there.</param>
/// <param name="Region">The room for lines and labels.</param>
/// <param name="HeadingY">Baseline of the view's heading.</param>
/// <param name="GroundY">The ground.</param>
/// <param name="DimensionY">Where distances along the ground are dimensioned.</param>
/// <param name="CaptionY">Baseline of the words for the directions.</param>
internal sealed record ViewPlace(
    ViewProjection Projection, PictureBox Region, double HeadingY, double GroundY, double DimensionY, double CaptionY);

/// <summary>
/// Turns points of the corner into points of the picture. Seen from behind, the left of the car is on the left; seen from the left,
/// its front is. Both views keep millimetres.
/// </summary>
/// <param name="IsFront">Whether this is the view along the car, from behind; else the one from the left.</param>
/// <param name="ShiftX">The picture's x of the axes' origin, mm.</param>
/// <param name="ShiftY">The picture's y of it, mm.</param>
internal readonly record struct ViewProjection(bool IsFront, double ShiftX, double ShiftY)
{
    public ViewPoint Flat(in Vector3 point) => new(IsFront ? point.Y : point.X, point.Z);

    public (double X, double Y) ToPage(ViewPoint point) => (ShiftX - point.AlongMm, ShiftY - point.HeightMm);

    public (double X, double Y) ToPage(in Vector3 point) => ToPage(Flat(point));
}

/// <summary>A point of one view, mm.</summary>
/// <param name="AlongMm">Front view: to the left of the centre plane (y). Side view: forward (x).</param>
/// <param name="HeightMm">Upward (z), in the axes of the points.</param>
public readonly record struct ViewPoint(double AlongMm, double HeightMm);
