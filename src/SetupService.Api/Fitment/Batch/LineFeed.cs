using System.Buffers;
using System.IO.Pipelines;
using SetupService.Api.Http.Documents;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// Reads lines from a pipe in bounded memory: a line longer than the limit is reported once, with no more
/// of its text than the limit, and skipped to its end.
/// </summary>
/// <param name="pipe">The bytes.</param>
/// <param name="mostBytes">Most bytes of a line.</param>
internal sealed class LineFeed(PipeReader pipe, int mostBytes)
{
    private ReadOnlySequence<byte> _buffer;
    private byte[] _scratch = [];
    private bool _skipping;
    private bool _isReading;

    /// <summary>Most bytes of a line.</summary>
    public int MostBytes { get; } = mostBytes;

    /// <summary>Number of the last line read, from 1; 0 before the first.</summary>
    public long LineNumber { get; private set; }

    /// <summary>True when the last bytes of the body have arrived.</summary>
    public bool IsCompleted { get; private set; }

    /// <summary>True when the last line read was longer than the limit.</summary>
    public bool IsTooLong { get; private set; }

    /// <summary>Waits for bytes, and tells how many came. Then read lines until there is none, and wait again.</summary>
    /// <exception cref="OperationCanceledException">None came in time, or the caller went away.</exception>
    public async ValueTask<long> WaitAsync(CancellationToken cancellation)
    {
        // Bytes examined but not consumed stay in the pipe; the next read returns them again, followed by new ones.
        var left = _buffer.Length;
        Finish();
        var read = await pipe.ReadAsync(cancellation).ConfigureAwait(false);
        _buffer = read.Buffer;
        _isReading = true;
        IsCompleted = read.IsCompleted;
        return _buffer.Length - left;
    }

    /// <summary>Returns the unread bytes to the pipe, so that the server can treat the rest as it does with any body.</summary>
    public void Finish()
    {
        if (_isReading)
            pipe.AdvanceTo(_buffer.Start, _buffer.End);
        _isReading = false;
    }

    /// <summary>Reads the next line, without its ending; false where no whole line has arrived.</summary>
    public bool TryTake(out ReadOnlySequence<byte> line)
    {
        line = default;
        while (true)
        {
            var end = _buffer.PositionOf((byte)'\n');
            if (end is null && !(IsCompleted && !_buffer.IsEmpty))
                return TakeExcess(out line);

            line = end is { } position ? _buffer.Slice(0, position) : _buffer;
            _buffer = end is { } taken ? _buffer.Slice(_buffer.GetPosition(1, taken)) : _buffer.Slice(_buffer.End);
            if (_skipping)
            {
                // The rest of a line that was reported already.
                _skipping = false;
                continue;
            }

            LineNumber++;
            IsTooLong = line.Length > MostBytes;
            if (IsTooLong)
                line = line.Slice(0, MostBytes);
            return true;
        }
    }

    /// <summary>The bytes of a line in one piece, without a byte order mark; they hold until the next line is taken.</summary>
    public ReadOnlySpan<byte> Text(in ReadOnlySequence<byte> line)
    {
        if (line.IsSingleSegment)
            return ByteOrderMark.Skip(line.FirstSpan);

        if (_scratch.Length == 0)
            _scratch = new byte[MostBytes];
        line.CopyTo(_scratch);
        return ByteOrderMark.Skip(_scratch.AsSpan(0, (int)line.Length));
    }

    /// <summary>True when there is nothing on a line.</summary>
    public static bool IsBlank(ReadOnlySpan<byte> utf8) => utf8.IndexOfAnyExcept(" \t\r"u8) < 0;

    /// <summary>Drops bytes of a line that is too long and has no end yet; true when the line is reported now.</summary>
    private bool TakeExcess(out ReadOnlySequence<byte> start)
    {
        start = default;
        if (_buffer.Length <= MostBytes)
            return false;

        var isNew = !_skipping;
        _skipping = true;
        if (isNew)
        {
            start = _buffer.Slice(0, MostBytes);
            LineNumber++;
            IsTooLong = true;
        }

        _buffer = _buffer.Slice(_buffer.End);
        return isNew;
    }
}
