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
    SetupServiceHost.Build(args, static builder => builder.Services.AddHostedService<IdleCollection>()).Run();
    return 0;
}
catch (SettingException wrong)
{
    // Whoever starts the service reads what to change, and nothing of the inside.
    Console.Error.WriteLine(wrong.Message);
    return 2;
}
catch (IOException taken) when (taken.InnerException is AddressInUseException)
{
    Console.Error.WriteLine($"{taken.Message} The setting urls names another one.");
    return 2;
}
