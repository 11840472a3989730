using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>
/// A hand gauge and who holds it: 0.1 to 0.35 mm a reading (judgement; a laboratory's single reading has 0.044 mm, and operators added about
/// 1 mm to the range on one groove, ASNT), and what this person always reads too much or too little.
/// </summary>
internal sealed class DepthGauge(SeededDraw draw)
{
    private static readonly double[] FivePct = [10, 30, 50, 70, 90];
    private static readonly double[] ThreePct = [TreadZone.UsualPct.Outer, TreadZone.UsualPct.Centre, TreadZone.UsualPct.Inner];

    private readonly double _errorMm = draw.Between(0.1, 0.35);
    private readonly double _biasMm = draw.Within(0, 0.1);
    private readonly bool _readsFive = draw.Chance(0.2);
    private readonly int _places = draw.Chance(0.25) ? draw.Whole(2, 6) : 1;
    private readonly bool _statesError = draw.Chance(0.4);

    public bool KnowsNewDepth { get; } = draw.Chance(0.7);

    public double NewDepthErrorMm { get; } = draw.Within(0, 0.12);

    public double? StatedErrorMm => _statesError ? Math.Round(_errorMm, 2) : null;

    public TyreReading Of(TyreReading reading, double newDepthMm, WornTyre tyre)
    {
        var round = RoundTheTyre.Drawn(tyre.Wheel, draw);
        var startDeg = draw.Between(0, 360);
        var acrossPct = _readsFive ? FivePct : ThreePct;
        var depthsMm = new double[_places][];
        for (var place = 0; place < _places; place++)
        {
            var atDeg = startDeg + (360.0 * place / _places);
            depthsMm[place] = [.. acrossPct.Select(pct => Read(newDepthMm - Strips.At(tyre.LostMm, pct) - round.ExtraMm(atDeg, (pct / 50) - 1)))];
        }

        return reading with
        {
            Zones = [.. acrossPct.Select((pct, zone) => new TreadZone(pct, depthsMm.Average(at => at[zone])))],
            AroundMm = _places > 1 ? [.. depthsMm.Select(at => new AcrossTread<double>(at[0], at[at.Length / 2], at[^1]))] : [],
        };
    }

    private double Read(double depthMm) => Math.Round(Math.Min(20, Math.Max(0, depthMm + _biasMm + draw.Normal(0, _errorMm))), 1);
}
