using System.Numerics;
using System.Runtime.InteropServices;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Cars;

/// <summary>
/// The first look at a candidate over one axle of many cars: bolt circle, centre bore, rim diameter, rim width and overall diameter, as <see cref="HubChecks"/>,
/// <see cref="RimChecks"/> and <see cref="RollingChecks"/> judge them, and only whether they fail. The cars lie column by column, so that some are judged at once.
/// What is not known is NaN, which no comparison holds for, so it never fails.
/// </summary>
internal sealed class FirstLook
{
    private readonly int _length;
    private readonly double[] _holeCount;
    private readonly double[] _circleMm;
    private readonly double[] _secondHoleCount;
    private readonly double[] _secondCircleMm;
    private readonly double[] _spigotMm;
    private readonly double[] _circumferenceMm;
    private readonly bool _hasSecond;

    /// <summary>Lays out an axle of each car.</summary>
    public FirstLook(IReadOnlyList<Axle> axles)
    {
        // Whole vectors: behind the last car nothing is known, so nothing fails.
        var width = Vector<double>.Count;
        _length = (axles.Count + width - 1) / width * width;
        _holeCount = Column(axles, static axle => FitmentContext.HubCircle(axle)?.HoleCount);
        _circleMm = Column(axles, static axle => FitmentContext.HubCircle(axle)?.DiameterMm);
        _secondHoleCount = Column(axles, static axle => FitmentContext.HubCircle(axle)?.Second?.HoleCount);
        _secondCircleMm = Column(axles, static axle => FitmentContext.HubCircle(axle)?.Second?.DiameterMm);
        _spigotMm = Column(axles, static axle => axle.Hub.CentreBoreMm);
        _circumferenceMm = Column(axles, static axle => axle.Tyre is { Marking: { HasDimensions: true } marking } ? marking.RollingCircumferenceMm : null);
        _hasSecond = Array.Exists(_secondCircleMm, static mm => !double.IsNaN(mm));
    }

    /// <summary>How long the span for the results is at least: whole vectors.</summary>
    public int Length => _length;

    /// <summary>Writes for each car the checks of the first look that fail, as the bits of a <see cref="CheckIdSet"/>.</summary>
    public void Find(in Fitting candidate, Span<long> failed)
    {
        var (wheel, marking) = (candidate.Wheel, candidate.Tyre.Marking);
        var everywhere = new Vector<long>(OfCandidate(candidate));
        var boreMm = new Vector<double>((wheel.SpacerMm > 0 ? wheel.SpacerPilotBoreMm : wheel.CentreBoreMm) ?? double.NaN);
        var circumferenceMm = new Vector<double>(marking.HasDimensions ? marking.RollingCircumferenceMm : double.NaN);
        var (largest, smallest) = (new Vector<double>(RollingChecks.LargestRatio), new Vector<double>(RollingChecks.SmallestRatio));
        var results = MemoryMarshal.Cast<long, Vector<long>>(failed[.._length]);
        var spigots = MemoryMarshal.Cast<double, Vector<double>>(_spigotMm);
        var circumferences = MemoryMarshal.Cast<double, Vector<double>>(_circumferenceMm);
        for (var i = 0; i < results.Length; i++)
        {
            var ratio = circumferenceMm / circumferences[i];
            var bore = Vector.LessThan(boreMm, spigots[i]) & Bit(CheckId.CentreBore);
            var diameter = (Vector.GreaterThan(ratio, largest) | Vector.LessThan(ratio, smallest)) & Bit(CheckId.OverallDiameter);
            results[i] = everywhere | bore | diameter;
        }

        if (wheel.BoltCircle is { } circle) AddBoltCircles(circle, results);
    }

    private void AddBoltCircles(Wheels.BoltCircle circle, Span<Vector<long>> results)
    {
        var counts = MemoryMarshal.Cast<double, Vector<double>>(_holeCount);
        var circles = MemoryMarshal.Cast<double, Vector<double>>(_circleMm);
        for (var i = 0; i < results.Length; i++)
        {
            var matches = Matches(circle, counts[i], circles[i]);
            if (_hasSecond) matches |= Matches(circle, MemoryMarshal.Cast<double, Vector<double>>(_secondHoleCount)[i], MemoryMarshal.Cast<double, Vector<double>>(_secondCircleMm)[i]);
            var isKnown = Vector.Equals(counts[i], counts[i]);
            results[i] |= Vector.AndNot(isKnown, matches) & Bit(CheckId.BoltCircle);
        }
    }

    /// <summary>Where a wheel's circle, or the second of one drilled for two, is the hub's.</summary>
    private static Vector<long> Matches(Wheels.BoltCircle circle, Vector<double> counts, Vector<double> circlesMm)
    {
        var isSame = Vector.Equals(counts, new Vector<double>(circle.HoleCount))
            & Vector.LessThanOrEqual(Vector.Abs(circlesMm - new Vector<double>(circle.DiameterMm)), new Vector<double>(Wheels.BoltCircle.MatchToleranceMm));
        return circle.Second is { } second ? isSame | Matches(second, counts, circlesMm) : isSame;
    }

    /// <summary>What fails on every car: the tyre on its own rim, and the wheel on its own spacer.</summary>
    private static long OfCandidate(in Fitting candidate)
    {
        var failed = default(CheckIdSet);
        if (RimChecks.Diameter(candidate).Status == CheckStatus.Fail) failed = failed.With(CheckId.RimDiameter);
        if (RimChecks.Width(candidate).Status == CheckStatus.Fail) failed = failed.With(CheckId.RimWidth);
        var wheel = candidate.Wheel;
        if (wheel.SpacerMm > 0 && wheel.CentreBoreMm < wheel.SpacerPilotDiameterMm) failed = failed.With(CheckId.CentreBore);
        return failed.Bits;
    }

    private static Vector<long> Bit(CheckId id) => new(1L << (int)id);

    private double[] Column(IReadOnlyList<Axle> axles, Func<Axle, double?> value)
    {
        var column = new double[_length];
        for (var i = 0; i < _length; i++) column[i] = (i < axles.Count ? value(axles[i]) : null) ?? double.NaN;
        return column;
    }
}
