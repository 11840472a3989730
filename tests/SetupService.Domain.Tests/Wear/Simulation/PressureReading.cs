using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Pressures as a person tells them, cold or hot, with what they aim at. Hot from cold by the gas law at constant volume.</summary>
internal sealed class PressureReading(SeededDraw draw, TrueCar car, WornTyre[] tyres)
{
    private const double AirKpa = 101.3;
    private const double ZeroK = 273.15;

    private readonly bool _tells = draw.Chance(0.55);
    private readonly bool _tellsHot = draw.Chance(0.4) && car.Use.HasTrack;
    private readonly double _rightColdKpa = draw.Between(190, 250);
    private readonly double _aimError = draw.Within(0, 0.02);
    private readonly double _gaugeError = draw.Within(0, 0.012);

    public TyrePressures At(TrueAxle axle, WornTyre tyre)
    {
        if (!_tells) return default;
        var coldKpa = _rightColdKpa * (1 + tyre.Wheel.PressureOffShare);
        var aimKpa = _rightColdKpa * (1 + _aimError);
        if (!_tellsHot) return new(Read(coldKpa), null, Math.Round(aimKpa), null);
        var gasC = GasC(TreadHeat.AxleC(car, axle, tyres));
        var aimGasC = GasC((axle.Tyre.WindowC.FromC + axle.Tyre.WindowC.ToC) / 2);
        return new(null, Read(Hot(coldKpa, gasC)), null, Math.Round(Hot(aimKpa, aimGasC)));
    }

    /// <summary>The air inside is cooler than the tread; two thirds of the rise is judgement.</summary>
    private double GasC(double treadC) => car.Use.AmbientC + (0.66 * (treadC - car.Use.AmbientC));

    private double Hot(double coldKpa, double gasC) => ((coldKpa + AirKpa) * (gasC + ZeroK) / (car.Use.AmbientC + ZeroK)) - AirKpa;

    private double Read(double kpa) => Math.Round(kpa * (1 + _gaugeError + draw.Within(0, 0.006)));
}
