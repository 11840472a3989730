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
    private readonly DocumentMerge _merge;
    private readonly ObjectSchema _schema;
    private readonly T? _bound;
    private readonly Lazy<ReadOnlyMemory<byte>> _utf8;
    private readonly Lazy<JsonElement> _members;
    private readonly SentText[] _sent;

    internal ChangedDocument(ContractReader<T> reader, DocumentMerge merge, ObjectSchema schema, T document, Func<T, byte[]> write, string pointer)
    {
        (_reader, _merge, _schema, _bound) = (reader, merge, schema, document);
        _utf8 = new(() => write(document));
        _members = new(() => JsonElement.Parse(_utf8.Value.Span));
        _sent = [new SentText(_members, pointer)];
    }

    private ChangedDocument(ChangedDocument<T> before, JsonElement change, string pointer)
    {
        (_reader, _merge, _schema) = (before._reader, before._merge, before._schema);
        _bound = before._bound is { } document ? _merge.Apply(document, change) : null;

        // Asked for where the document cannot be merged as it is bound, is refused, or a part of it is looked for.
        _utf8 = new(() => JsonMerge.Apply(_schema, before._members.Value, change));
        _members = new(() => JsonElement.Parse(_utf8.Value.Span));
        _sent = [new SentText(new(change), pointer), .. before._sent];
    }

    /// <summary>The document's members as they are now.</summary>
    internal JsonElement Members => _members.Value;

    /// <summary>The document with one change more, which stood at a place of the body.</summary>
    public ChangedDocument<T> With(DocumentChange<T> change, string pointer) => With(change.Members, pointer);

    /// <summary>The document with some members set, for which something at a place of the body stood.</summary>
    internal ChangedDocument<T> With(JsonElement members, string pointer) =>
        new(this, members, pointer);

    /// <summary>Whether the document has a value at a JSON Pointer (RFC 6901) within it.</summary>
    internal bool Has(string pointer) => SentText.Reaches(_members.Value, pointer);

    /// <summary>The document as changed; refused where it does not keep the contract, each fault at its place of the body.</summary>
    /// <param name="rules">The rules it must keep; those of its type where left out.</param>
    /// <exception cref="InvalidOperationException">The document is refused but has no fault, which is a mistake of ours.</exception>
    public MapResult<T> Read(IValidator<T>? rules = null) =>
        (_bound is { } document || _reader.TryRead(_utf8.Value.Span, out document)) && rules?.Validate(document).IsValid != false
            ? document
            : Refusal.From(Faults(rules)) ?? throw new InvalidOperationException($"A changed {typeof(T).Name} was refused but has no fault.");

    /// <summary>
    /// Every fault of the document as changed, each at the place of the body that says most about it: where a change names it,
    /// there, the last change first, else in the document.
    /// </summary>
    /// <param name="rules">The rules it must keep; those of its type where left out.</param>
    internal IReadOnlyList<Fault> Faults(IValidator<T>? rules = null) =>
        [.. _reader.Faults(_utf8.Value.Span, rules).Select(fault => fault with { Pointer = SentText.PlaceOf(fault, _sent) })];
}
