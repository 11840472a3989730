using SetupService.Api.Host;

SetupServiceHost.Build(args).Run();
