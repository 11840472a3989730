using CsCheck;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.CamberTarget;

/// <summary>Cars and mixes of corners to find a static camber for.</summary>
internal static class AnyDemand
{
    /// <summary>Cars whose stops are never met.</summary>
    public static Gen<HandlingCar> Cars =>
        from springs in Gen.Select(Gen.Double[18, 90], Gen.Double[18, 90])
        from bars in Gen.Select(Gen.Double[0, 700], Gen.Double[0, 400])
        from height in Gen.Double[440, 600]
        from rollCentre in Gen.Double[0, 120]
        from camber in Gen.Double[-3, 0.5]
        select Made(springs, bars, height, rollCentre, camber);

    public static Gen<BendShare[]> Mixes =>
        (from lateralG in Gen.Double[0.2, 0.95]
         from radiusM in Gen.Double[12, 200]
         from share in Gen.Double[1, 50]
         from isLeft in Gen.Bool
         select new BendShare(new(lateralG, radiusM, isLeft ? TurnDirection.Left : TurnDirection.Right), share)).Array[1, 5];

    public static CamberDemand Of(BendShare[] corners, CarAxle axle = CarAxle.Front, double targetDeg = 0) =>
        new() { Axle = axle, Corners = corners, TargetInclinationDeg = targetDeg };

    /// <summary>The camber alone, as the whole search finds it; null with the failure where there is none.</summary>
    public static double? CamberDeg(HandlingCar car, CamberDemand demand, out CamberTargetFailure? failure) =>
        CamberTargetSearch.Solve(new(car, [], []), demand, [], null, out failure)?.StaticCamberDeg.Value;

    public static BendShare Corner(double lateralG, double radiusM, TurnDirection turn = TurnDirection.Left, double share = 1) =>
        new(new(lateralG, radiusM, turn), share);

    /// <summary>Both wheels of an axle set alike.</summary>
    public static HandlingCar Set(HandlingCar car, CarAxle axle, double camberDeg) =>
        car.With(axle, car.At(axle) with { LeftCamberDeg = camberDeg, RightCamberDeg = camberDeg });

    private static HandlingCar Made((double Front, double Rear) springs, (double Front, double Rear) bars, double heightMm, double rollCentreMm, double camberDeg)
    {
        var car = WorkedCar.Make();
        var changed = car with
        {
            CentreOfGravityHeightMm = heightMm,
            Front = car.Front with { SpringRateNPerMm = springs.Front, BarRollRateNmPerDeg = bars.Front, RollCentreHeightMm = rollCentreMm },
            Rear = car.Rear with { SpringRateNPerMm = springs.Rear, BarRollRateNmPerDeg = bars.Rear },
        };
        return Set(changed, CarAxle.Front, camberDeg);
    }
}
