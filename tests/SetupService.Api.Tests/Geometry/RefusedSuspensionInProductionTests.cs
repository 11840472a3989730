using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

public sealed class RefusedSuspensionInProductionTests(ServiceFixture fixture) : RefusedSuspensionTests(fixture.Client), IClassFixture<ServiceFixture>;
