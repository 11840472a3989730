namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>
/// Numbers drawn from a seed, the same on every machine and runtime: the counter-and-mix generator of Steele, Lea and Flood (2014), its constants from memory.
/// </summary>
internal sealed class SeededDraw(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A generator of its own for one of many trials, so that a trial does not depend on how many there are.</summary>
    public static SeededDraw For(int seed, int trial)
    {
        var mixed = new SeededDraw((ulong)(uint)seed);
        return new SeededDraw(mixed.Bits() ^ (new SeededDraw((ulong)(uint)trial + 1).Bits() * 3));
    }

    /// <summary>From 0 to below 1.</summary>
    public double Share() => (Bits() >> 11) * (1.0 / (1UL << 53));

    public double Between(double from, double to) => from + ((to - from) * Share());

    /// <summary>A whole number, both ends included.</summary>
    public int Whole(int from, int to) => from + (int)(Share() * (to - from + 1));

    public bool Chance(double share) => Share() < share;

    public double Sign() => Chance(0.5) ? 1 : -1;

    /// <summary>Normally distributed (Box and Muller's transformation).</summary>
    public double Normal(double mean, double deviation) =>
        mean + (deviation * Math.Sqrt(-2 * Math.Log(1 - Share())) * Math.Cos(2 * Math.PI * Share()));

    /// <summary>Normally distributed, held within so many deviations.</summary>
    public double Within(double mean, double deviation, double deviations = 2) =>
        mean + (deviation * Math.Clamp(Normal(0, 1), -deviations, deviations));

    private ulong Bits()
    {
        _state += 0x9E3779B97F4A7C15;
        var mixed = _state;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }
}
