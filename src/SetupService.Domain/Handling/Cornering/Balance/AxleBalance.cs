namespace SetupService.Domain.Handling.Cornering.Balance;

/// <summary>
/// An axle's equilibrium equations, linearised about the present state: both travels, and with them both loads, as linear functions of
/// the residuals, heave and roll. Derivation in docs/methods/cornering.
/// </summary>
internal readonly record struct AxleBalance
{
    private readonly CorneringAxle _axle;
    private readonly (double Outer, double Inner) _fixed;
    private readonly (double Outer, double Inner) _perHeave;
    private readonly (double Outer, double Inner) _perRoll;

    private AxleBalance(CorneringAxle axle, double steer)
    {
        _axle = axle;
        var (outer, inner) = axle.Residuals(steer);
        var (outerBySteer, innerBySteer) = (axle.Outer.LoadBySteerN(steer), axle.Inner.LoadBySteerN(steer));
        OffN = axle.LoadN + outerBySteer + innerBySteer - axle.AskedLoadN;
        MovedN = axle.MovedN + ((outerBySteer - innerBySteer) / 2);
        Largest = Math.Max(Math.Abs(outer), Math.Abs(inner));
        axle.Linearise();
        _fixed = axle.Travels(outer, inner);
        _perHeave = axle.Travels(-axle.Outer.TyreRateNPerMm, -axle.Inner.TyreRateNPerMm);
        _perRoll = axle.Travels(RollLoad(axle.Outer), RollLoad(axle.Inner));

        double RollLoad(CorneringWheel wheel) =>
            (-wheel.TyreRateNPerMm * wheel.RisePerRoll) - wheel.LinkLoadPerRoll + (axle.SuspendedN(wheel) * wheel.RiseBendByRoll / wheel.Rise);
    }

    /// <summary>The larger of the two wheels' residuals, N.</summary>
    public double Largest { get; }

    /// <summary>Residual of the axle's load, N.</summary>
    public double OffN { get; }

    /// <summary>Load transferred from the inner to the outer wheel since rest, N.</summary>
    public double MovedN { get; }

    /// <summary>The equations after this much more steer.</summary>
    public static AxleBalance Create(CorneringAxle axle, double steer) => new(axle, steer);

    /// <summary>The heave, mm, that changes the axle's load by this much, N: a constant and a part per unit of roll.</summary>
    public (double Fixed, double PerRoll) HeaveFor(double loadN)
    {
        var perHeave = Outer(_perHeave.Outer, 1, 0) + Inner(_perHeave.Inner, 1, 0);
        var held = Outer(_fixed.Outer, 0, 0) + Inner(_fixed.Inner, 0, 0);
        var perRoll = Outer(_perRoll.Outer, 0, 1) + Inner(_perRoll.Inner, 0, 1);
        return ((loadN - held) / perHeave, -perRoll / perHeave);
    }

    /// <summary>Change of the loads' moment with that heave, N mm: a constant and a part per unit of roll.</summary>
    public (double Fixed, double PerRoll) Moment((double Fixed, double PerRoll) heave, double halfTrackMm)
    {
        var perHeave = Outer(_perHeave.Outer, 1, 0) - Inner(_perHeave.Inner, 1, 0);
        var held = Outer(_fixed.Outer, 0, 0) - Inner(_fixed.Inner, 0, 0);
        var perRoll = Outer(_perRoll.Outer, 0, 1) - Inner(_perRoll.Inner, 0, 1);
        return (halfTrackMm * (held + (perHeave * heave.Fixed)), halfTrackMm * (perRoll + (perHeave * heave.PerRoll)));
    }

    /// <summary>Change of the travels, mm.</summary>
    public (double Outer, double Inner) Travels(double heaveMm, double rollRad) => (
        _fixed.Outer + (_perHeave.Outer * heaveMm) + (_perRoll.Outer * rollRad),
        _fixed.Inner + (_perHeave.Inner * heaveMm) + (_perRoll.Inner * rollRad));

    private double Outer(double travel, double heave, double roll) => Load(_axle.Outer, travel, heave, roll);

    private double Inner(double travel, double heave, double roll) => Load(_axle.Inner, travel, heave, roll);

    private static double Load(CorneringWheel wheel, double travel, double heave, double roll) =>
        -wheel.TyreRateNPerMm * ((wheel.Rise * travel) + heave + (wheel.RisePerRoll * roll));
}
