using System.Collections.Concurrent;
using Serilog.Core;
using Serilog.Events;

namespace SetupService.Api.Tests.Http;

/// <summary>What the service logged while a test looked.</summary>
internal sealed class CapturedLog : ILogEventSink
{
    private readonly ConcurrentQueue<LogEvent> _events = new();

    public IReadOnlyCollection<LogEvent> Events => _events;

    public void Emit(LogEvent logEvent) => _events.Enqueue(logEvent);
}
