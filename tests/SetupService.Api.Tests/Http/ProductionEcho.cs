namespace SetupService.Api.Tests.Http;

public sealed class ProductionEcho() : EchoFixture("Production");
