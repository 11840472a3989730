using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering.Balance;

/// <summary>How an axle is made, alone or like another, whose state and wheels' motions it takes where nothing about them differs.</summary>
internal sealed partial class CorneringAxle
{
    /// <summary>Creates the axle; null where its hardpoints do not close.</summary>
    /// <param name="car">The car.</param>
    /// <param name="at">Which axle.</param>
    /// <param name="turn">Which way it turns.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    /// <param name="like">The same axle of a similar car, whose wheels' motions are taken where nothing about them differs; null = none.</param>
    public static CorneringAxle? Create(HandlingCar car, CarAxle at, TurnDirection turn, WorkBudget? budget = null, CorneringAxle? like = null)
    {
        var axle = car.At(at);
        if (Motions(axle, at, like) is not var (left, right)) return null;
        var station = StationOf(car, at);
        var tyre = car.TyreOf(axle);
        var leftWheel = new CorneringWheel(axle, tyre, left, WheelSide.Left, turn == TurnDirection.Right, budget, like?.At(WheelSide.Left));
        var rightWheel = new CorneringWheel(axle, tyre, right, WheelSide.Right, turn == TurnDirection.Left, budget, like?.At(WheelSide.Right));
        return turn == TurnDirection.Left ? new(axle, car.Differential, station, rightWheel, leftWheel) : new(axle, car.Differential, station, leftWheel, rightWheel);
    }

    /// <summary>Becomes the same axle of a similar car, in the state another is in, whose wheels' motions it takes where nothing about them differs; false, and of no further use but for this, where its hardpoints do not close.</summary>
    /// <param name="car">The car.</param>
    /// <param name="at">Which axle.</param>
    /// <param name="like">The other, turning the same way.</param>
    public bool TryTake(HandlingCar car, CarAxle at, CorneringAxle like)
    {
        var axle = car.At(at);
        if (Motions(axle, at, like) is not var (left, right)) return false;
        var tyre = car.TyreOf(axle);
        foreach (var wheel in (ReadOnlySpan<CorneringWheel>)[Outer, Inner]) wheel.Take(axle, tyre, wheel.Side == WheelSide.Left ? left : right, like.At(wheel.Side));
        Take(axle, car.Differential, StationOf(car, at));
        _answered = default;
        StartFrom(like);
        return true;
    }

    private static (WheelMotion Left, WheelMotion Right)? Motions(HandlingAxle axle, CarAxle at, CorneringAxle? like)
    {
        if ((OfLike(WheelSide.Left) ?? axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Left))) is not { } left) return null;
        if ((OfLike(WheelSide.Right) ?? (axle.IsSetAlike ? left : axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Right)))) is not { } right) return null;
        return (left, right);

        WheelMotion? OfLike(WheelSide side)
        {
            if (like is null) return null;
            if (ReferenceEquals(axle, like._axle)) return like.At(side).Motion;
            return ReferenceEquals(axle.Suspension, like._axle.Suspension) && axle.SetupOf(at, side) == like._axle.SetupOf(at, side) ? like.At(side).Motion : null;
        }
    }

    /// <summary>The same axle of a similar car, in the state this one is in; null where its hardpoints do not close.</summary>
    public CorneringAxle? With(HandlingCar car, CarAxle at, TurnDirection turn, WorkBudget? budget)
    {
        var axle = car.At(at);
        if (ReferenceEquals(axle, _axle) && StationOf(car, at) == StationMm && car.Differential == _differential)
        {
            // Nothing of it differs but, may be, what its tyres hold.
            var copy = (CorneringAxle)MemberwiseClone();
            var tyre = car.TyreOf(axle);
            (copy.Outer, copy.Inner) = (Outer.With(tyre), Inner.With(tyre));
            if (!copy.Outer.HasSameTyre(Outer)) copy._answered = default;
            return copy;
        }

        if (Create(car, at, turn, budget, this) is not { } other) return null;
        other.StartFrom(this);
        return other;
    }

    private static double StationOf(HandlingCar car, CarAxle at)
    {
        var wheelbase = car.WheelbaseMm ?? 0;
        return at == CarAxle.Front ? (1 - car.ShareFront) * wheelbase : -car.ShareFront * wheelbase;
    }

    /// <summary>The same axle as it is, its wheels' motions taken about where they are.</summary>
    public CorneringAxle Nearby()
    {
        var nearby = (CorneringAxle)MemberwiseClone();
        (nearby.Outer, nearby.Inner) = (Outer.Nearby(), Inner.Nearby());
        return nearby;
    }

    public void StartFrom(CorneringAxle other)
    {
        Outer.StartFrom(other.Outer);
        Inner.StartFrom(other.Inner);
        (HeaveMm, SlipDeg, _peakSlipDeg) = (other.HeaveMm, other.SlipDeg, other._peakSlipDeg);
        if (StationMm == other.StationMm && HalfTrackMm == other.HalfTrackMm && Outer.HasSameTyre(other.Outer)) (_answered, _answer) = (other._answered, other._answer);
    }
}
