namespace SetupService.Api.Tests.Http;

public sealed class BodyInProductionTests(ProductionEcho fixture) : BodyTests(fixture), IClassFixture<ProductionEcho>;
