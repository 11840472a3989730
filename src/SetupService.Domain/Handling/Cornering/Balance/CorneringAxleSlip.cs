using SetupService.Domain.Handling.Tyres;

namespace SetupService.Domain.Handling.Cornering.Balance;

/// <summary>The slip at which an axle's two tyres give its side force, and what of their grip that takes.</summary>
internal sealed partial class CorneringAxle
{
    /// <summary>
    /// The largest share of its grip at which an axle's slip angle is sought on the tyres' own curves. An axle that needs more is taken with their peak raised to this share: it
    /// supplies what the turn asks, and the attitude stays defined up to and beyond the limit.
    /// </summary>
    public const double MostUsed = 0.99;

    private const double UsualPeakDeg = 14;

    // Both tyres' own peaks lie at about the same slip, so that together they give at least this share of the sum.
    private const double LeastOfSum = 0.75;

    private SlipQuestion _answered;
    private (double SlipDeg, double Used, bool IsRaised, double OuterN) _answer;
    private double _peakSlipDeg = UsualPeakDeg;

    /// <summary>Scales the friction of both tyres by so much of what they have by themselves.</summary>
    public void PutFriction(double factor)
    {
        Outer.PutFriction(factor * _axle.TyreFriction);
        Inner.PutFriction(factor * _axle.TyreFriction);
        _answered = default;
    }

    /// <summary>The slip angle at which its tyres last gave the most, degrees.</summary>
    public double PeakSlipDeg => _peakSlipDeg;

    /// <summary>The most two other tyres would give together in the places of its own, N.</summary>
    /// <param name="tyre">The tyres.</param>
    /// <param name="slipDeg">The slip angle at which they do, degrees: a guess first, then what was found.</param>
    /// <param name="centreStationMm">Station of the turn's centre, mm.</param>
    /// <param name="centreMm">How far it lies to the side, mm.</param>
    public double PeakN(in AxleTyre tyre, ref double slipDeg, double centreStationMm, double centreMm) =>
        Tyres(Outer.Curve(tyre), Inner.Curve(tyre), centreStationMm, centreMm).PeakN(ref slipDeg, lastStepDeg: TyrePair.RoughStepDeg);

    /// <summary>Share of the most its tyres can give together that the axle's side force takes, above 1 where they cannot hold it; infinite where both have left the road.</summary>
    public double GripUsed(in TyrePair tyres)
    {
        var peak = tyres.PeakN(ref _peakSlipDeg);
        return peak > 0 ? SideForceN / peak : double.PositiveInfinity;
    }

    /// <summary>The same of its tyres as they stand, for a turn centred at this station and distance.</summary>
    public double GripUsed(double centreStationMm, double centreMm) => GripUsed(Tyres(centreStationMm, centreMm));

    /// <summary>The tyres that supply the side force: raised where they cannot by themselves. False where both have left the road.</summary>
    public bool TryHold(ref TyrePair tyres)
    {
        IsRaised = false;
        if (SideForceN <= LeastOfSum * MostUsed * (tyres.Outer.PeakN + tyres.Inner.PeakN)) return true;
        var asked = SideForceN / MostUsed;
        var peak = tyres.PeakN(ref _peakSlipDeg, asked, TyrePair.RoughStepDeg);
        if (!(peak > 0)) return false;
        IsRaised = asked > peak;
        if (IsRaised) tyres = tyres.WithPeak(asked / peak);
        return true;
    }

    /// <summary>
    /// Finds the slip angle at which the tyres give the side force, raised where they cannot by themselves, and sets it; the side force of the outer one there, N, null where
    /// both have left the road or no slip gives it.
    /// </summary>
    /// <param name="centreStationMm">Station of the turn's centre, mm.</param>
    /// <param name="centreMm">How far it lies to the side, mm.</param>
    /// <param name="isAtPeak">True for the slip at which they stand where the axle uses all its grip, whatever it uses; the outer one's share of the side force is then that there.</param>
    /// <param name="isRough">True where it need not be found to the last digit.</param>
    public double? TrySlip(double centreStationMm, double centreMm, bool isAtPeak, bool isRough)
    {
        var asked = Ask(centreStationMm, centreMm, isAtPeak);
        if (_answered == asked)
        {
            (SlipDeg, UsedAtPeak, IsRaised) = (_answer.SlipDeg, _answer.Used, _answer.IsRaised);
            return _answer.OuterN;
        }

        if (FindSlip(Tyres(centreStationMm, centreMm), isAtPeak, isRough) is not { } outerN) return null;
        _answered = asked;
        _answer = (SlipDeg, UsedAtPeak, IsRaised, outerN);
        return outerN;
    }

    private SlipQuestion Ask(double centreStationMm, double centreMm, bool isAtPeak) => new(
        Outer.TyrePose, Inner.TyrePose, Outer.HeadingComplianceDeg, Inner.HeadingComplianceDeg, Outer.LongitudinalN, Inner.LongitudinalN, SideForceN, centreStationMm, centreMm, isAtPeak);

    private double? FindSlip(TyrePair tyres, bool isAtPeak, bool isRough)
    {
        var (askedN, share, guessDeg) = (SideForceN, 1.0, SlipDeg);
        if (isAtPeak)
        {
            guessDeg -= _peakSlipDeg;
            askedN = tyres.PeakN(ref _peakSlipDeg, lastStepDeg: TyrePair.RoughStepDeg);
            if (!(askedN > 0)) return null;

            // It goes with the peak.
            guessDeg += _peakSlipDeg;
            share = UsedAtPeak = SideForceN / askedN;
            IsRaised = true;
            tyres = tyres.WithPeak(1 / MostUsed);
        }
        else if (!TryHold(ref tyres))
        {
            return null;
        }

        if (tyres.SlipFor(askedN, guessDeg, isRough ? TyrePair.RoughStepDeg : TyrePair.LastStepDeg) is not { } shared) return null;
        SlipDeg = shared.SlipDeg;
        return share * shared.OuterN;
    }

    /// <summary>Share of its grip it uses where its tyres were last asked for their slip at their peak.</summary>
    public double UsedAtPeak { get; private set; }

    /// <summary>True where its tyres were raised when they were last asked to hold the side force.</summary>
    public bool IsRaised { get; private set; }

    /// <summary>The slip angle at which the two tyres give the side force, and each one's part; null where they cannot.</summary>
    public PairSlip? SlipFor(in TyrePair tyres) => tyres.SlipFor(SideForceN, SlipDeg);

    /// <summary>Sets slip angle and side forces; returns how much the forces changed, N.</summary>
    public double ApplySideForce(in PairSlip shared, in TyrePair tyres, double accelerationMs2)
    {
        SlipDeg = shared.SlipDeg;
        var unsprung = _axle.UnsprungMassKg * accelerationMs2;
        return Outer.ApplySideForce(shared.OuterN, SlipDeg + tyres.OuterTurnDeg, unsprung) + Inner.ApplySideForce(shared.InnerN, SlipDeg + tyres.InnerTurnDeg, unsprung);
    }

    /// <summary>Sets side forces to a state that need not be in balance; the inner wheel has what of the axle's side force the outer one has not.</summary>
    public void PlaceSideForce(double outerN, double accelerationMs2)
    {
        var unsprung = _axle.UnsprungMassKg * accelerationMs2;
        Outer.ApplySideForce(outerN, SlipDeg, unsprung);
        Inner.ApplySideForce(SideForceN - outerN, SlipDeg, unsprung);
    }
}

/// <summary>All that the slip of an axle's tyres follows from, so that it is not sought again where nothing of it has changed. By default one nobody asks.</summary>
internal readonly record struct SlipQuestion(
    TyrePose Outer, TyrePose Inner, double OuterComplianceDeg, double InnerComplianceDeg, double OuterForwardN, double InnerForwardN, double SideForceN, double CentreStationMm, double CentreMm, bool IsAtPeak);
