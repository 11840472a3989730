namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>
/// How a tread presses on the road and slips on it in one state, strip by strip, while it is not yet worn. The pressure across is the trapezoid
/// of a cambered belt (TST28) with a middle that inflation bulges; wear by pressure and slip is Archard's law on a brush tyre, as KTH builds it.
/// </summary>
internal sealed class TreadPress
{
    private const double BackgroundSlip = 0.004;

    /// <summary>Beyond this share of the sliding slip the carcass rolls under, as much as so many degrees of camber per share.</summary>
    private const double RollsUnderFrom = 0.7;
    private const double RollsUnderDeg = 1.5;

    public TreadPress(TrueTyre tyre, TrueWheel wheel, double temperatureWear, RollingWheel rolling, bool isTrack)
    {
        IsTrack = isTrack;
        LoadShare = rolling.LoadShare;
        SlipShare = rolling.SideSlip / tyre.SlidingSlipRad;
        var side = rolling.Friction * Brush.ForceShare(rolling.SideSlip, tyre.SlidingSlipRad);
        var levelDeg = (tyre.SideForceCamberDeg * side) + Math.CopySign(RollsUnderDeg * Math.Max(0, Math.Abs(SlipShare) - RollsUnderFrom), side);
        var tilt = tyre.CamberTiltPerDeg * (rolling.NegativeCamberDeg - levelDeg);
        var bulge = tyre.OwnBulge + (tyre.BulgePerPressureShare * wheel.PressureOffShare) + rolling.ExtraBulge;
        var grip = Math.Max(0, 1 - Math.Abs(SlipShare));
        var leading = tyre.LeadingEdge * Math.Tanh(rolling.SideSlip / 0.004) * grip * grip;
        var drum = tyre.CamberDrumShare * tyre.WidthMm / 2 * Math.Sin(Math.Abs(rolling.NegativeCamberDeg) * Math.PI / 180) / tyre.RadiusMm;
        for (var strip = 0; strip < Strips.Count; strip++)
        {
            var inward = Strips.Inward(strip);
            Pressure[strip] = Math.Max(0, 1 + (tilt * inward)) * Math.Max(0.05, 1 + (bulge * (1 - (3 * inward * inward))));
            var along = rolling.LongSlip + Math.Abs(drum * inward);
            var across = (rolling.SideSlip - (tyre.CamberSideSlipRadPerDeg * rolling.NegativeCamberDeg * inward)) * (1 - (leading * inward));
            var slip = Math.Sqrt((along * along) + (across * across) + (BackgroundSlip * BackgroundSlip));
            var work = rolling.Friction * Brush.Work(slip, tyre.SlidingSlipRad);
            WorkByPressure[strip] = work;
            WearByPressure[strip] = work * tyre.WearMmPerM * wheel.RateFactor * (1 - (tyre.OuterBias * inward));
            if (isTrack)
            {
                WearByPressure[strip] *= tyre.TrackFactor * temperatureWear
                    * Math.Pow(Math.Max(0.15, Brush.ForceShare(slip, tyre.SlidingSlipRad)), tyre.TrackPower - 2);
            }
        }
    }

    public bool IsTrack { get; }

    /// <summary>Load against the static one.</summary>
    public double LoadShare { get; }

    /// <summary>Side slip against that at which the whole contact slides, positive on the outside of a turn.</summary>
    public double SlipShare { get; }

    /// <summary>Pressure by strip, of any unit.</summary>
    public double[] Pressure { get; } = new double[Strips.Count];

    /// <summary>Frictional work by strip, per metre and per mean static pressure.</summary>
    public double[] WorkByPressure { get; } = new double[Strips.Count];

    /// <summary>Wear by strip, mm per metre and per mean static pressure.</summary>
    public double[] WearByPressure { get; } = new double[Strips.Count];
}
