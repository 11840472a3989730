namespace SetupService.Domain.Handling.Tyres;

/// <summary>
/// Side force of a passenger tyre by the Magic Formula in its form of 2006, made dimensionless by its nominal load (the formula's own scaling
/// factor for the nominal load, the similarity method of its ch. 4), so that a tyre of another size is the same tyre at another load.
/// Coefficients: a published set of a 205/60R15 91V at 2.2 bar, nominal load 4000 N (Tyre and Vehicle Dynamics, 2nd edition 2006, Appendix 3, Table A3.1; read in
/// three independent copies). Of four published passenger sets it is the one most surely copied, and its fall of friction with
/// load is near their middle (exponents −0.07, −0.13, −0.16, −0.17). Ply steer, conicity and what the set's inclination terms do to the peak are
/// left out: the latter have no best inclination. Method page: docs/methods/cornering.
/// </summary>
public static class PassengerTyre
{
    /// <summary>Where the set comes from, for an answer.</summary>
    public const string Source = "Tyre and Vehicle Dynamics (2nd edition, 2006), Appendix 3, set of a 205/60R15 91V, as three copies print it";

    /// <summary>Peak friction of the set itself at its nominal load, upright.</summary>
    public const double Friction = 0.99;

    /// <summary>Nominal load of the set, N.</summary>
    public const double NominalLoadN = 4000;

    // By how much curvature and camber thrust per load grow for each nominal load more, as a share of their value at nominal load: PEY2/PEY1 and PKY7/PKY6.
    private const double CurvaturePerLoad = 0.537 / 1.003;
    private const double CamberThrustPerLoad = 0.24 / 0.92;

    // Beyond this many nominal loads friction falls no further; the set was measured to about two.
    private const double MostLoads = 4;

    /// <summary>The curve at a load, N, and an inclination, degrees, positive = leaning into the turn.</summary>
    public static SideForceCurve At(double loadN, double leanDeg, in AxleTyre tyre)
    {
        if (!(loadN > 0)) return default;
        var set = tyre.Set;
        var loads = loadN / tyre.NominalLoadN;
        var stiffnessNPerDeg = StiffnessNPerDeg(loadN, tyre);
        var frictionLost = set.LoadSensitivity * (Math.Min(loads, MostLoads) - 1);
        var thrustNPerDeg = loadN * set.CamberThrustPerDeg * (1 + (CamberThrustPerLoad * (loads - 1)));
        return new SideForceCurve(
            loadN * tyre.Friction * Math.Max(LeastFriction, 1 - frictionLost) * PeakByLean(leanDeg, loads, set),
            set.Shape,
            stiffnessNPerDeg,
            Math.Min(1, set.Curvature * (1 + (CurvaturePerLoad * (loads - 1)))),
            thrustNPerDeg / stiffnessNPerDeg * Math.Sin(double.DegreesToRadians(leanDeg)));
    }

    /// <summary>
    /// The most braking or driving force of a tyre that gives no side force, N, at a load, N: the set's own (PDX1, PDX2) by its lateral friction, whatever its inclination.
    /// </summary>
    public static double LongitudinalPeakN(double loadN, in AxleTyre tyre)
    {
        if (!(loadN > 0)) return 0;
        var lost = tyre.Set.LongitudinalLoadSensitivity * (Math.Min(loadN / tyre.NominalLoadN, MostLoads) - 1);
        return loadN * tyre.Friction * tyre.Set.LongitudinalFriction * Math.Max(LeastFriction, 1 - lost);
    }

    /// <summary>
    /// Share of its peak side force a tyre keeps beside a longitudinal force: (1 − u^n)^(1/n), with n = 2 the friction ellipse (Theory of Ground Vehicles; Tyre and
    /// Vehicle Dynamics, ch. 1). Not below <see cref="LeastBeside"/>, so that an equilibrium stays defined. The slope at no slip is kept.
    /// </summary>
    /// <param name="used">Longitudinal force by the most there is of it, not negative; 1 and above = all of it.</param>
    /// <param name="exponent">The exponent n, above 0.</param>
    public static double SideShare(double used, double exponent) =>
        used < 1 ? Math.Max(LeastBeside, Math.Pow(1 - Math.Pow(used, exponent), 1 / exponent)) : LeastBeside;

    /// <summary>Share of the peak side force counted for a tyre that uses all its longitudinal force.</summary>
    public const double LeastBeside = 0.1;

    // However much it is overloaded, a tyre keeps this share of its friction; judgement.
    private const double LeastFriction = 0.3;

    /// <summary>Cornering stiffness at no slip and no inclination, N/deg, at a load, N: the set's sin(2 atan(load)) law.</summary>
    public static double StiffnessNPerDeg(double loadN, in AxleTyre tyre)
    {
        var loads = loadN / tyre.NominalLoadN;
        var stiffest = tyre.Set.StiffestLoads * tyre.Set.StiffestLoads;
        return tyre.StiffnessFactor * loadN * tyre.Set.StiffnessPerDeg * (stiffest + 1) / (stiffest + (loads * loads));
    }

    /// <summary>
    /// Peak side force over that of the upright tyre, at a load in nominal loads: 1 + s (γ − γ²/2γ*) with s growing with load^1.5; below 1 its reciprocal form, which has
    /// the same slope there and stays positive.
    /// </summary>
    public static double PeakByLean(double leanDeg, double loads, in TyreCoefficients set)
    {
        var change = set.LeanGainPerDeg * loads * Math.Sqrt(loads) * (leanDeg - (leanDeg * leanDeg / (2 * set.BestLeanDeg)));
        return change >= 0 ? 1 + change : 1 / (1 - change);
    }
}

/// <summary>What all tyres of a car have in common, dimensionless. </summary>
public readonly record struct TyreCoefficients
{
    /// <summary>Factor on the nominal loads of all tyres, which the rule for a size leaves open.</summary>
    public required double NominalLoadFactor { get; init; }

    /// <summary>Cornering stiffness at nominal load, as a share of the load per degree.</summary>
    public required double StiffnessPerDeg { get; init; }

    /// <summary>The load at which the cornering stiffness is greatest, in nominal loads.</summary>
    public required double StiffestLoads { get; init; }

    /// <summary>Share of its friction a tyre loses per nominal load more.</summary>
    public required double LoadSensitivity { get; init; }

    /// <summary>Shape factor of the Magic Formula (PCY1).</summary>
    public required double Shape { get; init; }

    /// <summary>Curvature of the Magic Formula at nominal load (PEY1).</summary>
    public required double Curvature { get; init; }

    /// <summary>Side force of a leaning tyre without slip, at nominal load, as a share of the load per degree.</summary>
    public required double CamberThrustPerDeg { get; init; }

    /// <summary>Share of the peak side force gained per degree of lean into the turn, at nominal load, near upright.</summary>
    public required double LeanGainPerDeg { get; init; }

    /// <summary>The lean into the turn with the highest peak, degrees; above 0.</summary>
    public required double BestLeanDeg { get; init; }

    /// <summary>Peak friction along the wheel by that across it, at nominal load.</summary>
    public required double LongitudinalFriction { get; init; }

    /// <summary>Share of its longitudinal friction a tyre loses per nominal load more.</summary>
    public required double LongitudinalLoadSensitivity { get; init; }

    /// <summary>Exponent of the curve on which longitudinal and side force share the grip; 2 = ellipse.</summary>
    public required double CombinedExponent { get; init; }
}

/// <summary>The tyre of one axle.</summary>
/// <param name="Set">What it has in common with the others.</param>
/// <param name="SizeLoadN">The nominal load its size has by rule, N; its own is that times the set's factor.</param>
/// <param name="Friction">Peak side force over load at nominal load, upright.</param>
/// <param name="StiffnessFactor">Its cornering stiffness by the set's, at the same load.</param>
public readonly record struct AxleTyre(TyreCoefficients Set, double SizeLoadN, double Friction, double StiffnessFactor = 1)
{
    /// <summary>Nominal load, N.</summary>
    public double NominalLoadN => Set.NominalLoadFactor * SizeLoadN;

    /// <summary>The same tyre with the cornering stiffness given for it at a static load, N/deg and N; the set's where null.</summary>
    public AxleTyre WithStiffness(double? corneringStiffnessNPerDeg, double staticLoadN) => corneringStiffnessNPerDeg is { } given
        ? this with { StiffnessFactor = given / PassengerTyre.StiffnessNPerDeg(staticLoadN, this with { StiffnessFactor = 1 }) }
        : this;
}
