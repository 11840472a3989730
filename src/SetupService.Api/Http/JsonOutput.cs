using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace SetupService.Api.Http;

/// <summary>
/// Writes a value as JSON: first whole into a buffer that each thread keeps, then out with its length. So a value
/// that cannot be written (a NaN, say) is a clean 500 and never half an answer.
/// </summary>
internal static class JsonOutput
{
    // A buffer that one rare large answer has grown beyond this is let go.
    private const int LargestKept = 1 << 20;

    private static readonly JsonWriterOptions Options = new()
    {
        // Answers are JSON documents, never pasted into a page; °, ″ and – stay readable.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        SkipValidation = true,
    };

    [ThreadStatic]
    private static ArrayBufferWriter<byte>? _buffer;

    [ThreadStatic]
    private static Utf8JsonWriter? _writer;

    /// <summary>Writes the body; status, media type and other headers must be set before.</summary>
    public static Task WriteAsync<T>(HttpResponse response, T value, JsonTypeInfo<T> type)
    {
        ArrayBufferWriter<byte> buffer = Serialize(value, type);
        response.ContentLength = buffer.WrittenCount;

        // The pipe copies what it is given before it gives the thread away.
        ValueTask<System.IO.Pipelines.FlushResult> written = response.BodyWriter.WriteAsync(buffer.WrittenMemory, response.HttpContext.RequestAborted);
        if (buffer.Capacity > LargestKept)
            _buffer = null;
        return written.IsCompletedSuccessfully ? Task.CompletedTask : written.AsTask();
    }

    /// <summary>The bytes of a value that is written many times.</summary>
    public static byte[] ToBytes<T>(T value, JsonTypeInfo<T> type) => Serialize(value, type).WrittenSpan.ToArray();

    private static ArrayBufferWriter<byte> Serialize<T>(T value, JsonTypeInfo<T> type)
    {
        ArrayBufferWriter<byte> buffer = _buffer ??= new ArrayBufferWriter<byte>(4096);
        buffer.ResetWrittenCount();
        Utf8JsonWriter writer = _writer ??= new Utf8JsonWriter(buffer, Options);
        writer.Reset(buffer);
        JsonSerializer.Serialize(writer, value, type);
        writer.Flush();
        return buffer;
    }
}
