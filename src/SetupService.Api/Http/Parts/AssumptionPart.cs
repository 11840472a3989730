using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;

namespace SetupService.Api.Http.Parts;

/// <summary>A value the answer used although nobody gave it.</summary>
public sealed record AssumptionPart
{
    /// <summary>JSON Pointer to where the value would stand in the request.</summary>
    [Sample("/vehicle/front/clearance/uncertaintyMm")]
    public required string Input { get; init; }

    /// <summary>The number used, in the unit the member's name ends in; null where it is not a number.</summary>
    [Sample(1.0)]
    public required double? Value { get; init; }

    /// <summary>The word used; null where it is a number.</summary>
    [Sample("worstTravel")]
    public required string? Text { get; init; }

    /// <summary>Where the value comes from.</summary>
    [Sample("common practice, no source")]
    public required string Source { get; init; }

    /// <summary>Why it was needed and what it does to the answer.</summary>
    [Sample("A gap taken with a ruler is not known more closely; it enters every check of room.")]
    public required string Reason { get; init; }

    /// <summary>The range the value plausibly lies in; left out where none is stated.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public PlausiblePart? Plausible { get; init; }

    /// <summary>What outputs become at the ends of that range; left out where that was not worked out.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public MovePart[]? Moves { get; init; }

    /// <summary>The part of an assumption.</summary>
    internal static AssumptionPart Of(Assumption one) => new() { Input = one.Input, Value = one.Value, Text = one.Text, Source = one.Source, Reason = one.Reason };

    /// <summary>The parts of a list of assumptions.</summary>
    internal static AssumptionPart[] Of(IReadOnlyList<Assumption> assumptions)
    {
        var parts = new AssumptionPart[assumptions.Count];
        for (var i = 0; i < parts.Length; i++)
            parts[i] = Of(assumptions[i]);
        return parts;
    }
}
