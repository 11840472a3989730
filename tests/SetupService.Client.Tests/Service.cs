using Microsoft.AspNetCore.Builder;
using SetupService.Api.Host;

namespace SetupService.Client.Tests;

/// <summary>A running service and a client of it.</summary>
public sealed class Service : IAsyncLifetime, IDisposable
{
    // As patient as a busy machine wants it.
    private readonly WebApplication _app = SetupServiceHost.Build(["--urls", "http://127.0.0.1:0", "--Work:DeadlineSeconds", "600", "--Work:QueueSeconds", "600", "--Work:DelaySeconds", "600", "--Shutdown:UnreadySeconds", "0"]);

    internal HttpClient Http { get; } = new() { Timeout = TimeSpan.FromMinutes(5) };

    internal SetupClient Client => new(Http);

    public async Task InitializeAsync()
    {
        await _app.StartAsync();
        Http.BaseAddress = new Uri(_app.Urls.First());
    }

    public async Task DisposeAsync() => await _app.DisposeAsync();

    public void Dispose() => Http.Dispose();
}
