using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using SetupService.Domain.Answers;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What adjusting makes of a corner.</summary>
public sealed record AdjustmentAnswer : CornerChangeAnswer
{
    /// <summary>For the serialiser.</summary>
    [JsonConstructor]
    public AdjustmentAnswer()
    {
    }

    [SetsRequiredMembers]
    internal AdjustmentAnswer(CornerChange change, IReadOnlyList<Assumption> assumptions)
        : base(change, assumptions) => Adjustments = change.Adjusted();

    /// <summary>What was asked about, or the least that gives the angles wanted.</summary>
    public required AdjustedPart[] Adjustments { get; init; }
}
