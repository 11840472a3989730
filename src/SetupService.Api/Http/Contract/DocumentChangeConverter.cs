using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Contract;

/// <summary>Reads a change to a document where every member it names keeps the document's types and limits.</summary>
/// <typeparam name="TChange">The change.</typeparam>
/// <typeparam name="TDocument">The document.</typeparam>
public sealed class DocumentChangeConverter<TChange, TDocument> : JsonConverter<TChange>, IDocumentChangeConverter
    where TChange : DocumentChange<TDocument>, new()
    where TDocument : class
{
    private ContractShape? _shape;

    /// <inheritdoc />
    public Type DocumentType => typeof(TDocument);

    /// <inheritdoc />
    public override TChange Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        // Nothing binds a part of a document member by member without losing which members were named, so the walk that lists
        // the faults of a whole body checks this part of it.
        _shape ??= new ShapeBuilder(options).Build(typeof(TChange));
        var sent = JsonElement.ParseValue(ref reader);
        FaultList faults = new();
        var sound = FaultFinder.Walk(JsonMarshal.GetRawUtf8Value(sent), _shape, faults);

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
