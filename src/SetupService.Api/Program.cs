using System.Net.Sockets;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Connections;
using SetupService.Api.Host;
using SetupService.Api.Host.Access;
using SetupService.Api.Host.Settings;

if (args is [KeyCommand.Name, ..])
    return KeyCommand.Run(args, Console.Out);
if (args is [HealthCommand.Name, ..])
    return HealthCommand.Run(args, Console.Out);

try
{
    using var app = SetupServiceHost.Build(args, static builder => builder.Services.AddHostedService<IdleCollection>());
    Start(app);
    app.WaitForShutdown();
    return 0;
}
catch (SettingException wrong)
{
    // Whoever starts the service reads what to change, and nothing of the inside.
    Console.Error.WriteLine(wrong.Message);
    return 2;
}

static void Start(WebApplication app)
{
    try
    {
        app.Start();
    }
    catch (IOException taken) when (taken.InnerException is AddressInUseException)
    {
        throw new SettingException($"{taken.Message} The setting urls names another one.", taken);
    }
    catch (Exception fault) when (fault is IOException or SocketException or UnauthorizedAccessException or CryptographicException or FormatException or InvalidOperationException and not SettingException)
    {
        throw new SettingException($"The service cannot listen as its settings urls or Kestrel:Endpoints say (docs/configuration.md). {fault.Message}", fault);
    }
}
