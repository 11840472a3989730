using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>Why no static camber is found.</summary>
/// <param name="Reason">Why; null where the search for the camber itself came to no end within ±<see cref="CamberTargetSearch.LargestDeg"/>.</param>
/// <param name="Corner">The corner that has no equilibrium.</param>
public readonly record struct CamberTargetFailure(CorneringFailure? Reason, CorneringDemand Corner);
