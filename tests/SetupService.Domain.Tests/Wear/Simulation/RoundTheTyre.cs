namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>What is worn off at one place round a tyre beyond the mean, mm.</summary>
/// <param name="Wheel">The wheel and what befell it.</param>
/// <param name="RunOutAtDeg">Where an unbalanced wheel wears most, degrees round the tyre.</param>
/// <param name="FlatAtDeg">Where the flat is.</param>
/// <param name="Hollows">How many hollows a hopping wheel wore.</param>
internal sealed record RoundTheTyre(TrueWheel Wheel, double RunOutAtDeg, double FlatAtDeg, int Hollows)
{
    private const double FlatHalfWidthDeg = 9;

    public static RoundTheTyre Drawn(TrueWheel wheel, SeededDraw draw) =>
        new(wheel, draw.Between(0, 360), draw.Between(0, 360), draw.Whole(3, 8));

    public double ExtraMm(double atDeg, double inward)
    {
        var runOut = Wheel.RunOutMm * Math.Cos(Radians(atDeg - RunOutAtDeg));

        // Hollows show most at the shoulders.
        var hollow = Wheel.HollowMm * Math.Cos(Radians(Hollows * atDeg)) / 2 * (0.5 + (0.7 * inward * inward));
        var fromFlatDeg = Math.IEEERemainder(atDeg - FlatAtDeg, 360) / FlatHalfWidthDeg;
        return runOut + hollow + (Wheel.FlatMm * Math.Exp(-fromFlatDeg * fromFlatDeg / 2) * (1 - (0.2 * inward * inward)));
    }

    private static double Radians(double deg) => deg * Math.PI / 180;
}
