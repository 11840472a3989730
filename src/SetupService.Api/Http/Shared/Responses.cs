using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;

namespace SetupService.Api.Http.Shared;

/// <summary>A value the answer used although nobody gave it.</summary>
public sealed record AssumptionResponse
{
    /// <summary>JSON Pointer to where the value, or what would tell it, stands in the request. Under /vehicle/tyreModel are coefficients of the method's own tyre, which no request sets.</summary>
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
    public PlausibleResponse? Plausible { get; init; }

    /// <summary>What outputs become at the ends of that range; left out where that was not worked out.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public MoveResponse[]? Moves { get; init; }

    /// <summary>The part of an assumption.</summary>
    internal static AssumptionResponse From(Assumption one) => new() { Input = one.Input, Value = one.Value, Text = one.Text, Source = one.Source, Reason = one.Reason };

    /// <summary>The parts of a list of assumptions.</summary>
    internal static AssumptionResponse[] From(IReadOnlyList<Assumption> assumptions)
    {
        var parts = new AssumptionResponse[assumptions.Count];
        for (var i = 0; i < parts.Length; i++)
            parts[i] = From(assumptions[i]);
        return parts;
    }
}

/// <summary>The range nine cases in ten lie in, in the unit of the input it stands beside.</summary>
public sealed record PlausibleResponse
{
    /// <summary>Lower end.</summary>
    [Sample(0.5)]
    public required double Lower { get; init; }

    /// <summary>Upper end.</summary>
    [Sample(2.0)]
    public required double Upper { get; init; }
}

/// <summary>What one output would be at both ends of the range an assumed input plausibly lies in, the other inputs as they are.</summary>
public sealed record MoveResponse
{
    /// <summary>JSON Pointer to the output in this answer.</summary>
    [Sample("/rollDeg")]
    public required string Output { get; init; }

    /// <summary>At the lower end of the range, in the output's unit; null where the car has no such figure there.</summary>
    [Sample(2.9)]
    public required double? Lower { get; init; }

    /// <summary>At the upper end.</summary>
    [Sample(3.6)]
    public required double? Upper { get; init; }
}

/// <summary>A warning that belongs to the answer because acting on it can hurt somebody.</summary>
public sealed record CautionResponse
{
    /// <summary>Stable word that names the caution; more may come.</summary>
    [Sample("wheelFasteners")]
    public required string Code { get; init; }

    /// <summary>The caution as a sentence.</summary>
    [Sample("Tighten crosswise with a calibrated wrench to the vehicle maker's torque.")]
    public required string Text { get; init; }

    /// <summary>The parts of a list of cautions.</summary>
    internal static CautionResponse[] From(IReadOnlyList<Caution> cautions)
    {
        var parts = new CautionResponse[cautions.Count];
        for (var i = 0; i < parts.Length; i++)
            parts[i] = new CautionResponse { Code = cautions[i].Code, Text = cautions[i].Text };
        return parts;
    }
}

/// <summary>What the answer cannot tell, why, and what would settle it.</summary>
public sealed record UnknownResponse
{
    /// <summary>JSON Pointer to the member that is null, within the object that holds this list; without a slash the name of a check, or of a member of many rows or wheels.</summary>
    [Sample("antiDivePct")]
    public required string Id { get; init; }

    /// <summary>What would have to be given, or why this kind has no such figure.</summary>
    [Sample("needs wheelbaseMm")]
    public required string Reason { get; init; }

    /// <summary>JSON Pointers to the inputs that would settle it; empty where none would.</summary>
    [Sample("/vehicle/wheelbaseMm")]
    public required string[] Needs { get; init; }

    /// <summary>What is not told, why, and the inputs that would settle it.</summary>
    internal static UnknownResponse Create(string id, string reason, params string[] needs) => new() { Id = id, Reason = reason, Needs = needs };
}

/// <summary>A range in the unit of the member it stands under, both ends included.</summary>
public sealed record RangeResponse
{
    /// <summary>Lower end.</summary>
    [Sample(-3.0)]
    public required double From { get; init; }

    /// <summary>Upper end.</summary>
    [Sample(8.0)]
    public required double To { get; init; }
}

/// <summary>A value and the range it lies in at a stated probability, in the unit of the member it stands under. Null where the data give no best value, or no end on that side: the range is open there.</summary>
public sealed record UncertaintyResponse
{
    /// <summary>The best estimate; null where the data give none.</summary>
    [Sample(-1.2)]
    public required double? Value { get; init; }

    /// <summary>Lower end; null where the range is open below. True values lie above it with (100 + levelPct) / 2 percent.</summary>
    [Sample(-1.35)]
    public required double? Lower { get; init; }

    /// <summary>Upper end; null where the range is open above.</summary>
    [Sample(-1.05)]
    public required double? Upper { get; init; }

    /// <summary>Probability that the true value lies between, in percent.</summary>
    [Sample(90.0)]
    public required double LevelPct { get; init; }

    /// <summary>The part of a range.</summary>
    internal static UncertaintyResponse From(Uncertainty range) => new() { Value = range.Value, Lower = range.Lower, Upper = range.Upper, LevelPct = range.LevelPct };

    /// <summary>A range that may be open, 90 %; null where neither a value nor an end is known.</summary>
    internal static UncertaintyResponse? From(RatioRange? range) => range is not { IsUnknown: false } known
        ? null
        : new() { Value = known.Value, Lower = known.Lower, Upper = known.Upper, LevelPct = Uncertainty.NinetyPct };

    /// <summary>The part of a range; null where there is none.</summary>
    internal static UncertaintyResponse? From(Uncertainty? range) => range is { } known ? From(known) : null;

    /// <summary>The 90 % range of an estimate; null where there is none.</summary>
    internal static UncertaintyResponse? From(Estimate? estimate) => estimate is { } known ? From(known) : null;

    /// <summary>The 90 % range of an estimate.</summary>
    internal static UncertaintyResponse From(Estimate estimate) => From(estimate.Ninety);
}
