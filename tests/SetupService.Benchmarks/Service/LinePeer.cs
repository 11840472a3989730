using System.Buffers;
using System.Diagnostics;
using System.IO.Pipelines;
using System.Text.Json;
using System.Text.Json.Serialization;
using SetupService.Api.Fitment.Batch;

namespace SetupService.Benchmarks.Service;

/// <summary>The peer of the NDJSON batch: only reads the lines and writes lines of the same kind, with source-generated System.Text.Json.</summary>
internal static class LinePeer
{
    private const int WarmUps = 3;

    public static int Run(string input, string output)
    {
        // The service has its warm-up before it is measured, so the peer has one too.
        for (var i = 0; i < WarmUps; i++)
            CopyAsync(input, output).GetAwaiter().GetResult();
        var watch = Stopwatch.StartNew();
        var lines = CopyAsync(input, output).GetAwaiter().GetResult();
        Console.WriteLine(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{lines / watch.Elapsed.TotalSeconds:F0}"));
        return 0;
    }

    public static async Task<long> CopyAsync(string input, string output)
    {
        await using var from = File.OpenRead(input);
        await using var to = File.Create(output);
        var reader = PipeReader.Create(from, new StreamPipeReaderOptions(bufferSize: 65_536));
        ArrayBufferWriter<byte> buffer = new(65_536);
        using Utf8JsonWriter writer = new(buffer, new JsonWriterOptions { SkipValidation = true });
        long lines = 0;
        while (true)
        {
            var read = await reader.ReadAsync();
            var rest = read.Buffer;
            while (TryLine(ref rest, out var line))
            {
                Copy(line, ++lines, writer, buffer);
                if (buffer.WrittenCount > 32_768)
                {
                    await to.WriteAsync(buffer.WrittenMemory);
                    buffer.ResetWrittenCount();
                }
            }

            reader.AdvanceTo(rest.Start, rest.End);
            if (read.IsCompleted)
                break;
        }

        await to.WriteAsync(buffer.WrittenMemory);
        return lines;
    }

    private static bool TryLine(ref ReadOnlySequence<byte> rest, out ReadOnlySequence<byte> line)
    {
        var end = rest.PositionOf((byte)'\n');
        line = end is { } at ? rest.Slice(0, at) : default;
        if (end is { } position)
            rest = rest.Slice(rest.GetPosition(1, position));
        return end is not null;
    }

    private static void Copy(in ReadOnlySequence<byte> line, long number, Utf8JsonWriter writer, ArrayBufferWriter<byte> buffer)
    {
        Utf8JsonReader json = new(line);
        var candidate = JsonSerializer.Deserialize(ref json, LinePeerContext.Default.BatchCandidateLine)!;
        PeerLine answer = new(number, candidate.Id?.Text, "caution", "inboardClearance", (candidate.Candidate!.Wheel.OffsetMm ?? 0) / 3, (candidate.Candidate.Wheel.RimWidthIn ?? 0) / 7, [], ["springSeatClearance"]);
        writer.Reset(buffer);
        JsonSerializer.Serialize(writer, answer, LinePeerContext.Default.PeerLine);
        writer.Flush();
        buffer.Write("\n"u8);
    }

    internal sealed record PeerLine(
        long Line, string? Id, string Verdict, string Governing, double ProbableMm, double WorstCaseMm, string[] Failed, string[] Unknown);
}

/// <summary>The peer's own JSON types, with nothing switched on that the service switches on.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(BatchCandidateLine))]
[JsonSerializable(typeof(LinePeer.PeerLine))]
internal sealed partial class LinePeerContext : JsonSerializerContext;
