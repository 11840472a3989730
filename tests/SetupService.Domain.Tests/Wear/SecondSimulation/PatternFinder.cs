using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>
/// What a person finds on a tread by eye and hand: what is there, more or less well seen, and now and then what is not. Which cause leaves which mark is
/// from vehicle makers' service literature (feathers by toe, high edges towards the car by toe-in; cupping by dampers and balance; flat spots by locking)
/// and common practice; how often is judgement, no source.
/// </summary>
internal sealed class PatternFinder(Chance chance, DrawnCar car)
{
    /// <summary>The marks found on one tyre.</summary>
    public IReadOnlyList<TreadPattern> Find(int wheel)
    {
        var (axle, faults, state, found) = ((CarAxle)(wheel / 2), car.Faults[wheel / 2], car.Wheels[wheel], new List<TreadPattern>());
        var worn = car.WornMm[wheel];
        var outerShare = (worn[0] + worn[1] + worn[2]) / 3 / worn.Average();
        var (isTrack, isDriven) = (car.Habit > 0, car.Kind.DriveShare(axle) > 0);

        // Feathers stand by what the tyre scrubs straight ahead; a hand takes one way for the other now and then. Tyres moved about carry those of their last place.
        if (chance.Of(0.03 + (0.8 * Rise(Math.Abs(state.ToeDeg) - 0.12, 0.25)))) found.Add(state.ToeDeg > 0 != chance.Of(0.07) ? TreadPattern.FeatheredSharpInboard : TreadPattern.FeatheredSharpOutboard);
        if (chance.Of(0.025 + (faults.HasWeakDamper ? 0.6 : 0) + (faults.HasImbalance ? 0.3 : 0))) found.Add(TreadPattern.Cupping);
        if (chance.Of(isDriven ? 0.06 : 0.15 + (axle == CarAxle.Rear ? 0.4 * Rise(Math.Abs(state.ToeDeg) - 0.2, 0.3) : 0))) found.Add(TreadPattern.HeelAndToe);
        if (chance.Of(faults.HasLocked ? 0.75 : 0.015)) found.Add(TreadPattern.FlatSpot);
        if (chance.Of(isTrack ? 0.05 + (0.45 * Rise(outerShare - 1.1, 0.4)) + (IsOverdriven(axle) ? 0.25 : 0) : 0.01)) found.Add(TreadPattern.ShoulderGraining);
        if (chance.Of(isTrack ? 0.01 + (0.5 * Rise(TrueCauses.MeanC(car, axle) - TrueCauses.Window(car.Category).ToC, 15)) : 0.003)) found.Add(TreadPattern.Blistering);
        if (chance.Of(0.01 + (isTrack ? 0.2 * Rise(TrueCauses.MeanC(car, axle) - TrueCauses.Window(car.Category).ToC, 20) : 0))) found.Add(TreadPattern.Chunking);
        var lowShare = 1 - (state.PressureKpa / car.RightKpa(axle));
        if (chance.Of(0.02 + (isTrack ? (0.5 * Rise(outerShare - 1.15, 0.4)) + (0.3 * Rise(lowShare - 0.1, 0.2)) + (IsOverdriven(axle) ? 0.2 : 0) : 0.15 * Rise(lowShare - 0.2, 0.2)))) found.Add(TreadPattern.WornPastShoulder);
        if (chance.Of(0.01 + (axle == CarAxle.Rear ? (0.4 * Rise(Math.Abs(state.ToeDeg - CarKind.At(axle, car.Kind.ToeDeg)) - 0.2, 0.3)) + (faults.HasWeakDamper ? 0.06 : 0) : 0))) found.Add(TreadPattern.DiagonalScallop);
        return found;
    }

    private bool IsOverdriven(CarAxle axle) => axle == CarAxle.Front && car.Driver.OverdrivesFront;

    /// <summary>From 0 to 1 over a range.</summary>
    private static double Rise(double value, double range) => Math.Clamp(value / range, 0, 1);
}
