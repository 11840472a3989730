using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace SetupService.Api.Host;

/// <summary>What the service says once it listens: where its pages are, and one line that does its main job.</summary>
internal static class Greeting
{
    public static void GreetOnStart(this WebApplication app) =>
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            // No address, no listener: a test hosts the service.
            var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses.FirstOrDefault();
            if (address is not null)
                Console.Out.WriteLine(Text(Reachable(address)));
        });

    private static string Text(string url) =>
        $"""
        Setup service at {url}, its pages at {url}/docs
        Try: curl -s {url}/v1/plans -H 'content-type: application/json' -d @api/examples/plan.request.json
        The whole job on three cars, as a page to read: node docs/demo/story.mjs {url}
        """;

    /// <summary>An address a browser can open, where the service listens on all of them.</summary>
    public static string Reachable(string address) =>
        address.Replace("[::]", "localhost", StringComparison.Ordinal)
            .Replace("0.0.0.0", "localhost", StringComparison.Ordinal)
            .Replace("//+", "//localhost", StringComparison.Ordinal)
            .Replace("//*", "//localhost", StringComparison.Ordinal)
            .TrimEnd('/');
}
