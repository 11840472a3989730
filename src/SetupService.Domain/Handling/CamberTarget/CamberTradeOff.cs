using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>What one static camber does against the camber as set, both wheels of the axle alike.</summary>
/// <param name="StaticCamberDeg">Static camber, degrees.</param>
/// <param name="GripChangePct">Change of the axle's grip in the bends asked for, percent.</param>
/// <param name="BrakingChangePct">Change of the most its tyres can brake with on the straight, percent; null where no tyre is given.</param>
/// <param name="IsReachable">Whether it can be set; null where nobody said how far.</param>
public readonly record struct CamberTradeOff(double StaticCamberDeg, Uncertainty GripChangePct, Uncertainty? BrakingChangePct, bool? IsReachable)
{
    // So many rows beside those of the ends, and how far beyond the cambers of interest they go, degrees.
    private const double MostRows = 16;
    private const double BeyondDeg = 1;

    // Cambers closer than this, degrees, are one row.
    private const double AlikeDeg = 1e-6;

    private static readonly double[] Steps = [0.1, 0.25, 0.5, 1, 2];

    /// <summary>
    /// Rows to one degree beyond the camber set, the flat one and that of most grip, and over the range that can be set; the camber set and the one recommended among them. By
    /// camber, most negative first.
    /// </summary>
    /// <param name="result">The camber target.</param>
    /// <param name="reach">How far camber can be set; null = nobody said.</param>
    /// <param name="car">The car.</param>
    /// <param name="at">The axle.</param>
    /// <param name="tyre">Its tyre; null = not given.</param>
    public static CamberTradeOff[] Compute(CamberTargetResult result, Vehicles.AngleReach? reach, HandlingCar car, Vehicles.CarAxle at, Tyre? tyre)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(car);
        var (set, flat, best) = (result.SetCamberDeg, result.StaticCamberDeg, result.BestGripCamberDeg.Value);
        var draws = new double[JointDraws.Count];
        var axle = car.At(at);
        var setSpread = tyre is null ? 0 : Spread(set);
        var cambers = Cambers();
        var rows = new CamberTradeOff[cambers.Count];
        for (var i = 0; i < rows.Length; i++)
        {
            var deg = cambers[i];
            rows[i] = new(deg, result.Grip.ChangePct(deg, flat, draws), tyre is null ? null : BrakingLoss.ChangePct(setSpread, Spread(deg)), reach?.Holds(deg));
        }

        return rows;

        double Spread(double deg) => StraightRunning.Compute(deg, 0, axle.LoadN / 2, axle.TyreRateNPerMm, TreadWidth.Mm(tyre!).Value, axle.LoadedRadiusMm).PressureSpread;

        List<double> Cambers()
        {
            var (low, high) = (Math.Min(Math.Min(set, flat.Value), best) - BeyondDeg, Math.Max(Math.Max(set, flat.Value), best) + BeyondDeg);
            if (reach is { CanBeSet: true } range) (low, high) = (Math.Min(low, range.FromDeg), Math.Max(high, range.ToDeg));
            (low, high) = (Math.Max(low, -CamberTargetSearch.LargestDeg), Math.Min(high, CamberTargetSearch.LargestDeg));
            var step = Array.Find(Steps, one => (high - low) / one <= MostRows);
            if (step == 0) step = Steps[^1];
            var list = new List<double>();
            for (var i = Math.Ceiling(low / step); i <= high / step; i++) Add(list, step * i);
            Add(list, set);
            if (result.Advice.CamberDeg is { } advised) Add(list, advised);
            list.Sort();
            return list;
        }

        static void Add(List<double> list, double deg)
        {
            list.RemoveAll(one => Math.Abs(one - deg) < AlikeDeg);
            if (Math.Abs(deg) <= CamberTargetSearch.LargestDeg) list.Add(deg);
        }
    }
}

/// <summary>
/// What a tread that is loaded unevenly across loses of its braking: friction falls with pressure as a tyre's does with load. Judgement: of four published sets three have no effect of
/// inclination on the braking peak, and the fourth next to none; drivers say that much camber lengthens braking.
/// </summary>
internal static class BrakingLoss
{
    // Share of friction lost where pressure doubles: the load sensitivity of the tyre model; at most three times that, at least nothing.
    private const double Most = 0.45;

    /// <summary>Change of the most a tyre brakes with, percent, from one spread of pressure to another (<see cref="StraightRunning.PressureSpread"/>).</summary>
    public static Uncertainty ChangePct(double fromSpread, double toSpread)
    {
        var (value, most) = (Change(TyreTypicals.LoadSensitivity.Value), Change(Most));
        return new(value, Math.Min(0, most), Math.Max(0, most), Uncertainty.NinetyPct);

        double Change(double share) => 100 * (((1 - (share * toSpread)) / (1 - (share * fromSpread))) - 1);
    }
}
