namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>The strips a tread is divided into, from the outer edge inwards.</summary>
internal static class Strips
{
    public const int Count = 31;

    /// <summary>Where the middle of a strip is, from -1 at the outer edge to 1 at the inner.</summary>
    public static double Inward(int strip) => -1 + ((2 * strip + 1.0) / Count);

    /// <summary>The value at a place between the middles of strips; <paramref name="acrossPct"/> is 0 at the outer edge, 100 at the inner.</summary>
    public static double At(ReadOnlySpan<double> values, double acrossPct)
    {
        var place = Math.Clamp((acrossPct / 100 * Count) - 0.5, 0, Count - 1.000001);
        var below = (int)place;
        return values[below] + ((place - below) * (values[below + 1] - values[below]));
    }

    public static double Mean(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values) sum += value;
        return sum / values.Length;
    }
}
