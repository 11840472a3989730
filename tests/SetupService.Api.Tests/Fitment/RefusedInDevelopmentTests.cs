namespace SetupService.Api.Tests.Fitment;

public sealed class RefusedInDevelopmentTests(DevelopmentService fixture) : RefusedRequestTests(fixture.Client), IClassFixture<DevelopmentService>;
