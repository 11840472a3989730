using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>A spring or damper between the body and a moving part.</summary>
/// <param name="Chassis">Its end on the body, mm.</param>
/// <param name="Moving">Its end on the moving part at the stated position, mm.</param>
/// <param name="On">The part that carries the moving end.</param>
public sealed record SpringLine(Vector3 Chassis, Vector3 Moving, SuspensionMember On)
{
    /// <summary>True where nobody said which part carries it and <see cref="On"/> is the usual one of this kind of suspension.</summary>
    public bool IsCarrierAssumed { get; init; }
}
