using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;

namespace SetupService.Api.Http.Documents;

/// <summary>Reads one kind of request; see <see cref="ContractReader{T}"/>.</summary>
public abstract class ContractReader
{
    /// <summary>Makes all it reads by now.</summary>
    internal abstract void Prepare();
}

/// <summary>
/// Reads one kind of request from UTF-8 JSON. The fast path binds and checks it in one pass; only where that
/// refuses, a second reader walks the text and lists every fault. What either reads by is made when it is first
/// needed, once, so that no start waits for calls that nobody asks. Safe for all threads.
/// </summary>
/// <typeparam name="T">The request document.</typeparam>
public sealed class ContractReader<T> : ContractReader
    where T : class
{
    private readonly JsonContract _contract;
    private readonly Lazy<FastPath> _fast;
    private readonly Lazy<SecondReader> _second;

    internal ContractReader(JsonContract contract)
    {
        _contract = contract;
        _fast = new(() => new FastPath(contract.StrictTypeOf<T>(), contract.RulesOf<T>()));
        _second = new(() => new SecondReader(contract.LenientTypeOf<T>(), contract.SchemaOf<T>(), contract.MappingOf<T>()));
    }

    /// <summary>
    /// Reads a request: its value, which keeps every rule between its members, or the refusal with every fault it has. What only the
    /// mapping to domain values can tell is in the refusal too, but a value may still fail it.
    /// </summary>
    /// <exception cref="InvalidOperationException">The two readers disagree, which is a mistake of ours.</exception>
    public bool Read(ReadOnlySpan<byte> utf8, [NotNullWhen(true)] out T? value, [NotNullWhen(false)] out Refusal? refusal)
    {
        refusal = null;
        var rules = _fast.Value.Rules;
        if (TryRead(utf8, out value) && (rules is null || rules.Validate(value).IsValid))
            return true;

        (var found, var sound) = Examine(utf8, rules);
        refusal = Refusal.From(found);
        if (refusal is not null)
        {
            value = null;
            return false;
        }

        // No fault against the contract: the text only spelled something in a way the fast path does not take.
        // The sound copy spells it plainly.
        if (sound is { } plain && TryRead(plain.Span, out value))
            return true;
        throw new InvalidOperationException($"The readers of {typeof(T).Name} disagree on a body.");
    }

    /// <summary>
    /// The fast path: binds the text where its types, limits and closed sets are kept. Says nothing about why not,
    /// and does not run the rules between members.
    /// </summary>
    public bool TryRead(ReadOnlySpan<byte> utf8, [NotNullWhen(true)] out T? value)
    {
        var strict = _fast.Value.Strict;
        try
        {
            value = JsonSerializer.Deserialize(ByteOrderMark.Skip(utf8), strict);
            return value is not null;
        }
        catch (Exception refusal) when (refusal is JsonException or NotSupportedException or InvalidOperationException)
        {
            // NotSupportedException: an object of several kinds that does not tell its kind.
            value = null;
            return false;
        }
    }

    /// <summary>Every fault of a text that was found wanting, with what was found first where the readers do not see it themselves.</summary>
    public Refusal Refuse(ReadOnlySpan<byte> utf8, Refusal found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return Refusal.From(Faults(utf8))?.And(found) ?? found;
    }

    /// <summary>Every fault of the text, rules and mapping included; empty where it has none.</summary>
    public IReadOnlyList<Fault> Faults(ReadOnlySpan<byte> utf8) => Examine(utf8, _fast.Value.Rules).Faults;

    /// <summary>The same by the rules of a call, which take the place of the type's own where they are given.</summary>
    internal IReadOnlyList<Fault> Faults(ReadOnlySpan<byte> utf8, IValidator<T>? rules) => Examine(utf8, rules ?? _fast.Value.Rules).Faults;

    private (IReadOnlyList<Fault> Faults, ReadOnlyMemory<byte>? Sound) Examine(ReadOnlySpan<byte> utf8, IValidator<T>? rules)
    {
        utf8 = ByteOrderMark.Skip(utf8);
        if (SyntaxScan.Find(utf8) is { } unreadable)
            return ([unreadable], null);

        var second = _second.Value;
        FaultList faults = new();
        var sound = FaultFinder.Walk(utf8, second.Schema, faults);
        if (sound is { } rest && (rules is not null || second.Mapping is not null) && JsonSerializer.Deserialize(rest.Span, second.Lenient) is { } value)
        {
            if (second.Mapping?.Refuse(value) is { } refusal)
                faults.AddUnlessKnown(refusal);
            foreach (var failure in rules?.Validate(new ValidationContext<T>(value).Knowing(faults).Under(_contract)).Errors ?? [])
                faults.AddUnlessKnown(RuleFaults.From(failure));
        }

        return (faults.ToList(), sound);
    }

    internal override void Prepare()
    {
        _ = _fast.Value;
        _ = _second.Value;
    }

    /// <summary>What the fast path reads by.</summary>
    private sealed class FastPath(JsonTypeInfo<T> strict, IValidator<T>? rules)
    {
        public JsonTypeInfo<T> Strict => strict;

        public IValidator<T>? Rules => rules;
    }

    /// <summary>What the second reader reads by.</summary>
    private sealed class SecondReader(JsonTypeInfo<T> lenient, ContractSchema schema, DocumentMapping<T>? mapping)
    {
        public JsonTypeInfo<T> Lenient => lenient;

        public ContractSchema Schema => schema;

        public DocumentMapping<T>? Mapping => mapping;
    }
}
