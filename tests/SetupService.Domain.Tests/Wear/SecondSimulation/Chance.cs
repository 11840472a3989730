namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>Draws from a seed, the same on every machine.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random _random = new(seed);

    public bool Of(double probability) => _random.NextDouble() < probability;

    public double Between(double low, double high) => low + ((high - low) * _random.NextDouble());

    /// <summary>Scatter about nothing that now and then throws far: Student's t of five degrees of freedom, scaled to a standard deviation.</summary>
    public double Scatter(double deviation)
    {
        var square = 0.0;
        for (var i = 0; i < 5; i++)
        {
            var one = Normal();
            square += one * one / 5;
        }

        return deviation * Normal() / Math.Sqrt(square) * Math.Sqrt(3.0 / 5);
    }

    public T One<T>(IReadOnlyList<T> all) => all[_random.Next(all.Count)];

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
}
