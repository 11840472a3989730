using System.Text;
using CsCheck;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>What the table reader gets of a table: the same text, with rows over the cap shortened, however it arrives.</summary>
public sealed class TableStreamTests
{
    private static readonly int Cap = new CapSettings().LineBytes;

    private static readonly Gen<string> Cells = Gen.Frequency(
        (20, Gen.String[Gen.Char["ab,c "], 0, 10]),
        (5, Gen.String[Gen.Char["a,\"\n\r"], 0, 10].Select(text => "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"")),
        (1, Gen.Int[-20, 20].Select(off => new string('l', Cap + off))),
        (1, Gen.Int[1, 2000].Select(lines => "\"" + string.Concat(Enumerable.Repeat(new string('q', 99) + "\n", lines)) + "\"")));

    private static readonly Gen<string[]> Rows = Cells.Array[1, 4].Select(cells => string.Join(',', cells)).Array[1, 8];

    [Fact]
    public async Task Short_rows_pass_as_they_are_and_long_ones_end_where_rows_end() =>
        await Gen.Select(Rows, Gen.Int[1, 30_000].Array[1, 12], Gen.Bool).SampleAsync(
            async (rows, chunks, crlf) =>
            {
                var end = crlf ? "\r\n" : "\n";
                var text = string.Concat(rows.Select(row => row + end));
                using var table = Table(text, chunks);
                var read = SplitRows(await ReadAll(table, chunks));
                Assert.Equal(rows.Length, read.Length);
                int sent = 1, seen = 1;
                for (var i = 0; i < rows.Length; i++)
                {
                    var isCut = rows[i].Length + end.Length > Cap;
                    Assert.Equal(isCut, table.WasCut(seen));
                    Assert.Equal(sent, table.LineSent(seen));
                    if (isCut)
                        Assert.True(read[i].Length <= Cap + 1 && read[i].Count(letter => letter == '"') % 2 == 0);
                    else
                        Assert.Equal(rows[i], read[i].TrimEnd('\r'));
                    sent += 1 + rows[i].Count(letter => letter == '\n');
                    seen += 1 + read[i].Count(letter => letter == '\n');
                }
            },
            iter: 300);

    [Fact]
    public async Task Answers_gathered_are_sent_before_the_caller_is_waited_for()
    {
        var sent = 0;
        using var flow = BatchFlowTests.Unlimited();
        using TableStream table = new(new Pieces("a,b\nc,d\n", [4]), flow, () =>
        {
            sent++;
            return ValueTask.CompletedTask;
        });
        var buffer = new byte[100];

        Assert.Equal(4, await table.ReadAsync(buffer));
        Assert.Equal(1, sent);
        Assert.Equal(4, await table.ReadAsync(buffer));
        Assert.Equal(0, await table.ReadAsync(buffer));
        Assert.Equal(3, sent);
    }

    private static TableStream Table(string text, int[] chunks) =>
        new(new Pieces(text, chunks), BatchFlowTests.Unlimited(), static () => ValueTask.CompletedTask);

    private static async Task<string> ReadAll(TableStream table, int[] chunks)
    {
        using MemoryStream whole = new();
        var buffer = new byte[40_000];
        for (var turn = 0; ; turn++)
        {
            var read = await table.ReadAsync(buffer.AsMemory(0, Math.Max(1, chunks[turn % chunks.Length])));
            if (read == 0)
                return Encoding.UTF8.GetString(whole.ToArray());
            whole.Write(buffer, 0, read);
        }
    }

    /// <summary>Rows end at line feeds outside quotes.</summary>
    private static string[] SplitRows(string text)
    {
        List<string> rows = [];
        var from = 0;
        var isQuoted = false;
        for (var i = 0; i < text.Length; i++)
        {
            isQuoted ^= text[i] == '"';
            if (text[i] != '\n' || isQuoted)
                continue;
            rows.Add(text[from..i]);
            from = i + 1;
        }

        Assert.Equal(text.Length, from);
        return [.. rows];
    }

    /// <summary>A stream that hands its bytes out in pieces of given sizes.</summary>
    private sealed class Pieces(string text, int[] sizes) : MemoryStream(Encoding.UTF8.GetBytes(text))
    {
        private int _turn;

        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) =>
            base.ReadAsync(buffer[..Math.Min(buffer.Length, sizes[_turn++ % sizes.Length])], cancellationToken);
    }
}
