using Serilog.Events;

namespace SetupService.Api.Host.Watching;

/// <summary>Lets so many lines a second into the log, and counts the others. Safe for all threads.</summary>
/// <param name="mostPerSecond">Lines of a second.</param>
/// <param name="clock">Tells the time.</param>
internal sealed class LineRate(int mostPerSecond, TimeProvider clock)
{
    private readonly Lock _lock = new();
    private long _second;
    private int _lines;
    private long _leftOut;

    /// <summary>True where one more line may be written.</summary>
    /// <param name="leftOut">Lines left out since the last that was written.</param>
    public bool MayTell(out long leftOut)
    {
        lock (_lock)
        {
            var second = clock.GetUtcNow().ToUnixTimeSeconds();
            if (second != _second)
                (_second, _lines) = (second, 0);
            if (++_lines > mostPerSecond)
            {
                _leftOut++;
                leftOut = 0;
                return false;
            }

            (leftOut, _leftOut) = (_leftOut, 0);
            return true;
        }
    }

    /// <summary>True for a warning of the server that is too much: callers bring it about, as one for each connection beyond the cap.</summary>
    public bool IsBeyond(LogEvent line) =>
        line.Level <= LogEventLevel.Warning && line.Properties.TryGetValue("SourceContext", out var source) && source is ScalarValue { Value: string name }
        && name.StartsWith("Microsoft.", StringComparison.Ordinal) && !MayTell(out _);
}
