using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

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

    /// <summary>JSON Pointers to the inputs that would settle it; where measurements contradict each other, to those.</summary>
    [Sample("/vehicle/front/clearance/springSeatMm")]
    public required string[] Needs { get; init; }

    internal static UnknownCheck Of(AxleUnderCheck car, in Fitting candidate, CheckId id, in CheckResult result, UnitSystem units) => new()
    {
        Id = id,
        Code = EnumNames<Finding>.Of(result.Finding) ?? "valueMissing",
        Reason = CheckWords.Explanation(car, candidate, id, result, units),
        Needs = [.. UnknownNeeds.Of(car, candidate, id, result)],
    };
}
