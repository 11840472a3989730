namespace SetupService.Api.Tests.Fitment;

/// <summary>Tests that change what every thread sees; nothing else runs beside them.</summary>
[CollectionDefinition(nameof(CultureOfTheProcess), DisableParallelization = true)]
public sealed class CultureOfTheProcess;
