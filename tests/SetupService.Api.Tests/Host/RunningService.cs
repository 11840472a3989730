using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using SetupService.Api.Host;
using SetupService.Api.Host.OpenApi;

namespace SetupService.Api.Tests.Host;

/// <summary>The whole service, from its own composition root, listening on a free port of this machine.</summary>
public sealed class RunningService : IAsyncDisposable
{
    // Tests run on busy machines, where what is computed in no time takes long; those about deadlines and waits set their own.
    private static readonly string[] Patient = ["--Work:DeadlineSeconds", "600", "--Work:QueueSeconds", "600", "--Work:DelaySeconds", "600", "--Shutdown:UnreadySeconds", "0"];

    private readonly WebApplication _app;

    private RunningService(WebApplication app, HttpClient client)
    {
        _app = app;
        Client = client;
    }

    public HttpClient Client { get; }

    public IServiceProvider Services => _app.Services;

    public static async Task<RunningService> StartAsync(
        string environment = "Production",
        Action<WebApplicationBuilder>? configure = null,
        Action<WebApplication>? map = null)
    {
        var app = SetupServiceHost.Build(["--urls", "http://127.0.0.1:0", "--environment", environment, .. Patient], builder =>
        {
            // What the code of today says of itself, which the tests hold the committed file to.
            builder.Services.AddGeneratedDescription();
            configure?.Invoke(builder);
        });
        map?.Invoke(app);
        await app.StartAsync();
        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        return new RunningService(app, new HttpClient { BaseAddress = new Uri(address) });
    }

    /// <summary>Asks the service to end, and waits until it has.</summary>
    public Task StopAsync() => _app.StopAsync();

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await _app.StopAsync();
        await _app.DisposeAsync();
    }
}
