using SetupService.Api.Host;
using SetupService.Api.Host.Access;

if (args is [KeyCommand.Name, ..])
    return KeyCommand.Run(args, Console.Out);

SetupServiceHost.Build(args).Run();
return 0;
