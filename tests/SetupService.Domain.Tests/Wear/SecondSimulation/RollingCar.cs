using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>How one wheel is set, and what is on it.</summary>
internal sealed record WheelState(double CamberDeg, double ToeDeg, double PressureKpa, TyreMake Tyre)
{
    /// <summary>Drag of a brake that does not let go, as a share of the wheel's load.</summary>
    public double DragShare { get; init; }
}

/// <summary>A car on its four wheels, in the order of <see cref="WheelPosition"/>: it tells how fast each disc of each tyre wears.</summary>
internal sealed class RollingCar(CarKind kind, IReadOnlyList<WheelState> wheels)
{
    private const double Gravity = 9.81;
    private const double CamberGiveDegPerKn = 0.15;

    // Hot rubber wears by more than its energy: by a greater power of it, alike at this energy of a disc, J/m. Published drum tests find up to the fourth
    // power of side force near the limit (abstract read); the figures here are judgement.
    private const double HotterPower = 0.35;
    private const double AlikeAtJPerM = 25;
    private readonly ContactPatch _left = new();
    private readonly ContactPatch _right = new();

    /// <summary>How it stands.</summary>
    public IReadOnlyList<WheelState> Wheels { get; } = wheels;

    /// <summary>Wear of each disc of each tyre, mm per km.</summary>
    /// <param name="events">What is driven.</param>
    /// <param name="isHot">Whether the rubber is hot, as on track.</param>
    /// <param name="hotKpa">How much the pressures are above cold, kPa.</param>
    /// <param name="wornMm">Wear so far of each disc of each tyre.</param>
    public double[][] RatesMmPerKm(IReadOnlyList<RoadEvent> events, bool isHot, double hotKpa, IReadOnlyList<double[]> wornMm)
    {
        var rates = new double[4][];
        for (var wheel = 0; wheel < 4; wheel++) rates[wheel] = new double[ContactPatch.Discs];
        var power = isHot ? HotterPower : 0;
        foreach (var one in events)
        {
            AddAxle(CarAxle.Front, one, hotKpa, power, wornMm, rates);
            AddAxle(CarAxle.Rear, one, hotKpa, power, wornMm, rates);
        }

        for (var wheel = 0; wheel < 4; wheel++)
        {
            for (var i = 0; i < ContactPatch.Discs; i++) rates[wheel][i] *= Wheels[wheel].Tyre.MmPerKj * Math.Pow(AlikeAtJPerM, -power);
        }

        return rates;
    }

    private void AddAxle(CarAxle axle, in RoadEvent one, double hotKpa, double morePower, IReadOnlyList<double[]> wornMm, double[][] rates)
    {
        var first = axle == CarAxle.Front ? 0 : 2;
        var (l, r) = (Wheels[first], Wheels[first + 1]);
        var share = axle == CarAxle.Front ? kind.FrontShare : 1 - kind.FrontShare;
        var along = one.LongitudinalG * kind.MassKg * Gravity * kind.HeightMm / kind.WheelbaseMm * (axle == CarAxle.Front ? -1 : 1);
        var axleN = Math.Max(400, (share * kind.MassKg * Gravity) + along);
        var toRight = Math.Clamp(one.LateralG * kind.MassKg * Gravity * kind.HeightMm / kind.TrackMm * kind.TransferShare(axle), -axleN * 0.48, axleN * 0.48);
        var (leftN, rightN) = ((axleN / 2) - toRight, (axleN / 2) + toRight);
        var wantedN = one.LateralG * kind.MassKg * Gravity * share;

        // To the left, the right wheel is the outer one: the body leans on it, and its top leans outwards.
        var lostDeg = kind.RollDegPerG * one.LateralG * kind.LeanLost(axle);
        var (leftForceN, rightForceN) = (wantedN * leftN / axleN, wantedN * rightN / axleN);
        var (toeLeft, toeRight) = (l.ToeDeg * Math.PI / 180, r.ToeDeg * Math.PI / 180);
        _left.Press(l.Tyre, leftN, l.PressureKpa + hotKpa, l.CamberDeg - lostDeg - (CamberGiveDegPerKn * leftForceN / 1000), -leftForceN, wornMm[first]);
        _right.Press(r.Tyre, rightN, r.PressureKpa + hotKpa, r.CamberDeg + lostDeg + (CamberGiveDegPerKn * rightForceN / 1000), rightForceN, wornMm[first + 1]);

        // Slip towards the left that both tyres have beside their toe.
        var slip = Bisect(-0.3, 0.3, s => _left.SideForceN(s - toeLeft, 0) + _right.SideForceN(s + toeRight, 0) - wantedN);
        if (one.LateralG != 0 && axle == CarAxle.Front) slip += Math.CopySign(one.FrontExcessSlip, one.LateralG);
        var driveN = one.LongitudinalG * kind.MassKg * Gravity * (one.LongitudinalG < 0 ? axleN / (kind.MassKg * Gravity) : kind.DriveShare(axle));
        var spin = kind.DriveShare(axle) > 0 ? one.SpinRatio : 0;
        Rub(_left, l, toeLeft - slip, driveN / 2, leftN, spin, one.Share, morePower, rates[first]);
        Rub(_right, r, slip + toeRight, driveN / 2, rightN, spin, one.Share, morePower, rates[first + 1]);
    }

    private static void Rub(ContactPatch patch, WheelState wheel, double inboardSlip, double driveN, double loadN, double spin, double share, double morePower, double[] rate)
    {
        var wantedN = driveN - (wheel.DragShare * loadN);
        var ratio = Bisect(-0.12, 0.12, s => patch.DriveForceN(inboardSlip, s) - wantedN);
        patch.AddEnergy(inboardSlip, ratio + spin, share, wheel.Tyre.EnergyPower + morePower, rate);
    }

    private static double Bisect(double low, double high, Func<double, double> rising)
    {
        for (var step = 0; step < 16; step++)
        {
            var middle = (low + high) / 2;
            if (rising(middle) < 0) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }
}
