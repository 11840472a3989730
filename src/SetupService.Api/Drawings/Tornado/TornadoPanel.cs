namespace SetupService.Api.Drawings.Tornado;

/// <summary>One figure of a tornado.</summary>
/// <param name="Name">The figure's name.</param>
/// <param name="Unit">Its unit; empty for a pure number.</param>
/// <param name="Base">Its value with nothing changed.</param>
/// <param name="Bars">What each change makes of it.</param>
public sealed record TornadoPanel(string Name, string Unit, double Base, IReadOnlyList<TornadoBar> Bars);
