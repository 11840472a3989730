using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Drawings;

/// <summary>
/// What stands under the drawing: both fittings, the schedule of gaps, the verdict of the whole check and the notes, broken into
/// lines that fit.
/// </summary>
internal sealed class Legend
{
    /// <summary>Distance between lines, text units.</summary>
    public const double LineUnits = 23;

    /// <summary>Space before and after a ruled line, text units.</summary>
    public const double RuleUnits = 15;

    /// <summary>Space between blocks that no line divides, text units.</summary>
    public const double SpaceUnits = 5;

    /// <summary>Where the text beside a swatch begins, text units from the edge of the picture.</summary>
    public const double SwatchedUnits = 74;

    private const double EndUnits = 12;
    private const double TextEm = (DrawingFrame.WidthUnits - (2 * DrawingFrame.EdgeUnits)) / Lettering.Small;
    private const double SwatchedEm = (DrawingFrame.WidthUnits - SwatchedUnits - DrawingFrame.EdgeUnits) / Lettering.Small;

    private Legend(CornerView view)
    {
        Now = view.Car.Present is { } present ? Fitting("now", present, view.Units) : ["now: not described"];
        Candidate = Fitting("candidate", view.Candidate, view.Units);
        Gaps = GapRow.All(view);
        VerdictInk = DrawingWords.StatusInk(view.Sheet.Verdict);
        Verdict = TextWrap.Lines(DrawingWords.Verdict(view), TextEm, isBold: true);
        Notes = [.. DrawingNotes.Of(view).SelectMany(note => TextWrap.Lines(note, TextEm))];
    }

    public IReadOnlyList<string> Now { get; }

    public IReadOnlyList<string> Candidate { get; }

    /// <summary>The schedule's rows; empty where no gap is known.</summary>
    public IReadOnlyList<GapRow> Gaps { get; }

    public IReadOnlyList<string> Verdict { get; }

    public InkRole VerdictInk { get; }

    public IReadOnlyList<string> Notes { get; }

    public double HeightUnits
    {
        get
        {
            var lines = Candidate.Count + Now.Count + Verdict.Count + Notes.Count + (Gaps.Count == 0 ? 0 : Gaps.Count + 1);
            var rules = Gaps.Count == 0 ? 2 : 3;
            return (lines * LineUnits) + (rules * RuleUnits) + (2 * SpaceUnits) + EndUnits;
        }
    }

    public static Legend Of(CornerView view) => new(view);

    private static List<string> Fitting(string name, in Fitting fitting, UnitSystem units) =>
    [
        .. TextWrap.Lines($"{name}: {DrawingWords.Wheel(fitting, units)}", SwatchedEm, isBold: true),
        .. TextWrap.Lines(fitting.Tyre.Marking.Text, SwatchedEm),
    ];
}
