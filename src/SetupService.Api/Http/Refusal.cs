using System.Collections;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http;

/// <summary>Why a document is refused: at least one fault, each with its pointer. Immutable.</summary>
public sealed class Refusal : IReadOnlyList<Fault>
{
    private readonly IReadOnlyList<Fault> _faults;

    private Refusal(IReadOnlyList<Fault> faults) => _faults = faults;

    /// <summary>A refusal for one fault.</summary>
    public Refusal(Fault fault)
        : this([fault])
    {
    }

    /// <inheritdoc />
    public int Count => _faults.Count;

    /// <inheritdoc />
    public Fault this[int index] => _faults[index];

    /// <summary>The refusal for the faults found; null where none was.</summary>
    public static Refusal? From(IReadOnlyList<Fault> faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        return faults.Count == 0 ? null : new Refusal(faults);
    }

    /// <summary>The refusal of a part that is not there.</summary>
    public static Refusal Missing() => new(Fault.At("", FaultCodes.Required, "this is missing."));

    /// <summary>The same faults, in a document that has this one as a member.</summary>
    public Refusal Under(string member) => new([.. _faults.Select(fault => fault with { Pointer = $"/{member}{fault.Pointer}" })]);

    /// <summary>These faults and, after them, those of another refusal that are not among them.</summary>
    public Refusal And(Refusal? other) =>
        other is null ? this : new([.. _faults, .. other.Where(one => !_faults.Any(known => known.Pointer == one.Pointer && known.Code == one.Code && known.Message == one.Message))]);

    /// <inheritdoc />
    public IEnumerator<Fault> GetEnumerator() => _faults.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
