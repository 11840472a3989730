namespace SetupService.Domain.Tests;

/// <summary>A test of minutes: run only where SETUP_SERVICE_LONG_TESTS=1 stands in the environment, skipped in the daily run.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class LongFactAttribute : FactAttribute
{
    public LongFactAttribute()
    {
        if (Environment.GetEnvironmentVariable("SETUP_SERVICE_LONG_TESTS") != "1")
            Skip = "Takes minutes: set SETUP_SERVICE_LONG_TESTS=1 to run it.";
    }
}
