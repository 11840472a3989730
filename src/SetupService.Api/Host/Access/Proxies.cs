using Microsoft.AspNetCore.HttpOverrides;
using SetupService.Api.Host.Settings;

namespace SetupService.Api.Host.Access;

/// <summary>Takes the word of the proxies that are named, and of no others, about where a request comes from.</summary>
internal static class Proxies
{
    public static void UseProxies(this WebApplication app)
    {
        var settings = app.Services.GetRequiredService<ProxySettings>();

        // Of one value where a list is read the reader takes nothing, and whoever gave it would believe that the headers are heeded.
        const string Networks = ServiceSettings.Proxy + ":Networks";
        if (app.Configuration[Networks] is { Length: > 0 } single)
            throw new SettingException($"{Networks} is a list: give its networks one by one, {Networks}:0={single} and so on.");
        if (settings.Networks.Length == 0)
            return;

        ForwardedHeadersOptions options = new() { ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto, ForwardLimit = settings.Hops };
        options.KnownProxies.Clear();
        options.KnownIPNetworks.Clear();
        for (var i = 0; i < settings.Networks.Length; i++)
        {
            options.KnownIPNetworks.Add(System.Net.IPNetwork.TryParse(settings.Networks[i], out var network)
                ? network
                : throw new SettingException($"Proxy:Networks:{i} is “{settings.Networks[i]}”, which is no network: an address and the length of its prefix, such as 10.0.0.0/8."));
        }

        app.UseForwardedHeaders(options);
    }
}
