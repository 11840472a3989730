using SetupService.Api.Tyres;
using SetupService.Api.Wheels;

namespace SetupService.Api.Fitment.Batch;

/// <summary>The candidate of one row. Filled anew for each row; the texts that rows repeat are made once.</summary>
internal sealed class CsvRow
{
    private const int MostTexts = 4096;

    private readonly HashSet<string> _texts = new(StringComparer.Ordinal);
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> _lookup;

    public CsvRow() => _lookup = _texts.GetAlternateLookup<ReadOnlySpan<char>>();

    public string? Id { get; set; }

    public WheelDocument Wheel { get; private set; } = new();

    public TyreDocument Tyre { get; private set; } = new();

    public FittingDocument Candidate { get; } = new();

    /// <summary>Whether the cells that every candidate needs were filled; a wheel of no width or diameter is within no limits.</summary>
    public bool IsComplete => Wheel.RimDiameterIn > 0 && Wheel.RimWidthIn > 0 && HasOffset && Tyre.Marking.Length > 0;

    /// <summary>Whether an offset was given; 0 is one.</summary>
    public bool HasOffset { get; set; }

    /// <summary>Empties every member.</summary>
    public void Clear()
    {
        Id = null;
        HasOffset = false;
        Wheel = new WheelDocument();
        Tyre = new TyreDocument();
        Candidate.Wheel = Wheel;
        Candidate.Tyre = Tyre;
    }

    /// <summary>The text of a cell, made once for all the rows that repeat it.</summary>
    public string Intern(ReadOnlySpan<char> cell)
    {
        if (_lookup.TryGetValue(cell, out var known))
            return known;

        var text = cell.ToString();
        if (_texts.Count >= MostTexts)
            _texts.Clear();
        _texts.Add(text);
        return text;
    }
}
