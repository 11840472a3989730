namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>
/// Wears a tread strip by strip: pressure by slip (Archard's law on a brush tyre, as KTH builds it), with what is worn down bearing less.
/// The pressure across is the trapezoid of a cambered belt (TST28) with a middle that inflation bulges.
/// </summary>
internal sealed class StripWear(TrueTyre tyre, TrueWheel wheel, double temperatureWear)
{
    private const double BackgroundSlip = 0.004;
    private const double RelievedPerMm = 0.12;

    /// <summary>Beyond this share of the sliding slip the carcass rolls under, as much as so many degrees of camber per share.</summary>
    private const double RollsUnderFrom = 0.7;
    private const double RollsUnderDeg = 1.5;

    private readonly double[] _pressure = new double[Strips.Count];

    public double[] LostMm { get; } = new double[Strips.Count];

    public double[] RoadLostMm { get; } = new double[Strips.Count];

    public double[] TrackWork { get; } = new double[Strips.Count];

    public double TrackSlipShare { get; private set; }

    public void Add(RollingWheel rolling, double distanceM, bool isTrack)
    {
        SetPressure(rolling);
        if (isTrack) TrackSlipShare = Math.Max(TrackSlipShare, Math.Abs(rolling.SideSlip) / tyre.SlidingSlipRad);
        for (var strip = 0; strip < Strips.Count; strip++)
        {
            var inward = Strips.Inward(strip);
            var slip = Slip(rolling, inward);
            var work = _pressure[strip] * rolling.Friction * Brush.Work(slip, tyre.SlidingSlipRad) * distanceM;
            var wear = work * tyre.WearMmPerM * wheel.RateFactor * (1 - (tyre.OuterBias * inward));
            if (isTrack)
            {
                wear *= tyre.TrackFactor * temperatureWear * Math.Pow(Math.Max(0.15, Brush.ForceShare(slip, tyre.SlidingSlipRad)), tyre.TrackPower - 2);
                TrackWork[strip] += work;
            }
            else
            {
                RoadLostMm[strip] += wear;
            }

            LostMm[strip] += wear;
        }
    }

    private void SetPressure(RollingWheel rolling)
    {
        var side = rolling.Friction * Brush.ForceShare(rolling.SideSlip, tyre.SlidingSlipRad);
        var beyond = Math.Max(0, (Math.Abs(rolling.SideSlip) / tyre.SlidingSlipRad) - RollsUnderFrom);
        var levelDeg = (tyre.SideForceCamberDeg * side) + Math.CopySign(RollsUnderDeg * beyond, side);
        var tilt = tyre.CamberTiltPerDeg * (rolling.NegativeCamberDeg - levelDeg);
        var bulge = tyre.OwnBulge + (tyre.BulgePerPressureShare * wheel.PressureOffShare) + rolling.ExtraBulge;
        var lostMm = Strips.Mean(LostMm);
        for (var strip = 0; strip < Strips.Count; strip++)
        {
            var inward = Strips.Inward(strip);
            _pressure[strip] = Math.Max(0, 1 + (tilt * inward))
                * Math.Max(0.05, 1 + (bulge * (1 - (3 * inward * inward))))
                * Math.Max(0.2, 1 - (RelievedPerMm * (LostMm[strip] - lostMm)));
        }

        // However it is spread, the tread bears the wheel's load.
        var scale = rolling.LoadShare / Strips.Mean(_pressure);
        for (var strip = 0; strip < Strips.Count; strip++) _pressure[strip] *= scale;
    }

    private double Slip(RollingWheel rolling, double inward)
    {
        var camberRad = rolling.NegativeCamberDeg * Math.PI / 180;
        var along = rolling.LongSlip + Math.Abs(tyre.CamberDrumShare * tyre.WidthMm / 2 * Math.Sin(camberRad) / tyre.RadiusMm * inward);
        var side = rolling.SideSlip - (tyre.CamberSideSlipRadPerDeg * rolling.NegativeCamberDeg * inward);
        var grip = Math.Max(0, 1 - (Math.Abs(rolling.SideSlip) / tyre.SlidingSlipRad));
        side *= 1 - (tyre.LeadingEdge * inward * Math.Tanh(rolling.SideSlip / 0.004) * grip * grip);
        return Math.Sqrt((along * along) + (side * side) + (BackgroundSlip * BackgroundSlip));
    }
}
