namespace SetupService.Api.Tests.Host;

/// <summary>One running service for all tests of a class, in Production as it is delivered.</summary>
public sealed class ServiceFixture : IAsyncLifetime
{
    private RunningService? _service;

    public RunningService Service => _service ?? throw new InvalidOperationException("The service has not started.");

    public HttpClient Client => Service.Client;

    public async Task InitializeAsync() => _service = await RunningService.StartAsync();

    public async Task DisposeAsync() => await Service.DisposeAsync();
}
