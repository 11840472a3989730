using System.Net;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using SetupService.Api.Host.Settings;

namespace SetupService.Api.Host.Access;

/// <summary>Keeps a service without keys to this machine, unless it is said that it shall be open.</summary>
internal static class PublicAddresses
{
    /// <summary>Has the server refuse to listen at an address beyond this machine.</summary>
    public static void RefuseWithoutKeys(KestrelServerOptions server)
    {
        var keys = server.ApplicationServices.GetRequiredService<ClientKeys>();
        var access = server.ApplicationServices.GetRequiredService<AccessSettings>();
        if (keys.AreNeeded || access.AllowWithoutKeys)
            return;

        server.ConfigureEndpointDefaults(static listener =>
        {
            if (listener.EndPoint is IPEndPoint { Address: var address } && !IPAddress.IsLoopback(address))
            {
                throw new SettingException(
                    $"The service would listen at {listener.EndPoint}, beyond this machine, and no client has a key. Give clients keys (the command new-key; docs/security.md), "
                    + "or listen at localhost, or set Access:AllowWithoutKeys=true to let everybody call it on purpose.");
            }
        });
    }
}
