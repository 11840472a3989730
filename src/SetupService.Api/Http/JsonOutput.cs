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
        var buffer = Serialize(value, type);
        response.ContentLength = buffer.WrittenCount;
        if (buffer.Capacity > LargestKept)
            _buffer = null;

        // The buffer is the thread's: it must be copied before anything is awaited.
        var started = response.StartAsync(response.HttpContext.RequestAborted);
        if (!started.IsCompletedSuccessfully)
            return WriteLaterAsync(response, started, buffer.WrittenSpan.ToArray());

        response.BodyWriter.Write(buffer.WrittenSpan);
        var flushed = response.BodyWriter.FlushAsync(response.HttpContext.RequestAborted);
        return flushed.IsCompletedSuccessfully ? Task.CompletedTask : flushed.AsTask();
    }

    /// <summary>The bytes of a value that is written many times.</summary>
    public static byte[] ToBytes<T>(T value, JsonTypeInfo<T> type) => Serialize(value, type).WrittenSpan.ToArray();

    private static async Task WriteLaterAsync(HttpResponse response, Task started, byte[] bytes)
    {
        await started.ConfigureAwait(false);
        await response.BodyWriter.WriteAsync(bytes, response.HttpContext.RequestAborted).ConfigureAwait(false);
    }

    private static ArrayBufferWriter<byte> Serialize<T>(T value, JsonTypeInfo<T> type)
    {
        var buffer = _buffer ??= new ArrayBufferWriter<byte>(4096);
        buffer.ResetWrittenCount();
        var writer = _writer ??= new Utf8JsonWriter(buffer, Options);
        writer.Reset(buffer);
        JsonSerializer.Serialize(writer, value, type);
        writer.Flush();
        return buffer;
    }
}
