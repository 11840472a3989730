using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Handling.WhatIf;

/// <summary>What one state of the car comes to: its figures, or why the turn has none.</summary>
/// <param name="Figures">The figures; those of the turn are null where it has no equilibrium.</param>
/// <param name="Failure">Why the turn has no equilibrium; null where it has one.</param>
/// <param name="IsHeightKnown">Whether spring lengths told the ride height; where they did not it is taken to stay.</param>
public readonly record struct WhatIfOutcome(WhatIfFigures Figures, CorneringFailure? Failure, bool IsHeightKnown);
