namespace SetupService.Api.Tests.Fitment;

/// <summary>Tests that change or count what belongs to the whole process; nothing else runs beside them.</summary>
[CollectionDefinition(nameof(ByItself), DisableParallelization = true)]
public sealed class ByItself;
