using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Finds how the two wheels of an axle roll: the axle takes the slip at which its wheels together give the side force the turn needs.</summary>
internal static class RollingAxle
{
    private const double SpinningSlip = 0.5;
    private const double SpinningBulge = 0.25;
    private const double FrontBrakeShare = 0.7;

    public static (RollingWheel Left, RollingWheel Right) Of(TrueCar car, TrueAxle axle, DrivingState state)
    {
        var isFront = axle.Place == CarAxle.Front;
        var transfer = Math.Clamp(axle.LoadTransferPerG * state.LateralG, -0.93, 0.93);
        var pitch = 1 + ((isFront ? -0.3 : 0.3) * state.DriveG);
        var loadLeft = (1 - transfer) * pitch;
        var loadRight = (1 + transfer) * pitch;
        var slidingSlip = axle.Tyre.SlidingSlipRad;
        var axleSlip = Slip(axle, state.LateralG, loadLeft, loadRight);
        if (axle.DragShare > 0) axleSlip -= axle.DragShare * Slip(axle, 0, 1, 1);
        if (isFront && state.OverdrivenSlip > 0)
        {
            axleSlip = Math.Sign(state.LateralG) * Math.Max(Math.Abs(axleSlip), state.OverdrivenSlip * slidingSlip);
        }

        var longForce = LongForceShare(car, axle, state.DriveG, isFront);
        var spins = state.Spins == axle.Place;
        var camberChange = state.LateralG * (axle.RollCamberLossDegPerG - axle.SteerCamberGainDegPerG);
        return (
            Wheel(axle.Left, loadLeft, -axleSlip + Radians(axle.Left.ToeDeg), camberChange),
            Wheel(axle.Right, loadRight, axleSlip + Radians(axle.Right.ToeDeg), -camberChange));

        RollingWheel Wheel(TrueWheel wheel, double load, double sideSlip, double change)
        {
            var loose = Radians(axle.LooseToeDeg);
            return new(
                load,
                Friction(axle.Tyre, load),
                loose > 0 ? Math.CopySign(Math.Sqrt((sideSlip * sideSlip) + (loose * loose)), sideSlip) : sideSlip,
                spins ? SpinningSlip * wheel.SpinShare : Brush.Slip(longForce / Friction(axle.Tyre, load) / load, slidingSlip),
                -wheel.CamberDeg + change,
                spins ? SpinningBulge : 0);
        }
    }

    /// <summary>Slip with the wheels' toe, found by halving; positive pushes the axle to the left.</summary>
    private static double Slip(TrueAxle axle, double lateralG, double loadLeft, double loadRight)
    {
        double low = -0.5, high = 0.5;
        for (var step = 0; step < 36; step++)
        {
            var middle = (low + high) / 2;
            var left = loadLeft * Friction(axle.Tyre, loadLeft) * Brush.ForceShare(-middle + Radians(axle.Left.ToeDeg), axle.Tyre.SlidingSlipRad);
            var right = loadRight * Friction(axle.Tyre, loadRight) * Brush.ForceShare(middle + Radians(axle.Right.ToeDeg), axle.Tyre.SlidingSlipRad);
            if (right - left < 2 * lateralG) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Force along the way of one wheel by its static load.</summary>
    private static double LongForceShare(TrueCar car, TrueAxle axle, double driveG, bool isFront)
    {
        var carByWheel = 2 * (car.Front.WheelLoadN + car.Rear.WheelLoadN) / (2 * axle.WheelLoadN);
        if (driveG < 0) return -driveG * carByWheel * (isFront ? FrontBrakeShare : 1 - FrontBrakeShare);
        if (!axle.IsDriven) return 0;
        return driveG * carByWheel * (car.DrivenAxle == DrivenAxle.Both ? 0.5 : 1);
    }

    private static double Friction(TrueTyre tyre, double loadShare) => tyre.Friction * (1 - (0.12 * (loadShare - 1)));

    private static double Radians(double deg) => deg * Math.PI / 180;
}
