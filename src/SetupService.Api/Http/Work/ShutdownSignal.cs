using System.ComponentModel.DataAnnotations;

namespace SetupService.Api.Http.Work;

/// <summary>How the service ends.</summary>
public sealed class ShutdownSettings
{
    // A batch that is told to end sends its last lines, and has a second to read them.
    private const double LastLinesSeconds = 2;

    /// <summary>Seconds from the closing of the listener to the end of the process, whatever is still being answered.</summary>
    [Range(1.0, 600.0)]
    public double GraceSeconds { get; set; } = 10;

    /// <summary>Seconds for which the service is not ready any more but still listens, so that a balancer sends no more before the listener closes.</summary>
    [Range(0.0, 300.0)]
    public double UnreadySeconds { get; set; } = 1;

    /// <summary>Seconds for which batches go on after that; then each ends with a last line that says so.</summary>
    [Range(0.0, 600.0)]
    public double DrainSeconds { get; set; } = 5;

    /// <summary>From the signal to end to the end of the process.</summary>
    internal TimeSpan WholeTime => TimeSpan.FromSeconds(UnreadySeconds + GraceSeconds);

    /// <summary>How long batches go on: never to the end of the grace, or they would be cut off without a word.</summary>
    internal TimeSpan Drain => TimeSpan.FromSeconds(Math.Min(DrainSeconds, Math.Max(0, GraceSeconds - LastLinesSeconds)));
}

/// <summary>Tells those who work that the service ends: first that it takes no more work, then that streams must end.</summary>
public sealed class ShutdownSignal : IDisposable
{
    private readonly CancellationTokenSource _drained = new();

    /// <summary>False once the service ends.</summary>
    public bool IsReady { get; private set; } = true;

    /// <summary>Cancelled when streams must end.</summary>
    public CancellationToken Drained => _drained.Token;

    /// <summary>The service takes no more work.</summary>
    public void BeginToEnd() => IsReady = false;

    /// <summary>Streams must end now.</summary>
    public void EndStreams()
    {
        try
        {
            _drained.Cancel();
        }
        catch (ObjectDisposedException)
        {
            // The service has ended before the time of its streams was over.
        }
    }

    /// <inheritdoc />
    public void Dispose() => _drained.Dispose();
}
