using System.Buffers;
using System.IO.Pipelines;
using System.Text;
using CsCheck;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>Lines come off the pipe as they would off the whole text, however the text arrives.</summary>
public sealed class LineFeedTests
{
    private const string TooLong = "<too long>";

    private static readonly int Cap = new CapSettings().LineBytes;

    /// <summary>Texts of short lines, blank ones, and a few around and far beyond the cap.</summary>
    private static readonly Gen<string> Texts =
        Gen.Frequency(
            (20, Gen.String[Gen.Char["ab \r{}\""], 0, 12]),
            (1, Gen.Int[-2, 2].Select(off => new string('l', Cap + off))),
            (1, Gen.Int[1, 4].Select(times => new string('v', times * Cap))))
        .List[0, 12].Select(Gen.Bool, (lines, ends) => string.Join('\n', lines) + (ends ? "\n" : ""));

    [Fact]
    public async Task Any_chunking_of_any_text_gives_the_lines_of_the_whole() =>
        await Gen.Select(Texts, Gen.Int[1, 40_000].Array[1, 20]).SampleAsync(
            async (text, chunks) => Assert.Equal(Whole(text), await Fed(text, chunks)),
            iter: 400);

    [Fact]
    public async Task One_byte_at_a_time_gives_the_lines_of_the_whole() =>
        await Gen.String[Gen.Char["a\n\r"], 0, 60].SampleAsync(async text => Assert.Equal(Whole(text), await Fed(text, [1])), iter: 500);

    [Fact]
    public async Task A_line_without_an_end_is_not_held_in_memory()
    {
        // A writer that is not paused never had to wait for the feed to let go of what it wrote.
        Pipe pipe = new(new PipeOptions(pauseWriterThreshold: 3 * Cap, resumeWriterThreshold: Cap));
        LineFeed feed = new(pipe.Reader, Cap);
        var chunk = new byte[32_768];
        chunk.AsSpan().Fill((byte)'x');
        var reported = 0;
        for (var i = 0; i < 100; i++)
        {
            await pipe.Writer.WriteAsync(chunk).AsTask().WaitAsync(TimeSpan.FromSeconds(5));
            await feed.WaitAsync(CancellationToken.None);
            while (feed.TryTake(out _))
                reported++;
        }

        Assert.Equal(1, reported);
    }

    private static List<(long Number, string Text)> Whole(string text)
    {
        var lines = text.Split('\n');
        var count = lines[^1].Length == 0 ? lines.Length - 1 : lines.Length;
        return [.. Enumerable.Range(0, count).Select(i => (i + 1L, lines[i].Length > Cap ? TooLong : lines[i]))];
    }

    private static async Task<List<(long Number, string Text)>> Fed(string text, int[] chunks)
    {
        Pipe pipe = new(new PipeOptions(pauseWriterThreshold: 0, useSynchronizationContext: false));
        LineFeed feed = new(pipe.Reader, Cap);
        var bytes = Encoding.ASCII.GetBytes(text);
        List<(long, string)> taken = [];
        for (int at = 0, turn = 0; ; turn++)
        {
            var length = Math.Min(chunks[turn % chunks.Length], bytes.Length - at);
            pipe.Writer.Write(bytes.AsSpan(at, length));
            at += length;
            if (at == bytes.Length)
                await pipe.Writer.CompleteAsync();
            else
                await pipe.Writer.FlushAsync();

            await feed.WaitAsync(CancellationToken.None);
            while (feed.TryTake(out var line))
                taken.Add((feed.LineNumber, feed.IsTooLong ? TooLong : Encoding.ASCII.GetString(line)));
            if (feed.IsCompleted)
                return taken;
        }
    }
}
