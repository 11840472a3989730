namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>
/// Cars with known faults whose tyres are worn by forward computation, pressure by slip strip by strip, and reported as a person would. Nothing
/// in here knows how a diagnosis weighs its evidence.
/// </summary>
internal static class SimulatedCars
{
    /// <summary>So many cars; the same seed gives the same cars, and fewer of them are the first ones.</summary>
    public static IReadOnlyList<SimulatedCar> Make(int seed, int count) => [.. Enumerable.Range(0, count).Select(index => One(seed, index))];

    private static SimulatedCar One(int seed, int index)
    {
        var draw = SeededDraw.For(seed, index);
        var (car, tyres) = CarDraw.Of(draw);
        return new() { Case = new Report(draw, car, tyres).Case(), Faults = TrueFaults.Of(car, tyres) };
    }
}
