using System.Diagnostics.CodeAnalysis;

namespace SetupService.Api.Http;

/// <summary>
/// What a mapper makes of a document: the domain's value, or the refusal with at least one fault. The default instance
/// is neither; a value or a refusal converts to a result by itself. A value costs no allocation.
/// </summary>
/// <typeparam name="T">The domain's value.</typeparam>
public readonly struct MapResult<T>
    where T : notnull
{
    private readonly T? _value;

    private MapResult(T? value, Refusal? refusal)
    {
        _value = value;
        Refusal = refusal;
    }

    /// <summary>Why there is no value; null where there is one.</summary>
    public Refusal? Refusal { get; }

    /// <summary>The result for a value.</summary>
    public static implicit operator MapResult<T>(T value) => new(value, null);

    /// <summary>The result for a refusal.</summary>
    public static implicit operator MapResult<T>(Refusal refusal) => new(default, refusal);

    /// <summary>The value, or else the refusal.</summary>
    public bool TryGet([NotNullWhen(true)] out T? value, [NotNullWhen(false)] out Refusal? refusal)
    {
        value = _value;
        refusal = Refusal;
        return refusal is null;
    }

    /// <summary>The same result of a document that stands in another as this member.</summary>
    public MapResult<T> Under(string member) => Refusal is { } refusal ? refusal.Under(member) : this;

    /// <summary>
    /// The value of a member, for a mapper that goes on to the next member where this one is refused, so that all faults come together.
    /// </summary>
    /// <param name="member">The member of the document being mapped.</param>
    /// <param name="refusal">Takes the faults of this member; a value may be used only where it is null in the end.</param>
    public T? Take(string member, ref Refusal? refusal)
    {
        if (Refusal is { } mine)
            refusal = refusal is null ? mine.Under(member) : refusal.And(mine.Under(member));
        return _value;
    }
}
