namespace SetupService.Api.Tests.Http;

/// <summary>The framework behaves otherwise in Development; the service must not.</summary>
public sealed class BodyInDevelopmentTests(DevelopmentEcho fixture) : BodyTests(fixture), IClassFixture<DevelopmentEcho>;
