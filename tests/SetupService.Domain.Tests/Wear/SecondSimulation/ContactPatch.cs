namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>What one tyre is made of, for its contact with the road.</summary>
/// <param name="TreadWidthMm">Width of its tread, mm.</param>
/// <param name="RadiusMm">Radius, mm.</param>
/// <param name="RightKpa">Gauge pressure at which its crown has the shape it was moulded to, kPa.</param>
/// <param name="CrownMm">How much lower the edge of the tread lies than its middle at that pressure, mm.</param>
/// <param name="Friction">Friction coefficient of rubber and road.</param>
/// <param name="TreadStiffness">Slip stiffness of its tread; 1 = a usual tyre.</param>
/// <param name="MmPerKj">Depth lost to a kilojoule on one disc, mm; a soft tyre has more.</param>
/// <param name="EnergyPower">Power of the energy per metre by which it wears; 1 = in proportion.</param>
/// <param name="NewDepthMm">Depth of its tread when new, mm.</param>
internal sealed record TyreMake(
    double TreadWidthMm, double RadiusMm, double RightKpa, double CrownMm, double Friction, double TreadStiffness, double MmPerKj, double EnergyPower, double NewDepthMm);

/// <summary>
/// A tyre pressed on the road as discs side by side, each with the patch a circle of its radius makes when it is pressed in. The belt tilts under the
/// discs with inclination and side force, its crown grows with the pressure, and worn discs stand off the road. The air carries by area, the sidewalls
/// carry near the edges by deflection. Slip of a disc: the tyre's slip angle, the wheel's slip ratio, and what its rolling radius differs from the mean.
/// All coefficients are judgement, no source, but the two named at them.
/// </summary>
internal sealed class ContactPatch
{
    /// <summary>How many discs the tread is made of.</summary>
    public const int Discs = 11;

    // Share of the wheel's inclination by which the belt's face tilts on the road; the rest is taken up by the carcass.
    private const double TiltShare = 0.19;
    private const double TiltMmPerSideForceShare = 1.1;
    private const double WornStandsOff = 0.12;
    private const double CrownPower = 1.6;
    private const double SidewallNPerMm = 230;
    private const double SidewallReach = 0.25;
    private const double RollingRadiusShare = 0.35;

    // A usual tyre has some 1,000 N/deg at 4 kN: handbook order of magnitude, from memory.
    private const double StiffnessPerMm2 = 3.1;

    // Softer air, softer tyre: the carcass gives more for the same force.
    private const double CarcassPower = 1.0;

    // Steering by hand, bumps, camber of the road, and the squirm of a patch as it is flattened, which grows with how far the tyre is pressed in.
    private const double UnrestSlip = 0.0022;
    private const double UnrestAtMm = 4.5;

    // The same energy on less rubber wears it faster: by the load of a disc against the mean, to this power.
    private const double CrowdingPower = 0.5;

    // The edge a tyre is dragged over rubs more: the belt bends under the side force, so that slip grows across it. Trade: toe-in wears the outer shoulder.
    private const double SlipGrowsAcross = 0.22;
    private readonly double[] _standoffMm = new double[Discs];
    private readonly double[] _loadN = new double[Discs];
    private readonly double[] _stiffnessN = new double[Discs];
    private readonly double[] _unrest = new double[Discs];
    private double _radiusMm;
    private double _friction;

    /// <summary>Where a disc is, from −1 at the outer edge to 1 at the inner one.</summary>
    public static double Across(int disc) => -1 + (((2 * disc) + 1) / (double)Discs);

    /// <summary>Load of each disc, N.</summary>
    public IReadOnlyList<double> LoadN => _loadN;

    /// <summary>Presses the tyre on the road.</summary>
    /// <param name="tyre">The tyre.</param>
    /// <param name="loadN">Load, N.</param>
    /// <param name="pressureKpa">Gauge pressure, kPa.</param>
    /// <param name="inclinationDeg">Inclination of the wheel to the road, degrees, negative = top towards the car.</param>
    /// <param name="inboardForceN">Side force of the road on the tyre, N, positive = towards the car.</param>
    /// <param name="wornMm">Wear of each disc, mm.</param>
    public void Press(TyreMake tyre, double loadN, double pressureKpa, double inclinationDeg, double inboardForceN, ReadOnlySpan<double> wornMm)
    {
        (_radiusMm, _friction) = (tyre.RadiusMm, tyre.Friction);
        var tiltMm = (TiltShare * tyre.TreadWidthMm / 2 * Math.Sin(-inclinationDeg * Math.PI / 180)) - (TiltMmPerSideForceShare * inboardForceN / Math.Max(loadN, 1));
        var crownMm = tyre.CrownMm * Math.Pow(Math.Max(pressureKpa, 20) / tyre.RightKpa, CrownPower);
        var meanWornMm = 0.0;
        foreach (var worn in wornMm) meanWornMm += worn / Discs;
        for (var i = 0; i < Discs; i++)
        {
            var u = Across(i);
            _standoffMm[i] = (tiltMm * u) - (crownMm * u * u) - (WornStandsOff * (wornMm[i] - meanWornMm));
        }

        var (low, high) = (0.0, 40.0);
        for (var step = 0; step < 18; step++)
        {
            var middle = (low + high) / 2;
            if (CarriedN(tyre, pressureKpa, middle) < loadN) low = middle;
            else high = middle;
        }

        CarriedN(tyre, pressureKpa, high);
        for (var i = 0; i < Discs; i++)
        {
            var pressedMm = Math.Max(0, high + _standoffMm[i]);
            _stiffnessN[i] = StiffnessPerMm2 * tyre.TreadStiffness * Math.Pow(pressureKpa / tyre.RightKpa, CarcassPower) * 2 * _radiusMm * pressedMm;
            _unrest[i] = UnrestSlip * pressedMm / UnrestAtMm;
        }
    }

    /// <summary>Side force by a slip angle at a slip ratio, N.</summary>
    public double SideForceN(double sideSlip, double slipRatio)
    {
        var sum = 0.0;
        for (var i = 0; i < Discs; i++) sum += ForceBySlip(i, sideSlip, slipRatio, out var slip) * sideSlip / slip;
        return sum;
    }

    /// <summary>Drive or brake force by a slip angle at a slip ratio, N.</summary>
    public double DriveForceN(double sideSlip, double slipRatio)
    {
        var sum = 0.0;
        for (var i = 0; i < Discs; i++) sum += ForceBySlip(i, sideSlip, slipRatio, out var slip) * SlipRatio(i, slipRatio) / slip;
        return sum;
    }

    /// <summary>Adds the energy each disc rubs off, J per metre driven, to a power, times a weight.</summary>
    /// <param name="inboardSlip">Slip angle, rad, positive where the road pushes the tyre towards the car.</param>
    /// <param name="slipRatio">Slip ratio, positive where it drives.</param>
    /// <param name="weight">The weight.</param>
    /// <param name="power">The power.</param>
    /// <param name="energyJPerM">What is added to, a disc each.</param>
    public void AddEnergy(double inboardSlip, double slipRatio, double weight, double power, Span<double> energyJPerM)
    {
        var meanN = 0.0;
        foreach (var loadN in _loadN) meanN += loadN / Discs;
        for (var i = 0; i < Discs; i++)
        {
            var energy = ForceBySlip(i, inboardSlip * (1 - (SlipGrowsAcross * Across(i) * Math.Sign(inboardSlip))), slipRatio, out var slip) * slip * Math.Pow(_loadN[i] / meanN, CrowdingPower);
            energyJPerM[i] += weight * Math.Pow(energy, power);
        }
    }

    private double CarriedN(TyreMake tyre, double pressureKpa, double pressedMm)
    {
        var widthMm = tyre.TreadWidthMm / Discs;
        var sum = 0.0;
        for (var i = 0; i < Discs; i++)
        {
            var mm = Math.Max(0, pressedMm + _standoffMm[i]);
            var edge = Math.Exp(-(1 - Math.Abs(Across(i))) / SidewallReach);
            _loadN[i] = (widthMm * pressureKpa / 1000 * 2 * Math.Sqrt(2 * _radiusMm * mm)) + (SidewallNPerMm / (2 * SidewallReach * Discs / 2) * edge * mm);
            sum += _loadN[i];
        }

        return sum;
    }

    private double SlipRatio(int disc, double slipRatio) => slipRatio - (RollingRadiusShare * _standoffMm[disc] / _radiusMm);

    private double ForceBySlip(int disc, double sideSlip, double slipRatio, out double slip)
    {
        var along = SlipRatio(disc, slipRatio);
        slip = Math.Sqrt((along * along) + (sideSlip * sideSlip) + (_unrest[disc] * _unrest[disc]));
        var most = _friction * _loadN[disc];
        var elastic = _stiffnessN[disc] * slip;
        return most <= 0 ? 0 : elastic / Math.Sqrt(1 + (elastic / most * (elastic / most)));
    }
}
