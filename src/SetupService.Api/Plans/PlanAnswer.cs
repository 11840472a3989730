using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans;

/// <summary>The packages worth choosing between, the recommended one, and how the choice changes.</summary>
public sealed record PlanAnswer
{
    /// <summary>For the customer, at most five sentences: what to do, what it does, why this, how sure, what first.</summary>
    [Sample("Buy nothing for now: set the front camber to −2.4° (1.7° more negative than now) with the car's own adjusters. …")]
    public required string Summary { get; init; }

    /// <summary>The recommended package; null where none may be recommended.</summary>
    public required PlanRecommendationResponse? Recommended { get; init; }

    /// <summary>The car as given, nothing set.</summary>
    public required PlanFiguresResponse Before { get; init; }

    /// <summary>The packages worth choosing between, at most 12: the recommended first, then by cost. None is dominated by another in cost, track, road and tread life.</summary>
    public required PlanPackageResponse[] Packages { get; init; }

    /// <summary>How many more packages none dominates.</summary>
    [Sample(4)]
    public required int FurtherCount { get; init; }

    /// <summary>Parts, and packages of parts not rejected themselves, that are out of the question.</summary>
    public required PlanRejectionResponse[] Rejected { get; init; }

    /// <summary>How many more packages were rejected.</summary>
    [Sample(0)]
    public required int FurtherRejectedCount { get; init; }

    /// <summary>The recommended package for smaller budgets: each from its cost on, up to the next.</summary>
    public required PlanByBudgetResponse[] ByBudget { get; init; }

    /// <summary>The recommended package over the track's share of the use.</summary>
    public required PlanByTrackShareResponse[] ByTrackShare { get; init; }

    /// <summary>The track's share of the use as stated, a kilometre of track counted as ten of road.</summary>
    [Sample(54.0)]
    public required double TrackSharePct { get; init; }

    /// <summary>What was searched.</summary>
    public required PlanSearchedResponse Searched { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What is not told, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("plan")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>The recommended package, what to do first, and how sure it is.</summary>
public sealed record PlanRecommendationResponse
{
    /// <summary>The ids of its parts; empty = buy nothing.</summary>
    [Sample("top-mounts")]
    public required string[] Parts { get; init; }

    /// <summary>Why this one.</summary>
    [Sample("That is 84 % of the most any sound package does for what you want; the one that does most costs 640 EUR more.")]
    public required string Reason { get; init; }

    /// <summary>What to do first.</summary>
    public required PlanFirstStepResponse FirstStep { get; init; }

    /// <summary>Share of joint draws of what is not known of the car in which it stays recommended; null where nothing else may be, or it could not be worked out.</summary>
    [Sample(87.0)]
    public required double? StaysFirstPct { get; init; }

    /// <summary>The inputs drawn, as JSON Pointers, the one that moves it most first.</summary>
    [Sample("/vehicle/front/compliance/camberDegPerKn")]
    public required string[] DrawnInputs { get; init; }
}

/// <summary>The first step.</summary>
public sealed record PlanFirstStepResponse
{
    /// <summary>What to do.</summary>
    [Sample("First set the front camber to −2.2° (1.5° more negative than now), have toe reset, check the gaps around the wheels and read depth or temperature across the treads before going on.")]
    public required string Text { get; init; }

    /// <summary>The cambers to set in it: no more than a step one would dare at once.</summary>
    public required PlanSettingResponse[] Settings { get; init; }
}

/// <summary>The camber a package is judged with.</summary>
public sealed record PlanSettingResponse
{
    /// <summary>Which axle.</summary>
    [Sample("front")]
    public required CarAxle Axle { get; init; }

    /// <summary>Camber of both wheels, as a gauge reads it with the car standing.</summary>
    [Sample(-2.4)]
    public required double CamberDeg { get; init; }

    /// <summary>How much that is from the car as given.</summary>
    [Sample(-1.7)]
    public required double ChangeDeg { get; init; }

    /// <summary>The same as the vehicle states it, at its stated ride height: alignment.camberDeg for what-if.</summary>
    [Sample(-2.4)]
    public required double StatedCamberDeg { get; init; }

    /// <summary>The camber that would keep the outer tread flat over the bends.</summary>
    [Sample(-2.9)]
    public required double FlatCamberDeg { get; init; }

    /// <summary>Whether the adjuster, the rule book or the road ends it more than half a degree before that.</summary>
    [Sample(false)]
    public required bool IsShortOfFlat { get; init; }
}
