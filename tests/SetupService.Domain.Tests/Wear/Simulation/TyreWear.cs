using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Wears the four tyres of a car by all it did.</summary>
internal static class TyreWear
{
    /// <summary>Road and track come in turns, so that what one wears off changes how the other bears.</summary>
    private const int Turns = 4;

    /// <summary>The four tyres, in the order of <see cref="WheelPosition"/>.</summary>
    public static WornTyre[] Of(TrueCar car)
    {
        var states = DrivingStates.Of(car);
        WornTyre[] own = [.. Axle(car, car.Front, states), .. Axle(car, car.Rear, states)];
        return [.. own.Select(one => WithEarlier(one, own))];
    }

    private static WornTyre[] Axle(TrueCar car, TrueAxle axle, List<DrivingState> states)
    {
        var left = new StripWear();
        var right = new StripWear();
        var presses = states.ConvertAll(state => Presses(car, axle, state));
        for (var turn = 0; turn < Turns; turn++)
        {
            for (var index = 0; index < states.Count; index++)
            {
                var distanceM = states[index].DistanceM / Turns;
                left.Add(presses[index].Left, distanceM);
                right.Add(presses[index].Right, distanceM);
            }
        }

        var straight = RollingAxle.Of(car, axle, new(1, 0, 0, false));
        return [Worn(axle.Left, left, straight.Left), Worn(axle.Right, right, straight.Right)];
    }

    private static (TreadPress Left, TreadPress Right) Presses(TrueCar car, TrueAxle axle, DrivingState state)
    {
        var rolling = RollingAxle.Of(car, axle, state);
        return (
            new(axle.Tyre, axle.Left, axle.TemperatureWear, rolling.Left, state.IsTrack),
            new(axle.Tyre, axle.Right, axle.TemperatureWear, rolling.Right, state.IsTrack));
    }

    private static WornTyre Worn(TrueWheel wheel, StripWear wear, RollingWheel straight) => new()
    {
        Wheel = wheel,
        LostMm = wear.LostMm,
        RoadLostMm = wear.RoadLostMm,
        TrackWork = wear.TrackWork,
        StraightSlipDeg = straight.SideSlip * 180 / Math.PI,
        TrackSlipShare = wear.TrackSlipShare,
        TurnEdgeShare = wear.TurnEdgeShare,
    };

    private static WornTyre WithEarlier(WornTyre now, WornTyre[] own)
    {
        if (now.Wheel.Earlier is not { } earlier) return now;
        var there = own[(int)earlier.Position];
        return now with { LostMm = Mixed(now.LostMm, there.LostMm), RoadLostMm = Mixed(now.RoadLostMm, there.RoadLostMm) };

        double[] Mixed(double[] here, double[] before)
        {
            var mixed = new double[Strips.Count];
            for (var strip = 0; strip < Strips.Count; strip++)
            {
                var same = earlier.IsTurnedOnRim ? Strips.Count - 1 - strip : strip;
                mixed[strip] = ((1 - earlier.Share) * here[strip]) + (earlier.Share * before[same]);
            }

            return mixed;
        }
    }
}
