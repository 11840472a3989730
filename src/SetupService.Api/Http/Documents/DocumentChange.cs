using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Documents;

/// <summary>
/// A change to a document: the members it names replace the document's, objects member by member, arrays whole (RFC 7396).
/// Null means absent, as everywhere in a request, and so changes nothing. No member is required; those it names are held to
/// the same types and limits as in the document.
/// </summary>
/// <typeparam name="T">The document.</typeparam>
public abstract class DocumentChange<T>
    where T : class
{
    /// <summary>The members named, plainly spelled, without nulls.</summary>
    internal JsonElement Members { get; init; }

    /// <summary>Whether it names a member, by its JSON Pointer (RFC 6901) within the document.</summary>
    internal bool Names(string pointer) => SentText.Reaches(Members, pointer);

    /// <summary>Whether they keep types and limits; only what is left of a refused body can hold some that do not.</summary>
    internal bool IsSound { get; init; }
}

/// <summary>Reads a change to a document where every member it names keeps the document's types and limits.</summary>
/// <typeparam name="TChange">The change.</typeparam>
/// <typeparam name="TDocument">The document.</typeparam>
public sealed class DocumentChangeConverter<TChange, TDocument> : JsonConverter<TChange>, IDocumentChangeConverter
    where TChange : DocumentChange<TDocument>, new()
    where TDocument : class
{
    private ContractSchema? _schema;

    /// <inheritdoc />
    public Type DocumentType => typeof(TDocument);

    /// <inheritdoc />
    public override TChange Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        // Nothing binds a part of a document member by member without losing which members were named, so the walk that lists
        // the faults of a whole body checks this part of it.
        _schema ??= new SchemaBuilder(options).Build(typeof(TChange));
        var sent = JsonElement.ParseValue(ref reader);
        FaultList faults = new();
        var sound = FaultFinder.Walk(JsonMarshal.GetRawUtf8Value(sent), _schema, faults);

        // What is left of a refused body is skipped through, its faults are known; a request is not.
        var isLenient = options.UnmappedMemberHandling == JsonUnmappedMemberHandling.Skip;
        return sound is { } plain && (isLenient || faults.Count == 0)
            ? new TChange { Members = JsonElement.Parse(plain.Span), IsSound = faults.Count == 0 }
            : throw new JsonException();
    }

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, TChange value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}
