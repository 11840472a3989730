namespace SetupService.Api.Tests.Http;

public sealed class DevelopmentEcho() : EchoFixture("Development");
