using System.Buffers;
using System.Runtime.InteropServices;
using System.Text.Json;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Documents;

/// <summary>
/// Merges a change into a document (RFC 7396, both without nulls): objects member by member, everything else whole. An object of several kinds
/// is replaced whole where the change names another kind than it is of: the members of the old kind mean nothing in the new.
/// </summary>
internal static class JsonMerge
{
    /// <summary>The document as changed. Both must keep the schema, and only members of the schema are written.</summary>
    public static ReadOnlyMemory<byte> Apply(ObjectSchema schema, JsonElement document, JsonElement change)
    {
        ArrayBufferWriter<byte> merged = new(JsonMarshal.GetRawUtf8Value(document).Length + JsonMarshal.GetRawUtf8Value(change).Length);
        using Utf8JsonWriter writer = new(merged, new JsonWriterOptions { SkipValidation = true });
        Write(writer, schema, document, change);
        writer.Flush();
        return merged.WrittenMemory;
    }

    private static void Write(Utf8JsonWriter writer, ObjectSchema schema, JsonElement document, JsonElement change)
    {
        writer.WriteStartObject();
        foreach (var member in schema.Members)
        {
            var isThere = document.TryGetProperty(member.NameUtf8, out var from);
            var isChanged = change.TryGetProperty(member.NameUtf8, out var to);
            if (!isThere && !isChanged)
                continue;

            writer.WritePropertyName(member.NameUtf8);
            if (isThere && isChanged && member.Schema is ObjectSchema inner && AreMerged(inner, from, to))
                Write(writer, inner, from, to);
            else
                writer.WriteRawValue(JsonMarshal.GetRawUtf8Value(isChanged ? to : from), skipInputValidation: true);
        }

        writer.WriteEndObject();
    }

    private static bool AreMerged(ObjectSchema schema, JsonElement from, JsonElement to) =>
        from.ValueKind == JsonValueKind.Object && to.ValueKind == JsonValueKind.Object
        && (schema.Discriminator is null
            || !to.TryGetProperty(schema.Discriminator, out var named)
            || (from.TryGetProperty(schema.Discriminator, out var kind) && named.ValueEquals(kind.GetString())));
}
