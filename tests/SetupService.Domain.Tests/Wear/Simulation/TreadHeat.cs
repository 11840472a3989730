using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>How hot the treads are straight off the track.</summary>
internal static class TreadHeat
{
    private const double AlongStrips = 0.16;
    private const double BetweenWheels = 0.4;

    /// <summary>Mean tread temperature of an axle, °C: what was set for it, else the car's by its share of the work.</summary>
    public static double AxleC(TrueCar car, TrueAxle axle, WornTyre[] tyres)
    {
        if (axle.SetTreadC is { } set) return set;
        var work = Of(tyres, axle.Place == CarAxle.Front);
        var both = (Of(tyres, true) + Of(tyres, false)) / 2;
        return car.Use.AmbientC + ((car.Use.TreadC - car.Use.AmbientC) * Math.Pow(work / both, 0.25));
    }

    /// <summary>Temperature by strip, °C.</summary>
    public static double[] StripsC(TrueCar car, TrueAxle axle, WornTyre[] tyres, WornTyre tyre)
    {
        var ambientC = car.Use.AmbientC;
        var own = Strips.Mean(tyre.TrackWork);
        var riseC = (AxleC(car, axle, tyres) - ambientC) * Math.Pow(own / Of(tyres, axle.Place == CarAxle.Front), BetweenWheels / 2);
        var stripsC = new double[Strips.Count];
        for (var strip = 0; strip < Strips.Count; strip++)
        {
            stripsC[strip] = ambientC + (riseC * (1 + (AlongStrips * Math.Clamp((tyre.TrackWork[strip] / own) - 1, -0.8, 1.2))));
        }

        return stripsC;
    }

    private static double Of(WornTyre[] tyres, bool isFront)
    {
        var first = isFront ? 0 : 2;
        return (Strips.Mean(tyres[first].TrackWork) + Strips.Mean(tyres[first + 1].TrackWork)) / 2;
    }
}
