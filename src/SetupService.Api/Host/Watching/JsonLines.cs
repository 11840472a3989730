using Serilog.Core;
using Serilog.Events;
using Serilog.Formatting.Compact;

namespace SetupService.Api.Host.Watching;

/// <summary>
/// Writes the log as JSON, an object a line, to a stream. Lines are gathered for a moment, because one write to the stream costs more than formatting a line; what is no
/// information but worse goes out at once.
/// </summary>
internal sealed class JsonLines : ILogEventSink, IDisposable
{
    private const int GatheredBytes = 32_768;

    private static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(200);

    private readonly Lock _lock = new();
    private readonly CompactJsonFormatter _formatter = new();
    private readonly StreamWriter _writer;
    private readonly Timer _timer;
    private bool _isGathering;
    private bool _isClosed;

    /// <summary>Writes to a stream and closes it in the end.</summary>
    public JsonLines(Stream stream)
    {
        _writer = new StreamWriter(stream, bufferSize: GatheredBytes) { NewLine = "\n" };
        _timer = new Timer(static lines => ((JsonLines)lines!).Send(), this, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }

    public void Emit(LogEvent logEvent)
    {
        lock (_lock)
        {
            if (_isClosed)
                return;
            _formatter.Format(logEvent, _writer);
            if (logEvent.Level > LogEventLevel.Information)
                _writer.Flush();
            else if (!_isGathering)
                _isGathering = _timer.Change(Longest, Timeout.InfiniteTimeSpan);
        }
    }

    public void Dispose()
    {
        lock (_lock)
        {
            if (_isClosed)
                return;
            _isClosed = true;
            _writer.Dispose();
        }

        _timer.Dispose();
    }

    private void Send()
    {
        lock (_lock)
        {
            _isGathering = false;
            if (!_isClosed)
                _writer.Flush();
        }
    }
}
