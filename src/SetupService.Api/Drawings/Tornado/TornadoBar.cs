namespace SetupService.Api.Drawings.Tornado;

/// <summary>One change.</summary>
/// <param name="Name">What the caller calls it.</param>
/// <param name="Change">By how much it moves the figure.</param>
/// <param name="IsTogether">Whether it is all changes together, which stands apart at the foot.</param>
public sealed record TornadoBar(string Name, double Change, bool IsTogether = false);
