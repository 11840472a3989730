using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>One kind of corner of a demand, with how much of it there is.</summary>
/// <param name="Demand">The turn.</param>
/// <param name="Share">How much time is spent in it beside the others; any scale, not negative.</param>
/// <param name="IsAtSpeed">Whether its speed is what is known, so that its radius goes with the lateral acceleration.</param>
public readonly record struct BendShare(CorneringDemand Demand, double Share, bool IsAtSpeed = false)
{
    /// <summary>The same corner with this many times the lateral acceleration; its speed or its radius stays, whichever is known.</summary>
    public BendShare Harder(double times) => this with
    {
        Demand = Demand with { LateralG = times * Demand.LateralG, RadiusM = IsAtSpeed ? Demand.RadiusM / times : Demand.RadiusM },
    };
}
