using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Brings what was read of a car down to the signs and marks of its axles.</summary>
internal static class EvidenceExtractor
{
    /// <summary>Standard deviation of a camber or toe reading of a workshop, degrees; common practice, no source.</summary>
    private const double CamberErrorDeg = 0.1;
    private const double ToeErrorDeg = 0.04;

    // A pressure gauge's error by the usual pressure, percent; common practice, no source.
    private const double PressureErrorPct = 1;

    private const double WeeksApart = 26;
    private const double DepthsApartMm = 1;
    private const double MovedShare = 0.5;
    private const double HardlyMovedShare = 0.05;

    // One tyre of an axle that has run so many times as far as the other is not of the same age.
    private const double RunApart = 1.5;

    /// <summary>The signs and marks of one axle.</summary>
    /// <param name="wear">What was read.</param>
    /// <param name="at">Which axle.</param>
    /// <param name="car">What the car itself tells of it.</param>
    public static AxleSigns Extract(WearCase wear, CarAxle at, in CarSigns car) => Extract(wear, new WornHere(wear), at, car);

    /// <summary>The same with the wear already assigned to its places.</summary>
    public static AxleSigns Extract(WearCase wear, WornHere worn, CarAxle at, in CarSigns car)
    {
        var signs = new AxleSigns();
        var (left, right) = Pair(at);
        var (otherLeft, otherRight) = Pair(at == CarAxle.Front ? CarAxle.Rear : CarAxle.Front);
        Tread(signs, worn, left, right, worn.FiguresAt(otherLeft), worn.FiguresAt(otherRight));
        Heat(signs, wear.At(left), wear.At(right), wear.At(otherLeft), wear.At(otherRight));
        Pressure(signs, wear.At(left), wear.At(right));
        Alignment(signs, wear.Vehicle.At(at), AxleSetting.From(wear, at), car.CamberShortDeg);
        signs[WearSign.DampingRatio] = car.DampingRatio is { } ratio ? new Estimate(ratio, 0) : null;
        Marks(signs, wear.Vehicle.At(at), wear.At(left), wear.At(right), (left, right), worn);
        return signs;
    }

    private static (WheelPosition Left, WheelPosition Right) Pair(CarAxle at) =>
        at == CarAxle.Front ? (WheelPosition.FrontLeft, WheelPosition.FrontRight) : (WheelPosition.RearLeft, WheelPosition.RearRight);

    private static void Tread(AxleSigns signs, WornHere worn, WheelPosition leftAt, WheelPosition rightAt, TreadFigures? otherLeft, TreadFigures? otherRight)
    {
        var (left, right) = (worn.FiguresAt(leftAt), worn.FiguresAt(rightAt));
        var (leftShoulder, rightShoulder) = (worn.ShoulderDifference(leftAt), worn.ShoulderDifference(rightAt));
        var (leftCrown, rightCrown) = (worn.CrownDifference(leftAt), worn.CrownDifference(rightAt));
        signs[WearSign.ShoulderDifference] = Mean(leftShoulder, rightShoulder);
        signs[WearSign.CrownDifference] = Mean(leftCrown, rightCrown);
        var rounder = Worse(left, right);
        signs[WearSign.SpreadAround] = rounder?.RoundSpreadMm;
        signs[WearSign.OncePerTurnShare] = rounder?.OncePerTurnShare;
        signs[WearSign.AxleWearRatio] = LogRatio(WearRead.MeanOf(left, right), WearRead.MeanOf(otherLeft, otherRight));
        signs[WearSign.ShoulderDifferenceAcrossAxle] = Minus(leftShoulder, rightShoulder);
        signs[WearSign.CrownDifferenceAcrossAxle] = Minus(leftCrown, rightCrown);
        if (left is { } l && right is { } r) signs[WearSign.SideWearRatio] = LogRatio(WearRead.MeanOf(l, null), WearRead.MeanOf(r, null));
    }

    private static void Heat(AxleSigns signs, TyreReading? left, TyreReading? right, TyreReading? otherLeft, TyreReading? otherRight)
    {
        signs[WearSign.ShoulderTemperatureDifference] = Mean(ShoulderDifference(left), ShoulderDifference(right));
        signs[WearSign.CrownTemperatureDifference] = Mean(CrownDifference(left), CrownDifference(right));
        signs[WearSign.TemperatureInWindow] = Mean(Level(left), Level(right));
        signs[WearSign.AxleTemperatureDifference] = Minus(Mean(MeanC(left), MeanC(right)), Mean(MeanC(otherLeft), MeanC(otherRight)));

        static Estimate? ShoulderDifference(TyreReading? tyre) => tyre?.TemperatureC is { } c ? new(c.Outer - c.Inner, Math.Sqrt(2) * ErrorC(tyre)) : null;

        static Estimate? CrownDifference(TyreReading? tyre) => tyre?.TemperatureC is { } c ? new(c.Centre - ((c.Outer + c.Inner) / 2), Math.Sqrt(1.5) * ErrorC(tyre)) : null;

        static Estimate? MeanC(TyreReading? tyre) => tyre?.TemperatureC is { } c ? new((c.Outer + c.Centre + c.Inner) / 3, ErrorC(tyre)) : null;

        static Estimate? Level(TyreReading? tyre) => MeanC(tyre) is { } mean && tyre!.TemperatureWindowC is { } window && window.ToC > window.FromC
            ? new((mean.Value - ((window.FromC + window.ToC) / 2)) / ((window.ToC - window.FromC) / 2), mean.StandardError / ((window.ToC - window.FromC) / 2))
            : null;
    }

    private static double ErrorC(TyreReading tyre) =>
        ThermometerErrors.StandardErrorC(tyre.TemperatureBy ?? Thermometer.Infrared);

    private static void Pressure(AxleSigns signs, TyreReading? left, TyreReading? right)
    {
        var (l, r) = (Off(left), Off(right));
        signs[WearSign.PressureDeviation] = Mean(l, r);
        if (l is { } one && r is { } other) signs[WearSign.PressureDifference] = Difference(one, other);

        static Estimate? Off(TyreReading? tyre) => tyre?.Pressure.OffShare is { } share ? new(100 * share, PressureErrorPct) : null;
    }

    private static void Alignment(AxleSigns signs, Axle axle, AxleSetting setting, Estimate? camberShortDeg)
    {
        var (left, right) = (axle.Left, axle.Right);
        signs[WearSign.ToeSet] = Mean(Set(left.ToeDeg, ToeErrorDeg), Set(right.ToeDeg, ToeErrorDeg));

        // A cornering model knows more than the bare angle does. The tread speaks first: where the shoulders are worn evenly, neither of the two makes the camber too little;
        // where the inner one is worn more, no model does.
        var (sign, read) = camberShortDeg is not null ? (WearSign.CamberShort, camberShortDeg) : (WearSign.CamberSet, Mean(Set(left.CamberDeg, CamberErrorDeg), Set(right.CamberDeg, CamberErrorDeg)));

        // A camber whose sign is likelier wrong than right tells nothing, nor what a model makes of it.
        if (CamberSign.IsDoubtful(left.CamberDeg) || CamberSign.IsDoubtful(right.CamberDeg)) read = null;
        signs.IsCamberRead = read is not null;
        var isRefuted = signs[WearSign.ShoulderDifference] is { } shoulders && (EvenWear.IsEven(shoulders) || (sign == WearSign.CamberShort && EvenWear.IsInnerWorn(shoulders)));
        if (read is { } camber && !(isRefuted && camber.Value > setting.Baseline(WearTable.BaselineOf(sign)).Mean)) signs[sign] = camber;

        // Equal to the last digit means stated once for both sides, which says nothing about their difference.
        if (left.ToeDeg is { } leftToe && right.ToeDeg is { } rightToe && leftToe != rightToe)
            signs[WearSign.ThrustSet] = new((leftToe - rightToe) / 2, ToeErrorDeg);
        if (left.CamberDeg is { } leftCamber && right.CamberDeg is { } rightCamber && leftCamber != rightCamber)
            signs[WearSign.CamberDifference] = new(leftCamber - rightCamber, Math.Sqrt(2) * CamberErrorDeg);

        static Estimate? Set(double? deg, double errorDeg) => deg is { } value ? new(value, errorDeg) : null;
    }

    private static void Marks(AxleSigns signs, Axle axle, TyreReading? left, TyreReading? right, (WheelPosition Left, WheelPosition Right) at, WornHere worn)
    {
        var (wornLeft, wornRight) = (worn.TyreAt(at.Left), worn.TyreAt(at.Right));
        if (wornLeft?.Patterns is not null || wornRight?.Patterns is not null)
        {
            for (var pattern = TreadPattern.FeatheredSharpInboard; pattern <= TreadPattern.DiagonalScallop; pattern++)
                signs[(WearMark)pattern] = Has(wornLeft, pattern) || Has(wornRight, pattern);
        }

        if (axle.Wheel is { } wheel && axle.Tyre is { } tyre)
        {
            var permitted = tyre.Marking.PermittedRimWidth;
            signs[WearMark.RimOutsidePermitted] = wheel.RimWidthIn < permitted.MinimumIn || wheel.RimWidthIn > permitted.MaximumIn;
        }

        Moved(signs, left is null ? null : worn.ElsewhereShare(left.Position), right is null ? null : worn.ElsewhereShare(right.Position));
        signs[WearMark.TyresDiffer] = Differ(left, right);
    }

    private static bool Has(TyreReading? tyre, TreadPattern pattern)
    {
        if (tyre?.Patterns is not { } found) return false;
        foreach (var one in found)
        {
            if (one == pattern) return true;
        }

        return false;
    }

    /// <summary>A tyre that had half or more of its wear elsewhere was moved; one that had some leaves it open.</summary>
    private static void Moved(AxleSigns signs, double? left, double? right)
    {
        if ((left ?? right) is not { } share) return;
        share = Math.Max(share, right ?? share);
        signs[WearMark.MovedOrTurned] = share >= MovedShare ? true : share <= HardlyMovedShare ? false : null;
        signs.ElsewhereShare = share >= MovedShare ? share : null;
    }

    private static bool? Differ(TyreReading? left, TyreReading? right)
    {
        bool? made = left?.MadeInWeek is { } one && right?.MadeInWeek is { } other ? Math.Abs(one - other) > WeeksApart : null;
        bool? depth = left?.NewDepthMm is { } leftMm && right?.NewDepthMm is { } rightMm ? Math.Abs(leftMm - rightMm) >= DepthsApartMm : null;
        bool? run = TotalKm(left) is { } leftKm && TotalKm(right) is { } rightKm ? Math.Max(leftKm, rightKm) > RunApart * Math.Min(leftKm, rightKm) : null;
        return made is true || depth is true || run is true ? true : made;

        // Road and track of a tyre's history, as road.
        static double? TotalKm(TyreReading? tyre)
        {
            if (tyre is null || tyre.History.Count == 0) return null;
            var km = 0.0;
            foreach (var leg in tyre.History) km += (leg.RoadKm ?? 0) + TrackShare.TrackAsRoadKm(leg.TrackLaps ?? 0, null);
            return km > 0 ? km : null;
        }
    }

    /// <summary>The mean of two readings; the one there is where there is only one.</summary>
    public static Estimate? Mean(Estimate? one, Estimate? other) => (one, other) switch
    {
        ({ } a, { } b) => new((a.Value + b.Value) / 2, Math.Sqrt((a.StandardError * a.StandardError) + (b.StandardError * b.StandardError)) / 2),
        _ => one ?? other,
    };

    /// <summary>The tyre that differs more round it; of two alike the one read more closely.</summary>
    private static TreadFigures? Worse(TreadFigures? left, TreadFigures? right)
    {
        if (left?.RoundSpreadMm is not { } l) return right;
        if (right?.RoundSpreadMm is not { } r) return left;
        var order = l.Value.CompareTo(r.Value) is not 0 and var byValue ? byValue : r.StandardError.CompareTo(l.StandardError);
        if (order == 0) order = (left.Value.OncePerTurnShare?.StandardError ?? 1).CompareTo(right.Value.OncePerTurnShare?.StandardError ?? 1) * -1;
        return order >= 0 ? left : right;
    }

    private static Estimate? Minus(Estimate? one, Estimate? other) => one is { } a && other is { } b ? Difference(a, b) : null;

    private static Estimate Difference(in Estimate one, in Estimate other) =>
        new(one.Value - other.Value, Math.Sqrt((one.StandardError * one.StandardError) + (other.StandardError * other.StandardError)));

    /// <summary>A depth all tyres are taken to have had new, because none is stated, is off alike for both.</summary>
    private static Estimate? LogRatio(WearRead? one, WearRead? other)
    {
        if (one is not { } a || other is not { } b) return null;
        var (ofOne, ofOther) = (a.GaugeErrorMm / a.WornMm, b.GaugeErrorMm / b.WornMm);
        var fresh = TreadFigures.UsualNewDepthMm.StandardError * ((a.IsFreshStated ? 0 : 1 / a.WornMm) - (b.IsFreshStated ? 0 : 1 / b.WornMm));
        return new(Math.Log(a.WornMm / b.WornMm), Math.Sqrt((ofOne * ofOne) + (ofOther * ofOther) + (fresh * fresh)));
    }

    /// <summary>Mean wear of one or two tyres.</summary>
    private readonly record struct WearRead(double WornMm, double GaugeErrorMm, bool IsFreshStated)
    {
        public static WearRead? MeanOf(TreadFigures? left, TreadFigures? right) => (left, right) switch
        {
            ({ } l, { } r) => new((l.WornMm.Value + r.WornMm.Value) / 2, Math.Sqrt((l.GaugeErrorMm * l.GaugeErrorMm) + (r.GaugeErrorMm * r.GaugeErrorMm)) / 2, l.IsFreshStated && r.IsFreshStated),
            ({ } l, null) => new(l.WornMm.Value, l.GaugeErrorMm, l.IsFreshStated),
            (null, { } r) => new(r.WornMm.Value, r.GaugeErrorMm, r.IsFreshStated),
            _ => null,
        };
    }
}

/// <summary>What the car itself tells of an axle, beside its angles; what is not known is null.</summary>
/// <param name="CamberShortDeg">By how much the camber is less negative than the cornering needs, by a cornering model, degrees; negative = it is more.</param>
/// <param name="DampingRatio">Damping ratio of the dampers stated.</param>
public readonly record struct CarSigns(Estimate? CamberShortDeg, double? DampingRatio);

/// <summary>What is known of one axle's signs and marks.</summary>
internal sealed class AxleSigns
{
    /// <summary>How many signs there are.</summary>
    public const int SignCount = (int)WearSign.DampingRatio + 1;

    /// <summary>How many marks there are.</summary>
    public const int MarkCount = (int)WearMark.TyresDiffer + 1;

    private readonly Estimate?[] _signs = new Estimate?[SignCount];
    private readonly bool?[] _marks = new bool?[MarkCount];

    /// <summary>A sign with the error of its reading; null = not known.</summary>
    public Estimate? this[WearSign sign]
    {
        get => _signs[(int)sign];
        set => _signs[(int)sign] = value;
    }

    /// <summary>True when a mark is there; null = not looked at.</summary>
    public bool? this[WearMark mark]
    {
        get => _marks[(int)mark];
        set => _marks[(int)mark] = value;
    }

    /// <summary>Those of the car's other axle, which tell what both have alike; null = none of it was read.</summary>
    public AxleSigns? Other { get; set; }

    /// <summary>Share of its wear that a moved tyre of the axle had elsewhere, from a half to 1; null = none was moved, or how far it ran is not told.</summary>
    public double? ElsewhereShare { get; set; }

    /// <summary>True when the camber was read, whether or not it is a sign of anything.</summary>
    public bool IsCamberRead { get; set; }

    /// <summary>True when anything at all is known.</summary>
    public bool IsEmpty => Array.TrueForAll(_signs, sign => sign is null) && Array.TrueForAll(_marks, mark => mark is null);
}
