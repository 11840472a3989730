using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>What is known of one axle's signs and marks.</summary>
internal sealed class AxleSigns
{
    /// <summary>How many signs there are.</summary>
    public const int SignCount = (int)WearSign.CamberDifference + 1;

    /// <summary>How many marks there are.</summary>
    public const int MarkCount = (int)WearMark.TyresDiffer + 1;

    private readonly Estimate?[] _signs = new Estimate?[SignCount];
    private readonly bool?[] _marks = new bool?[MarkCount];

    /// <summary>A sign with the error of its reading; null = not known.</summary>
    public Estimate? this[WearSign sign]
    {
        get => _signs[(int)sign];
        set => _signs[(int)sign] = value;
    }

    /// <summary>Whether a mark is there; null = nobody looked.</summary>
    public bool? this[WearMark mark]
    {
        get => _marks[(int)mark];
        set => _marks[(int)mark] = value;
    }

    /// <summary>Whether anything at all is known.</summary>
    public bool IsEmpty => Array.TrueForAll(_signs, sign => sign is null) && Array.TrueForAll(_marks, mark => mark is null);
}
