using System.Text.Json.Serialization;
using SetupService.Api.Fitment.Compare;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.Check;

/// <summary>A candidate wheel and tyre to be checked against one axle of a car.</summary>
public sealed record CheckRequest
{
    /// <summary>Which axle.</summary>
    [JsonRequired]
    [Sample("front")]
    public CarAxle Axle { get; set; }

    /// <summary>The car, as far as it is known. What is missing makes checks unknown, never an error.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>The wheel and tyre to be checked.</summary>
    [JsonRequired]
    public FittingDocument Candidate { get; set; } = null!;

    /// <summary>A change of static camber made at the same time.</summary>
    public CamberChangeDocument? CamberChange { get; set; }

    /// <summary>What the caller wants of the margins.</summary>
    public TolerancesDocument? Tolerances { get; set; }

    /// <summary>The checks whose being unknown makes the verdict unknown; where left out, the eight that decide fit and load, and the brake under a smaller rim.</summary>
    [Count(0, 17)]
    [Sample("inboardClearance")]
    public CheckId[]? Required { get; set; }
}

/// <summary>The answer to a fitment check.</summary>
public sealed record CheckAnswer
{
    /// <summary>The answer for a customer: the verdict, what decided it, what to do by hand; at most five sentences.</summary>
    [Sample("Fits, with 12 mm inboard and 5.6 mm to the arch lip. Turn the wheel by hand over full travel and lock before driving.")]
    public required string Summary { get; init; }

    /// <summary>The gravest status among the checks, in the order fail, unknown, caution, pass; an unknown counts only where it is required.</summary>
    [Sample("caution")]
    public required CheckStatus Verdict { get; init; }

    /// <summary>The checks the verdict was made by: what failed, else what is unknown and required, else the cautions; empty for a pass.</summary>
    [Sample("outboardClearance")]
    public required CheckId[] DecidedBy { get; init; }

    /// <summary>JSON Pointers to the inputs that would settle what is unknown, those the verdict waits for first.</summary>
    [Sample("/vehicle/front/clearance/springSeatMm")]
    public required string[] Needs { get; init; }

    /// <summary>The place with least room in the worst case; null where no room is known.</summary>
    [Sample("inboardClearance")]
    public required CheckId? Governing { get; init; }

    /// <summary>The checks that could not be told, why, and what would settle them; left out with <c>detail=verdict</c>.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UnknownCheck[]? Unknown { get; init; }

    /// <summary>Every check that applies to the axle; left out with <c>detail=verdict</c>.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CheckItem[]? Checks { get; init; }

    /// <summary>What changes against the wheel and tyre fitted now; null where they are not both described, and with less than <c>detail=full</c>.</summary>
    public required ComparisonResponse? Comparison { get; init; }

    /// <summary>The page under /docs/methods that says how each check is made.</summary>
    [Sample("fitment-check")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow; with <c>detail=full</c>, and not within another answer.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public NextCallResponse[]? Next { get; init; }

    /// <summary>What was taken although nobody gave it; with <c>detail=full</c>.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public AssumptionResponse[]? Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer, gravest first; with <c>detail=full</c>.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CautionResponse[]? Cautions { get; init; }

    /// <summary>The codes of the cautions, with less than <c>detail=full</c>; docs/methods/fitment-check has their texts.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample("wheelFasteners")]
    public string[]? CautionCodes { get; init; }
}

/// <summary>How much the answer of a check tells.</summary>
public enum CheckDetail
{
    /// <summary>Summary, verdict, what decided it, what is needed, and the cautions by code.</summary>
    Verdict,

    /// <summary>Every check and every unknown as well.</summary>
    Checks,

    /// <summary>Comparison, assumptions and the cautions in words as well.</summary>
    Full,
}

/// <summary>One check of a fitment.</summary>
public sealed record CheckItem
{
    /// <summary>Which check.</summary>
    [Sample("inboardClearance")]
    public required CheckId Id { get; init; }

    /// <summary>What the check is about, in a few words.</summary>
    [Sample("Room inboard")]
    public required string Title { get; init; }

    /// <summary>How it turned out.</summary>
    [Sample("caution")]
    public required CheckStatus Status { get; init; }

    /// <summary>The figure compared, in the unit of <c>unit</c>; null where there is none.</summary>
    [Sample(2.4)]
    public required double? Value { get; init; }

    /// <summary>What it is compared with, in the same unit; null where there is nothing.</summary>
    [Sample(3.0)]
    public required double? Limit { get; init; }

    /// <summary>Unit of value and limit.</summary>
    [Sample("mm")]
    public required string Unit { get; init; }

    /// <summary>The value as a person reads it.</summary>
    [Sample("2.4 mm")]
    public required string? ValueText { get; init; }

    /// <summary>The limit as a person reads it.</summary>
    [Sample("3.0 mm")]
    public required string? LimitText { get; init; }

    /// <summary>Checks of room: what is left with everything nominal; null for the others.</summary>
    [Sample(9.1)]
    public required double? NominalMm { get; init; }

    /// <summary>Checks of room: nominal less the root-sum-square of the tolerances.</summary>
    [Sample(4.3)]
    public required double? ProbableMm { get; init; }

    /// <summary>Checks of room: nominal less the sum of the tolerances.</summary>
    [Sample(2.4)]
    public required double? WorstCaseMm { get; init; }

    /// <summary>What the check is based on, with its source.</summary>
    [Sample("Measured gap less the change of nominal envelope, camber and travel.")]
    public required string Basis { get; init; }

    /// <summary>Why it turned out so, quoting the numbers of the case.</summary>
    [Sample("It fits: 3.7 mm in the worst case, at least the 3 mm wanted. Of the 14 mm measured inboard, the new wheel and tyre use 5 mm: 9 mm nominal, 5.6 mm probable.")]
    public required string Explanation { get; init; }
}

/// <summary>A check that could not be told.</summary>
public sealed record UnknownCheck
{
    /// <summary>Which check.</summary>
    [Sample("springSeatClearance")]
    public required CheckId Id { get; init; }

    /// <summary>Stable word for the reason; <c>measurementsContradict</c> where two measurements cannot both be right.</summary>
    [Sample("gapMissing")]
    public required string Code { get; init; }

    /// <summary>Why it could not be told.</summary>
    [Sample("The gap to the spring seat was not measured.")]
    public required string Reason { get; init; }

    /// <summary>Checks of room: by how much more room than the wheel and tyre fitted now the candidate takes there; null where that cannot be told either, and for the others.</summary>
    [Sample(5.2)]
    public required double? MoreRoomMm { get; init; }

    /// <summary>JSON Pointers to the inputs that would settle it; where measurements contradict each other, to those.</summary>
    [Sample("/vehicle/front/clearance/springSeatMm")]
    public required string[] Needs { get; init; }
}
