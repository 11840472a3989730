using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering.Effects;

/// <summary>How far an axle's limit moves with other tyres: by what they hold in the attitude at the limit and in one a little further along the path.</summary>
internal static class OtherTyres
{
    // How far along the path, as a share of the limit, what tyres hold is looked at once more.
    private const double AlongShare = 0.01;

    /// <summary>How far the limit moves with the tyres of each of these cars, g; 0 where they are the car's own, or hold nothing. Leaves the derivatives' solver at the limit.</summary>
    /// <param name="nearby">The derivatives at the limit.</param>
    /// <param name="at">The axle that is at its limit there.</param>
    /// <param name="car">The car.</param>
    /// <param name="others">The same car on other tyres.</param>
    public static double[] Moves(EquilibriumDerivatives nearby, CarAxle at, HandlingCar car, ReadOnlySpan<HandlingCar> others)
    {
        var limitG = nearby.Figures.LateralG;
        var (moves, tyres) = (new double[others.Length], new AxleTyre[others.Length]);
        var (heldG, peakSlipDeg) = (new double[others.Length], new double[others.Length]);
        var own = car.TyreOf(car.At(at));
        nearby.Restore();
        for (var i = 0; i < moves.Length; i++)
        {
            tyres[i] = others[i].TyreOf(others[i].At(at));
            if (tyres[i] == own) continue;
            peakSlipDeg[i] = nearby.PeakSlipDeg(at);
            heldG[i] = limitG / nearby.GripUsed(at, tyres[i], ref peakSlipDeg[i]);
        }

        if (nearby.GoAlong(AlongShare) is not { } furtherG) return moves;
        for (var i = 0; i < moves.Length; i++)
        {
            // Tyres that hold nothing in these attitudes, as the published shape has it at a small fraction of its friction, tell of no limit.
            if (!(heldG[i] > 0)) continue;

            // The limit is where what they hold, which goes on as it does between the two attitudes, meets the turn.
            var slope = ((furtherG / nearby.GripUsed(at, tyres[i], ref peakSlipDeg[i])) - heldG[i]) / (furtherG - limitG);
            if (slope < 1) moves[i] = (heldG[i] - limitG) / (1 - slope);
        }

        nearby.Restore();
        return moves;
    }
}
