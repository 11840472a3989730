using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Outlines;

namespace SetupService.Api.Drawings;

/// <summary>
/// Where everything stands: the section in the middle, a column for dimensions on either side, title above, legend below. One
/// unit of the picture is 1 mm; <see cref="UnitMm"/> is the size that letters and lines are measured in.
/// </summary>
internal sealed record DrawingFrame
{
    /// <summary>Width of the picture in text units; at 400 pixels a text unit is 0.71 pixels.</summary>
    public const double WidthUnits = 560;

    /// <summary>Clear paper at the picture's edge, text units.</summary>
    public const double EdgeUnits = 18;

    /// <summary>Width of a column for dimensions, text units.</summary>
    public const double ColumnUnits = 140;

    /// <summary>Where a text in a column begins, text units from the section.</summary>
    public const double ColumnIndentUnits = 26;

    /// <summary>The widest a text in a column may be, text units.</summary>
    public const double ColumnTextUnits = ColumnUnits - ColumnIndentUnits - 6;

    private const double BesideWallMm = 12;
    private const double TitleUnits = 52;
    private const double RadialLabelUnits = 84;
    private const double SideLabelUnits = 90;
    private const double CaptionUnits = 32;

    // A picture may be this many times as high as it is wide before it is widened.
    private const double SlenderestSection = 1.7;

    /// <summary>Size of a text unit, mm.</summary>
    public required double UnitMm { get; init; }

    public required double LeftMm { get; init; }

    public required double TopMm { get; init; }

    public required double HeightMm { get; init; }

    public double WidthMm => WidthUnits * UnitMm;

    public double RightMm => LeftMm + WidthMm;

    /// <summary>Left end of what is drawn between the columns, x.</summary>
    public required double ContentLeftMm { get; init; }

    /// <summary>Right end of it, x.</summary>
    public required double ContentRightMm { get; init; }

    /// <summary>Upper end of the arch and of what stands inboard, y.</summary>
    public required double WallTopMm { get; init; }

    /// <summary>Baseline of the captions under the wheel, y.</summary>
    public required double CaptionMm { get; init; }

    /// <summary>Upper end of the legend, y.</summary>
    public required double LegendTopMm { get; init; }

    public static DrawingFrame Around(CornerView view, double legendUnits)
    {
        var box = Content(view);
        var hasCrown = view.LineAt(CheckId.RadialClearance) is not null;
        var highestMm = hasCrown ? box.HighestMm : box.HighestMm + BesideWallMm;
        var (left, right) = (SvgPath.X(box.OutermostMm) - BesideWallMm, SvgPath.X(box.InnermostMm) + BesideWallMm);
        var (top, bottom) = (SvgPath.Y(highestMm), SvgPath.Y(box.LowestMm));
        var widthMm = Math.Max(
            Math.Max(WidthUnits, (right - left) * WidthUnits / (WidthUnits - (2 * ColumnUnits))),
            (bottom - top) / SlenderestSection);
        var unit = widthMm / WidthUnits;
        var sideLabelMm = SvgPath.Y(view.CandidateOutlines.EdgeHeightMm) - (SideLabelUnits / 2 * unit);
        var topMm = Math.Min(top - (hasCrown ? RadialLabelUnits * unit : 0), sideLabelMm) - (TitleUnits * unit);
        var captionMm = bottom + (CaptionUnits * unit);
        var legendMm = captionMm + (18 * unit);
        return new DrawingFrame
        {
            UnitMm = unit,
            LeftMm = ((left + right) / 2) - (widthMm / 2),
            TopMm = topMm,
            HeightMm = legendMm + (legendUnits * unit) - topMm,
            ContentLeftMm = left,
            ContentRightMm = right,
            WallTopMm = top,
            CaptionMm = captionMm,
            LegendTopMm = legendMm,
        };
    }

    private static OutlineExtremes Content(CornerView view)
    {
        var box = view.CandidateOutlines.Extremes
            .With(view.CandidateOutlines.Disc.Extremes)
            .With(view.Hub.Flange.Extremes);
        if (view.CandidateOutlines.InnerProfile is { } profile) box = box.With(profile.Extremes);
        if (view.Hub.Caliper is { } caliper) box = box.With(caliper.Extremes);
        if (view.PresentOutlines is { } present) box = box.With(present.Extremes).With(present.Disc.Extremes);
        foreach (var line in view.Lines)
        {
            foreach (var positionMm in (ReadOnlySpan<double>)[line.PositionMm, line.MeasuredMm])
            {
                box = line.Place == CheckId.RadialClearance
                    ? box with { HighestMm = Math.Max(box.HighestMm, positionMm) }
                    : box with { OutermostMm = Math.Max(box.OutermostMm, positionMm), InnermostMm = Math.Min(box.InnermostMm, positionMm) };
            }
        }

        return box;
    }
}

/// <summary>Writes the heading, and under the wheel which side is which.</summary>
internal static class CaptionPainter
{
    public static void Paint(SvgWriter svg, CornerView view, DrawingFrame frame)
    {
        var unit = frame.UnitMm;
        var (left, right) = (frame.LeftMm + (DrawingFrame.EdgeUnits * unit), frame.RightMm - (DrawingFrame.EdgeUnits * unit));
        svg.Letters(left, frame.TopMm + (34 * unit), DrawingWords.Heading(view.Car.Position), new Lettering(Lettering.Figure, InkRole.Ink, IsBold: true));
        DirectionArrow.Paint(svg, left, frame.CaptionMm, unit);
        DirectionArrow.Paint(svg, right, frame.CaptionMm, -unit);
        var indent = (DirectionArrow.LengthUnits + 7) * unit;
        svg.Letters(left + indent, frame.CaptionMm, "outboard", new Lettering(Lettering.Small, InkRole.Soft));
        svg.Letters(right - indent, frame.CaptionMm, "inboard", new Lettering(Lettering.Small, InkRole.Soft, Anchor: "end"));
        svg.Letters((left + right) / 2, frame.CaptionMm, "ground", new Lettering(Lettering.Small, InkRole.Soft, Anchor: "middle"));
    }
}
