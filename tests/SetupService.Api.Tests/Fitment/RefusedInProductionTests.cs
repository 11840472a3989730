using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

public sealed class RefusedInProductionTests(ServiceFixture fixture) : RefusedRequestTests(fixture.Client), IClassFixture<ServiceFixture>;
