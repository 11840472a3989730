using System.Text.Json;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Documents;

/// <summary>A document with the changes made to it so far; none at first. Immutable.</summary>
/// <typeparam name="T">The document.</typeparam>
public sealed class ChangedDocument<T>
    where T : class
{
    private readonly ContractReader<T> _reader;
    private readonly ObjectSchema _schema;
    private readonly ReadOnlyMemory<byte> _utf8;
    private readonly Lazy<JsonElement> _members;
    private readonly SentText[] _sent;

    internal ChangedDocument(ContractReader<T> reader, ObjectSchema schema, ReadOnlyMemory<byte> utf8, string pointer)
    {
        _reader = reader;
        _schema = schema;
        _utf8 = utf8;
        _members = new(() => JsonElement.Parse(utf8.Span));
        _sent = [new SentText(_members, pointer)];
    }

    private ChangedDocument(ChangedDocument<T> before, ReadOnlyMemory<byte> utf8, SentText change)
    {
        _reader = before._reader;
        _schema = before._schema;
        _utf8 = utf8;
        _members = new(() => JsonElement.Parse(utf8.Span));
        _sent = [change, .. before._sent];
    }

    /// <summary>The document's members as they are now.</summary>
    internal JsonElement Members => _members.Value;

    /// <summary>The document with one change more, which stood at a place of the body.</summary>
    public ChangedDocument<T> With(DocumentChange<T> change, string pointer) => With(change.Members, pointer);

    /// <summary>The document with some members set, for which something at a place of the body stood.</summary>
    internal ChangedDocument<T> With(JsonElement members, string pointer) =>
        new(this, JsonMerge.Apply(_schema, _members.Value, members), new SentText(new(members), pointer));

    /// <summary>Whether the document has a value at a JSON Pointer (RFC 6901) within it.</summary>
    internal bool Has(string pointer) => SentText.Reaches(_members.Value, pointer);

    /// <summary>The document as changed; refused where it does not keep the contract, each fault at its place of the body.</summary>
    /// <param name="rules">The rules it must keep; those of its type where left out.</param>
    /// <exception cref="InvalidOperationException">The document is refused but has no fault, which is a mistake of ours.</exception>
    public MapResult<T> Read(IValidator<T>? rules = null) =>
        _reader.TryRead(_utf8.Span, out var document) && rules?.Validate(document).IsValid != false
            ? document
            : Refusal.From(Faults(rules)) ?? throw new InvalidOperationException($"A changed {typeof(T).Name} was refused but has no fault.");

    /// <summary>
    /// Every fault of the document as changed, each at the place of the body that says most about it: where a change names it,
    /// there, the last change first, else in the document.
    /// </summary>
    /// <param name="rules">The rules it must keep; those of its type where left out.</param>
    internal IReadOnlyList<Fault> Faults(IValidator<T>? rules = null) =>
        [.. _reader.Faults(_utf8.Span, rules).Select(fault => fault with { Pointer = SentText.PlaceOf(fault, _sent) })];
}
