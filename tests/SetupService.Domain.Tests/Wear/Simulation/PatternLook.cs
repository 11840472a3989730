using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>
/// What an eye and a hand find, by how strong the physical cause of each pattern is. Causes of patterns: service literature (SERVICE), the
/// direction of feathering with it; heel and toe, diagonal patches, graining and blistering: common practice, no source.
/// </summary>
internal sealed class PatternLook(SeededDraw draw, TrueCar car, WornTyre[] tyres)
{
    private readonly double _found = draw.Between(0.65, 0.92);
    private readonly double _mistaken = draw.Between(0.01, 0.04);

    public List<TreadPattern> At(TrueAxle axle, WornTyre tyre)
    {
        // What comes by and by shows little on a tread hardly worn.
        var shown = Math.Min(1, Strips.Mean(tyre.LostMm) / 0.6);
        var found = new List<TreadPattern>();
        foreach (var pattern in Enum.GetValues<TreadPattern>())
        {
            var isSudden = pattern is TreadPattern.FlatSpot or TreadPattern.Blistering or TreadPattern.Chunking;
            var strength = Math.Clamp(Strength(pattern, axle, tyre), 0, 1) * (isSudden ? 1 : shown);
            if (draw.Chance(_mistaken + (strength * (_found - _mistaken)))) found.Add(pattern);
        }

        return found;
    }

    private double Strength(TreadPattern pattern, TrueAxle axle, WornTyre tyre)
    {
        var wheel = tyre.Wheel;
        var overC = car.Use.HasTrack ? TreadHeat.AxleC(car, axle, tyres) - axle.Tyre.WindowC.ToC : -100;
        var underC = car.Use.HasTrack ? axle.Tyre.WindowC.FromC - TreadHeat.AxleC(car, axle, tyres) : -100;
        var edge = Math.Max(Rise(tyre.TurnEdgeShare, 1.3, 0.05), 0.8 * Rise(tyre.TrackSlipShare, 1.05, 0.04));
        return pattern switch
        {
            // The outside of hard turns drags the tread the way toe-in does.
            TreadPattern.FeatheredSharpInboard => Math.Max(Rise(tyre.StraightSlipDeg, 0.15, 0.03), 0.15 * edge),
            TreadPattern.FeatheredSharpOutboard => Rise(-tyre.StraightSlipDeg, 0.15, 0.03),
            TreadPattern.Cupping => Math.Max(Rise(wheel.HollowMm, 0.22, 0.05), 0.5 * Rise(wheel.RunOutMm, 0.18, 0.04)),
            TreadPattern.HeelAndToe => HeelAndToe(axle, tyre),
            TreadPattern.FlatSpot => Rise(wheel.FlatMm, 0.3, 0.06),
            TreadPattern.ShoulderGraining => Math.Max(edge, 0.6 * Rise(underC, 6, 2)),
            TreadPattern.WornPastShoulder => 0.85 * edge,
            TreadPattern.Blistering => Rise(overC, 8, 2.5),
            TreadPattern.Chunking => Math.Max(0.4 * Rise(overC, 14, 3), 0.3 * Rise(wheel.FlatMm, 1, 0.1)),
            TreadPattern.DiagonalScallop => Diagonal(axle, tyre),
            _ => throw new ArgumentOutOfRangeException(nameof(pattern)),
        };
    }

    private double HeelAndToe(TrueAxle axle, WornTyre tyre)
    {
        var odds = -3.2
            + (axle.IsDriven ? 0 : 1.1)
            + (3 * Math.Abs(tyre.StraightSlipDeg))
            + (6 * Math.Max(0, -tyre.Wheel.PressureOffShare))
            + (car.Use.RoadKm > 12000 && tyre.Wheel.Earlier is null ? 0.6 : 0);
        return 1 / (1 + Math.Exp(-odds));
    }

    /// <summary>Toe that swings or drags; least load shows it most.</summary>
    private static double Diagonal(TrueAxle axle, WornTyre tyre)
    {
        var swingDeg = Math.Sqrt(Math.Pow(axle.DragShare * axle.ThrustDeg, 2) + Math.Pow(axle.LooseToeDeg, 2));
        var isRear = axle.Place == CarAxle.Rear;
        return Math.Max(Rise(swingDeg, isRear ? 0.18 : 0.26, 0.04), isRear ? 0.15 * Rise(Math.Abs(tyre.StraightSlipDeg), 0.25, 0.05) : 0);
    }

    private static double Rise(double value, double half, double width) => 1 / (1 + Math.Exp((half - value) / width));
}
