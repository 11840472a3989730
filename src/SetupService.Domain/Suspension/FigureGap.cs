namespace SetupService.Domain.Suspension;

/// <summary>A figure that cannot be given.</summary>
/// <param name="Output">The figure, as the contract names it.</param>
/// <param name="Reason">What is missing, or why there is none.</param>
/// <param name="Needs">
/// The inputs that would settle it, as JSON Pointers within the part of the car that has them: the axle (<c>/suspension</c>,
/// <c>/alignment</c>, <c>/trackMm</c>) or the car (<c>/wheelbaseMm</c>, …); empty where none would.
/// </param>
public sealed record FigureGap(string Output, string Reason, params IReadOnlyList<string> Needs);
