using CsCheck;
using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>Cars of many springs, bars, heights, roll centres, tyres and stops.</summary>
internal static class AnyCar
{
    public static readonly Gen<HandlingCar> Cars =
        from springs in Gen.Select(Gen.Double[12, 120], Gen.Double[12, 120])
        from bars in Gen.Select(Gen.Double[0, 900], Gen.Double[0, 600])
        from height in Gen.Double[420, 620]
        from rollCentres in Gen.Select(Gen.Double[-40, 160], Gen.Double[0, 250])
        from tyre in Gen.Double[150, 400]
        from loads in Gen.Select(Gen.Double[0.85, 1.15], Gen.Double[0.85, 1.15])
        from camber in Gen.Double[-4, 1]
        from bump in Gen.Double[10, 90]
        select Make(springs, bars, height, rollCentres, tyre, loads, camber, bump);

    public static HandlingCar Make(
        (double Front, double Rear) springs, (double Front, double Rear) bars, double heightMm, (double Front, double Rear) rollCentres, double tyre,
        (double Left, double Right) loads, double camberDeg, double bumpMm)
    {
        var car = WorkedCar.Make(tyre);
        return car with
        {
            CentreOfGravityHeightMm = heightMm,
            Front = car.Front with
            {
                SpringRateNPerMm = springs.Front,
                BarRollRateNmPerDeg = bars.Front,
                RollCentreHeightMm = rollCentres.Front,
                LeftLoadN = car.Front.LeftLoadN * loads.Left,
                LeftCamberDeg = camberDeg,
                BumpTravelMm = bumpMm,
                ReboundTravelMm = 2 * bumpMm,
            },
            Rear = car.Rear with
            {
                SpringRateNPerMm = springs.Rear,
                BarRollRateNmPerDeg = bars.Rear,
                RollCentreHeightMm = rollCentres.Rear,
                RightLoadN = car.Rear.RightLoadN * loads.Right,
                BumpTravelMm = bumpMm,
                ReboundTravelMm = 60,
            },
        };
    }
}
