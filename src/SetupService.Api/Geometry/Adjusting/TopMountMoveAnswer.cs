using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using SetupService.Domain.Answers;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What a movement of the top mount makes of a corner.</summary>
public sealed record TopMountMoveAnswer : CornerChangeAnswer
{
    /// <summary>For the serialiser.</summary>
    [JsonConstructor]
    public TopMountMoveAnswer()
    {
    }

    [SetsRequiredMembers]
    internal TopMountMoveAnswer(CornerChange change, IReadOnlyList<Assumption> assumptions)
        : base(change, assumptions) => MoveMm = new TopMountMovePart { Inboard = change.Adjustments[0].Amount, Rearward = change.Adjustments[1].Amount };

    /// <summary>The movement asked about, or the least one that gives the angles wanted.</summary>
    public required TopMountMovePart MoveMm { get; init; }
}
