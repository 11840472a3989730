namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// The text of a table on its way to the CSV reader. Keeps rows within the cap, so that the reader's memory cannot grow: what
/// is beyond it in a row is dropped, the row's quotes are closed, and its line is remembered. Before it waits for the caller it sends
/// the answers gathered so far.
/// </summary>
/// <param name="source">The bytes of the part.</param>
/// <param name="flow">Bounds every wait.</param>
/// <param name="sendAsync">Sends what is gathered.</param>
internal sealed class TableStream(Stream source, BatchFlow flow, Func<ValueTask> sendAsync) : Stream
{
    private const byte Quote = (byte)'"';
    private const byte LineFeed = (byte)'\n';

    private readonly int _mostBytes = flow.Caps.LineBytes;
    private readonly Queue<CutRow> _cutRows = new();
    private CutRow? _cutRow;
    private int _line = 1;
    private int _rowStartLine = 1;
    private int _droppedBefore;
    private long _rowBytes;
    private bool _isQuoted;
    private int _read;

    /// <inheritdoc />
    public override bool CanRead => true;

    /// <inheritdoc />
    public override bool CanSeek => false;

    /// <inheritdoc />
    public override bool CanWrite => false;

    /// <inheritdoc />
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc />
    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <summary>True when the row that starts at a line, as the reader counts lines, was cut; call in ascending order.</summary>
    public bool WasCut(int line)
    {
        PassBefore(line);
        return _cutRows.TryPeek(out var next) && next.Line == line;
    }

    /// <summary>The line number in what was sent for the reader's <paramref name="line"/>, which does not count dropped lines. Call in ascending order.</summary>
    public int LineSent(int line)
    {
        PassBefore(line);
        return line + _droppedBefore;
    }

    /// <inheritdoc />
    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        while (true)
        {
            await sendAsync().ConfigureAwait(false);
            await flow.WaitAsync(async token => _read = await source.ReadAsync(buffer, token).ConfigureAwait(false)).ConfigureAwait(false);
            if (_read == 0)
                return 0;

            // Cutting never makes the text longer: a cut row loses at least as many bytes as its closing quote needs.
            var kept = Keep(buffer.Span[.._read]);
            if (kept > 0)
                return kept;
        }
    }

    /// <inheritdoc />
    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException("A table is read as it comes, never by blocking.");

    /// <inheritdoc />
    public override void Flush()
    {
    }

    /// <inheritdoc />
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc />
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc />
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <summary>Moves the bytes that are kept to the front and returns their number. Works on whole runs up to the next quote or line end.</summary>
    private int Keep(Span<byte> bytes)
    {
        var kept = 0;
        for (var from = 0; from < bytes.Length;)
        {
            var mark = bytes[from..].IndexOfAny(Quote, LineFeed);
            var run = mark < 0 ? bytes[from..] : bytes.Slice(from, mark + 1);
            var last = run[^1];
            var endsRow = last == LineFeed && !_isQuoted;
            from += run.Length;
            var fits = _rowBytes + run.Length <= _mostBytes;
            var isLine = last == LineFeed && (fits || endsRow);
            kept += fits ? Move(run, bytes[kept..]) : Cut(bytes[kept..], endsRow);
            if (last == LineFeed && !isLine)
                _cutRow!.DroppedLines++;
            Advance(last, endsRow, isLine);
        }

        return kept;
    }

    private int Move(Span<byte> run, Span<byte> to)
    {
        run.CopyTo(to);
        _rowBytes += run.Length;
        return run.Length;
    }

    /// <summary>Drops a run of a row that is too long, but writes its closing quote or line end; returns the bytes written, at most one.</summary>
    private int Cut(Span<byte> to, bool endsRow)
    {
        var isFirst = _rowBytes <= _mostBytes;
        _rowBytes = _mostBytes + 1;
        if (isFirst)
            _cutRows.Enqueue(_cutRow = new CutRow(_rowStartLine));
        if (endsRow)
            to[0] = LineFeed;
        else if (isFirst && _isQuoted)
            to[0] = Quote;
        else
            return 0;
        return 1;
    }

    private void Advance(byte last, bool endsRow, bool isLine)
    {
        if (last == Quote)
            _isQuoted = !_isQuoted;
        if (isLine)
            _line++;
        if (!endsRow)
            return;
        _rowStartLine = _line;
        _rowBytes = 0;
    }

    private void PassBefore(int line)
    {
        while (_cutRows.TryPeek(out var cut) && cut.Line < line)
            _droppedBefore += _cutRows.Dequeue().DroppedLines;
    }

    /// <summary>A row that was cut: the line it starts at, and how many line ends of it were dropped so far.</summary>
    private sealed class CutRow(int line)
    {
        public int Line => line;

        public int DroppedLines { get; set; }
    }
}
