namespace SetupService.Domain.Tests.Suspension;

/// <summary>Errors of readings for trials with a fixed seed.</summary>
internal static class Chance
{
    /// <summary>A normally distributed number of mean 0 and standard deviation 1 (Box and Muller's transformation).</summary>
    public static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
