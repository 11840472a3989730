namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Draws faults at their base rates, with owners who have more of them and owners who have fewer.</summary>
internal sealed class FaultChance(SeededDraw draw)
{
    private const double Jitter = 0.4;

    /// <summary>An owner's odds; their mean stays near the base rates.</summary>
    private readonly double _logOdds = draw.Within(-Jitter * Jitter / 2, Jitter, 2.5);

    public bool Has(double rate) => draw.Chance(Jittered(rate));

    /// <summary>-1 or 1 for one of two faults that exclude each other, 0 for neither.</summary>
    public int Either(double lowRate, double highRate)
    {
        var low = Jittered(lowRate);
        var high = Math.Min(Jittered(highRate), 1 - low);
        var share = draw.Share();
        return share < low ? -1 : share < low + high ? 1 : 0;
    }

    private double Jittered(double rate) => 1 / (1 + Math.Exp(-Math.Log(rate / (1 - rate)) - _logOdds));
}
