using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>One kind of corner of a demand, with how much of it there is.</summary>
/// <param name="Demand">The turn.</param>
/// <param name="Share">How much time is spent in it beside the others; any scale, not negative.</param>
public readonly record struct CornerShare(CorneringDemand Demand, double Share);
