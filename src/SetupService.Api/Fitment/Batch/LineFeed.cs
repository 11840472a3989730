using System.Buffers;
using System.IO.Pipelines;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// Takes lines off a pipe as they come, in memory that does not grow: a line longer than the cap is reported once, with no more
/// of its text than the cap, and skipped to its end.
/// </summary>
internal sealed class LineFeed(PipeReader pipe)
{
    private ReadOnlySequence<byte> _buffer;
    private bool _skipping;
    private bool _isReading;

    /// <summary>Number of the line taken last, from 1.</summary>
    public long LineNumber { get; private set; }

    /// <summary>Whether everything sent has been taken.</summary>
    public bool IsCompleted { get; private set; }

    /// <summary>Whether the line taken last was longer than the cap.</summary>
    public bool IsTooLong { get; private set; }

    /// <summary>Waits for bytes. After it, take lines until there is none, then wait again.</summary>
    /// <exception cref="OperationCanceledException">None came in time, or the caller went away.</exception>
    public async ValueTask WaitAsync(CancellationToken cancellation)
    {
        // Whatever was looked at and not taken stays; the next read brings it again with more behind it.
        Finish();
        var read = await pipe.ReadAsync(cancellation).ConfigureAwait(false);
        _buffer = read.Buffer;
        _isReading = true;
        IsCompleted = read.IsCompleted;
    }

    /// <summary>Hands back what was read, so that the server can do with the rest what it does with any body.</summary>
    public void Finish()
    {
        if (_isReading)
            pipe.AdvanceTo(_buffer.Start, _buffer.End);
        _isReading = false;
    }

    /// <summary>Takes the next line, without its ending; false where no whole line is at hand.</summary>
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
            IsTooLong = line.Length > BatchLimits.LineBytes;
            if (IsTooLong)
                line = line.Slice(0, BatchLimits.LineBytes);
            return true;
        }
    }

    /// <summary>Drops what is longer than a line may be and has no end yet; true where it is reported now.</summary>
    private bool TakeExcess(out ReadOnlySequence<byte> start)
    {
        start = default;
        if (_buffer.Length <= BatchLimits.LineBytes)
            return false;

        var isNew = !_skipping;
        _skipping = true;
        if (isNew)
        {
            start = _buffer.Slice(0, BatchLimits.LineBytes);
            LineNumber++;
            IsTooLong = true;
        }

        _buffer = _buffer.Slice(_buffer.End);
        return isNew;
    }
}
