using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>The service in Development, where frameworks like to tell more than they should.</summary>
public sealed class DevelopmentService : IAsyncLifetime
{
    private RunningService? _service;

    public HttpClient Client => _service!.Client;

    public async Task InitializeAsync() => _service = await RunningService.StartAsync("Development");

    public async Task DisposeAsync() => await _service!.DisposeAsync();
}
