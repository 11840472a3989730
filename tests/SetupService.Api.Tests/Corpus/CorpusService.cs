using Microsoft.Extensions.DependencyInjection;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Corpus;

/// <summary>The service with the clock of the recording, and the report of what a new recording moves.</summary>
public sealed class CorpusService : IAsyncLifetime
{
    private RunningService? _service;

    public HttpClient Client => (_service ?? throw new InvalidOperationException("The service has not started.")).Client;

    internal CorpusReport Report { get; } = new();

    public async Task InitializeAsync() =>
        _service = await RunningService.StartAsync(configure: builder => builder.Services.AddSingleton<TimeProvider>(new RecordingClock()));

    public async Task DisposeAsync() => await _service!.DisposeAsync();

    /// <summary>An age of a tyre is counted to the day of the recording, whatever the day is.</summary>
    private sealed class RecordingClock : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2026, 11, 20, 12, 0, 0, TimeSpan.Zero);
    }
}
