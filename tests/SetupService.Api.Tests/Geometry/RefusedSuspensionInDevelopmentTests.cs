using SetupService.Api.Tests.Fitment;

namespace SetupService.Api.Tests.Geometry;

public sealed class RefusedSuspensionInDevelopmentTests(DevelopmentService fixture) : RefusedSuspensionTests(fixture.Client), IClassFixture<DevelopmentService>;
