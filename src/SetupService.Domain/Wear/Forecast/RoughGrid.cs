using System.Runtime.CompilerServices;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>
/// What the mix of use between first and last reading may have worn off a zone: log-normal priors by clock times the likelihood of the readings,
/// on a grid of the logarithm of all that is worn (a column each) and of the ratio of the first clock's part to the second's (a row each). Laid
/// so, clocks that the readings hardly separate make no narrow ridge across it. With one clock there is one row.
/// </summary>
/// <remarks>
/// Each figure rises or falls with either coordinate and with the error of the mean depth. Its distribution is therefore a sum of cumulative
/// weights up to where it is met, along rows or along columns, whichever it changes with more. One grid serves the three zones of a tyre in turn.
/// </remarks>
internal sealed class RoughGrid
{
    private const int Columns = 13;
    private const int RowsOfBoth = 11;

    // Summed along columns, little changes from one to the next: every other one is enough.
    private const int ColumnStep = 2;
    // Standard deviations of prior and readings that the grid reaches over to each side at first.
    private const double FirstReach = 4.5;
    private const int MostLayings = 6;

    // Errors of the mean depth that stand for all, in standard deviations: none, three (Gauss and Hermite), or more where they matter more.
    public static readonly (double Error, double Weight)[] NoError = [(0, 1)];
    public static readonly (double Error, double Weight)[] FewErrors = [(-Math.Sqrt(3), 1.0 / 6), (0, 2.0 / 3), (Math.Sqrt(3), 1.0 / 6)];
    public static readonly (double Error, double Weight)[] ManyErrors = Even(3);

    // How many times as far a figure may move from row to row as along one, in standard deviations, and still be summed along rows.
    private const double ByRowsUpTo = 1.5;

    // Nodes below e to the minus this of the likeliest have no weight.
    private const double LeastLog = 14;

    // Rows and columns of less weight than this are passed over.
    private const double Negligible = 2e-4;

    private readonly UsualWear _first;
    private readonly UsualWear _second;
    private readonly MixShare _end;
    private readonly double _squaresFirst;
    private readonly double _products;
    private readonly double _squaresSecond;
    private readonly double _errorMm;
    private readonly double _meanErrorMm;
    private readonly int _rows;

    private readonly double[] _totalMm = new double[Columns];
    private readonly double[] _firstShare;
    private readonly double[] _weights;
    private readonly double[] _belowInRow;
    private readonly double[] _turned;
    private readonly double[] _belowInColumn;
    private readonly double[] _places = new double[ManyErrors.Length];
    private ZoneWear _fit;
    private GridAxis _logTotal;
    private GridAxis _logRatio;
    private double _share;
    private double _middleMm;

    /// <summary>For tyres read at these clocks.</summary>
    /// <param name="design">When they were read; at least one clock moves.</param>
    /// <param name="gaugeErrorMm">Standard deviation of one reading, mm; above 0.</param>
    public RoughGrid(WearDesign design, double gaugeErrorMm)
    {
        (Design, _errorMm, _meanErrorMm) = (design, gaugeErrorMm, gaugeErrorMm / Math.Sqrt(design.Count));
        var (road, track) = (UsualWear.Road(design.Mix), UsualWear.Track(design.Mix));
        var isTrack = design.Clock == WearClock.Track;
        _first = isTrack ? track : design.Clock == WearClock.InProportion ? UsualWear.Together(road, track) : road;
        _end = isTrack ? new(design.End.Track, 0) : design.End;
        _squaresFirst = design.Squares(isTrack ? new(0, 1) : new(1, 0));
        _rows = 1;
        if (IsBoth)
        {
            (_second, _rows) = (track, RowsOfBoth);
            _squaresSecond = design.Squares(new(0, 1));
            _products = (design.Squares(new(1, 1)) - _squaresFirst - _squaresSecond) / 2;
        }

        var count = _rows * Columns;
        (_firstShare, _weights, _belowInRow) = (new double[_rows], new double[count], new double[count]);
        (_turned, _belowInColumn) = IsBoth ? (new double[count], new double[count]) : ([], []);
    }

    /// <summary>When the tyres were read.</summary>
    public WearDesign Design { get; }

    /// <summary>The fit of the zone it is laid for.</summary>
    public ZoneWear Fit => _fit;

    /// <summary>Standard error of the mean depth, mm.</summary>
    public double MeanErrorMm => _meanErrorMm;

    /// <summary>Where the clocks are at the last reading, about their means in units of the mix.</summary>
    public MixShare End => _end;

    /// <summary>The first clock's share of the wear in the middle of the grid.</summary>
    public double MiddleShare => _share;

    private bool IsBoth => Design.Clock == WearClock.Both;

    /// <summary>Lays the grid for a zone; false where by its readings tread grows by more than the gauge errs.</summary>
    public bool TryPlace(in ZoneWear fit)
    {
        _fit = Design.Clock == WearClock.Track ? fit with { FreeLostOfMixMm = new(fit.FreeLostOfMixMm.Track, 0) } : fit;
        var free = _fit.FreeLostOfMixMm;
        if (_first.Range(free.Road, IsBoth ? ErrorMm(1, 0) : _errorMm / Math.Sqrt(_squaresFirst), FirstReach) is not { } first) return false;
        if (!IsBoth)
        {
            Lay(GridAxis.Over(Math.Log(first.From), Math.Log(first.To), Columns), default);
            return true;
        }

        if (_second.Range(free.Track, ErrorMm(0, 1), FirstReach) is not { } second) return false;
        var (totalMm, errorMm) = (free.Road + free.Track, ErrorMm(1, 1));
        var (from, to) = (Math.Max(first.From + second.From, totalMm - (FirstReach * errorMm)), Math.Min(first.To + second.To, totalMm + (FirstReach * errorMm)));
        if (to <= from) (from, to) = (first.From + second.From, first.To + second.To);
        Lay(GridAxis.Over(Math.Log(from), Math.Log(to), Columns), GridAxis.Over(Math.Log(first.From / second.To), Math.Log(first.To / second.From), RowsOfBoth));
        return true;
    }

    /// <summary>Mean, and second to fourth central moment, of what is lost at the last reading since the mean of the clocks, mm and its powers.</summary>
    public (double Mean, double Second, double Third, double Fourth) LostSinceMean()
    {
        var (mean, square, third, fourth) = (0.0, 0.0, 0.0, 0.0);
        for (var row = 0; row < _rows; row++)
        {
            var perTotal = Part(row, _end.Road, _end.Track);
            for (var column = 0; column < Columns; column++) mean += _weights[(row * Columns) + column] * perTotal * _totalMm[column];
        }

        for (var row = 0; row < _rows; row++)
        {
            var perTotal = Part(row, _end.Road, _end.Track);
            for (var column = 0; column < Columns; column++)
            {
                var off = (perTotal * _totalMm[column]) - mean;
                var weighted = _weights[(row * Columns) + column] * off * off;
                square += weighted;
                third += weighted * off;
                fourth += weighted * off * off;
            }
        }

        return (mean, square, third, fourth);
    }

    /// <summary>Errors a standard deviation apart, this far to each side.</summary>
    private static (double Error, double Weight)[] Even(int reach)
    {
        double[] errors = [.. Enumerable.Range(-reach, (2 * reach) + 1)];
        var sum = errors.Sum(NormalDistribution.Density);
        return [.. errors.Select(error => (error, NormalDistribution.Density(error) / sum))];
    }

    private double ErrorMm(double road, double track) => _errorMm * Math.Sqrt(Design.Variance(new(road, track)));

    /// <summary>What a row makes of multiples of both clocks' parts, for each millimetre worn in all.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Part(int row, double first, double second) => (first * _firstShare[row]) + (second * (1 - _firstShare[row]));

    /// <summary>Mean and standard deviation of the logarithm of wear, about the middle of the grid.</summary>
    public (double Mean, double Deviation) Logarithm(double first, double second)
    {
        if (!IsBoth) return (_logTotal.Mean, _logTotal.Deviation);
        var part = (first * _share) + (second * (1 - _share));
        var across = (first - second) * _share * (1 - _share) / part * _logRatio.Deviation;
        return (_logTotal.Mean + Math.Log(part), Math.Sqrt((_logTotal.Deviation * _logTotal.Deviation) + (across * across)));
    }

    /// <summary>Weighs the nodes of the axes, moved to where the weight is until they are near enough to each other.</summary>
    private void Lay(GridAxis total, GridAxis ratio)
    {
        for (var laying = 1; ; laying++)
        {
            (_logTotal, _logRatio) = (total, ratio);
            Weigh();
            _middleMm = Math.Exp(_logTotal.Mean);
            _share = IsBoth ? 1 / (1 + Math.Exp(-_logRatio.Mean)) : 1;
            if ((_logTotal.IsFine && (!IsBoth || _logRatio.IsFine)) || laying == MostLayings) break;
            (total, ratio) = (_logTotal.Nearer(Columns), IsBoth ? _logRatio.Nearer(RowsOfBoth) : default);
        }

        for (var row = 0; row < _rows; row++) CumulativeWeights.Fill(_weights.AsSpan(row * Columns, Columns), _belowInRow.AsSpan(row * Columns, Columns));
        if (!IsBoth) return;
        for (var column = 0; column < Columns; column += ColumnStep)
        {
            var turned = _turned.AsSpan(column * _rows, _rows);
            for (var row = 0; row < _rows; row++) turned[row] = _weights[(row * Columns) + column];
            CumulativeWeights.Fill(turned, _belowInColumn.AsSpan(column * _rows, _rows));
        }
    }

    /// <summary>The weight of each node, 1 in all, and where along both axes it lies.</summary>
    private void Weigh()
    {
        var free = _fit.FreeLostOfMixMm;
        var precision = 1 / (2 * _errorMm * _errorMm);
        var firstPrecision = 1 / (2 * _first.LogDeviation * _first.LogDeviation);
        var secondPrecision = IsBoth ? 1 / (2 * _second.LogDeviation * _second.LogDeviation) : 0;
        var (firstMedian, secondMedian) = (Math.Log(_first.MedianMm), IsBoth ? Math.Log(_second.MedianMm) : 0);
        for (var column = 0; column < Columns; column++) _totalMm[column] = Math.Exp(_logTotal.At(column));
        var most = double.NegativeInfinity;
        for (var row = 0; row < _rows; row++)
        {
            // The logarithms of both shares, exact where one is tiny.
            var ratio = _logRatio.At(row);
            var (logFirst, logSecond) = IsBoth ? (-Math.Log(1 + Math.Exp(-ratio)), -Math.Log(1 + Math.Exp(ratio))) : (0.0, 0.0);
            var (share, other) = (Math.Exp(logFirst), IsBoth ? Math.Exp(logSecond) : 0);
            _firstShare[row] = share;
            for (var column = 0; column < Columns; column++)
            {
                var log = _logTotal.At(column);
                var (ofFirst, ofSecond) = (log + logFirst - firstMedian, log + logSecond - secondMedian);
                var (offFirst, offSecond) = ((share * _totalMm[column]) - free.Road, (other * _totalMm[column]) - free.Track);
                var squares = (_squaresFirst * offFirst * offFirst) + (2 * _products * offFirst * offSecond) + (_squaresSecond * offSecond * offSecond);
                var weight = -(firstPrecision * ofFirst * ofFirst) - (secondPrecision * ofSecond * ofSecond) - (precision * squares);
                _weights[(row * Columns) + column] = weight;
                most = Math.Max(most, weight);
            }
        }

        var (sum, byColumn, byColumnSquare, byRow, byRowSquare) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var row = 0; row < _rows; row++)
        {
            var inRow = 0.0;
            for (var column = 0; column < Columns; column++)
            {
                ref var weight = ref _weights[(row * Columns) + column];
                weight = weight > most - LeastLog ? Math.Exp(weight - most) : 0;
                inRow += weight;
                byColumn += weight * column;
                byColumnSquare += weight * column * column;
            }

            byRow += inRow * row;
            byRowSquare += inRow * row * row;
            sum += inRow;
        }

        foreach (ref var weight in _weights.AsSpan()) weight /= sum;
        (_logTotal, _logRatio) = (_logTotal.Weighed(sum, byColumn, byColumnSquare), _logRatio.Weighed(sum, byRow, byRowSquare));
    }

    /// <summary>Probability that the wear of these multiples of both clocks' parts, neither negative, is at most this much, mm, give or take errors of the mean depth.</summary>
    public double AtMost(double first, double second, double mm, ReadOnlySpan<(double Error, double Weight)> errors)
    {
        // How far it moves along either coordinate, in the middle of the grid and where it is met for the middle wear.
        var (apart, part) = (Math.Abs(first - second), (first * _share) + (second * (1 - _share)));
        var metPart = mm / _middleMm;
        var met = apart == 0 ? 1 : Math.Clamp((metPart - second) / (first - second), 0, 1);
        var across = apart * Math.Min(_share * (1 - _share) / part, met * (1 - met) / metPart) * _logRatio.Deviation;
        return across > ByRowsUpTo * _logTotal.Deviation ? AlongColumns(first, second, mm, errors) : AlongRows(first, second, mm, errors);
    }

    private double AlongRows(double first, double second, double mm, ReadOnlySpan<(double Error, double Weight)> errors)
    {
        // A wear not above zero has no logarithm and nothing below it.
        var places = _places.AsSpan(0, errors.Length);
        for (var k = 0; k < places.Length; k++) places[k] = _logTotal.Place(Math.Log(Math.Max(double.Epsilon, mm + (_meanErrorMm * errors[k].Error))));
        var (sum, perStep) = (0.0, 1 / _logTotal.Step);
        for (var row = 0; row < _rows; row++)
        {
            var ofRow = _weights.AsSpan(row * Columns, Columns);
            var below = _belowInRow.AsSpan(row * Columns, Columns);
            if (below[^1] < Negligible) continue;
            var shift = Math.Log(Part(row, first, second)) * perStep;
            for (var k = 0; k < places.Length; k++) sum += errors[k].Weight * CumulativeWeights.At(ofRow, below, places[k] - shift);
        }

        return sum;
    }

    private double AlongColumns(double first, double second, double mm, ReadOnlySpan<(double Error, double Weight)> errors)
    {
        var (sum, total) = (0.0, 0.0);
        for (var column = 0; column < Columns; column += ColumnStep)
        {
            var ofColumn = _turned.AsSpan(column * _rows, _rows);
            var below = _belowInColumn.AsSpan(column * _rows, _rows);
            var all = below[^1] + (ofColumn[^1] / 2);
            if (all < Negligible) continue;
            total += all;
            var scale = 1 / (_totalMm[column] * (first - second));
            var shift = second / (first - second);
            foreach (var (error, weight) in errors)
            {
                // The first clock's share at which it is met: below it where the first counts for more, else above.
                var met = ((mm + (_meanErrorMm * error)) * scale) - shift;
                var under = met <= 0 ? 0 : met >= 1 ? all : CumulativeWeights.At(ofColumn, below, _logRatio.Place(Math.Log(met / (1 - met))));
                sum += weight * (first > second ? under : all - under);
            }
        }

        return sum / total;
    }
}
