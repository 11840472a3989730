using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Planning.Ranking;

namespace SetupService.Api.Plans.Ranking;

/// <summary>The tyres in order, and what the order hangs on.</summary>
public sealed record TyreRankingAnswer
{
    /// <summary>The answer for a customer, at most four sentences.</summary>
    [Sample("First for this use: Summer A, 71 of 100 points, most of them for grip in the wet and grip in the dry. …")]
    public required string Summary { get; init; }

    /// <summary>The tyres, best first; those that do not fit or may not carry the car behind them, without a place.</summary>
    public required RankedTyreResponse[] Tyres { get; init; }

    /// <summary>Probability that the first is truly ahead of the second; null where only one is ranked.</summary>
    [Sample(83.0)]
    public required double? FirstIsBestPct { get; init; }

    /// <summary>How much each criterion counts, and at what share second and first change places.</summary>
    public required CriterionResponse[] Criteria { get; init; }

    /// <summary>What is null, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("tyre-ranking")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What grades do not say, and what can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>A tyre in its place.</summary>
public sealed record RankedTyreResponse
{
    /// <summary>What the caller calls it.</summary>
    [Sample("Summer A")]
    public required string Id { get; init; }

    /// <summary>Its place, from 1; null where it does not fit, may not carry the car, or nothing but its price is told.</summary>
    [Sample(1)]
    public required int? Place { get; init; }

    /// <summary>Its score of 100, with what classes and missing grades leave open; null without a place.</summary>
    public required UncertaintyResponse? Score { get; init; }

    /// <summary>What the score is made of; empty without a place.</summary>
    public required ScorePartResponse[] Parts { get; init; }

    /// <summary>What 1000 km on the road cost of one tyre, in the currency of its price; null where price or life is not known.</summary>
    public required UncertaintyResponse? CostPer1000Km { get; init; }

    /// <summary>What a lap costs of one tyre; null where price or life is not known.</summary>
    public required UncertaintyResponse? CostPerLap { get; init; }

    /// <summary>Whether it fits and carries the axle, as fitment/check says; null without a vehicle.</summary>
    public required TyreFitResponse? Fit { get; init; }
}

/// <summary>One criterion's part in a score.</summary>
public sealed record ScorePartResponse
{
    /// <summary>Which criterion.</summary>
    [Sample("wetGrip")]
    public required TyreCriterion Criterion { get; init; }

    /// <summary>How good the tyre is by it, 0 to 1: the middle of what its class stands for; where nothing tells, the mean of the others.</summary>
    [Sample(0.68)]
    public required double Merit { get; init; }

    /// <summary>The member of the request that told it; null where none did.</summary>
    [Sample("wetGripClass")]
    public required string? ToldBy { get; init; }

    /// <summary>What it adds to the score.</summary>
    [Sample(21.4)]
    public required double Points { get; init; }
}

/// <summary>What the check of fitment says of a tyre.</summary>
public sealed record TyreFitResponse
{
    /// <summary>Its verdict.</summary>
    [Sample("pass")]
    public required CheckStatus Verdict { get; init; }

    /// <summary>The checks the verdict was made by.</summary>
    [Sample("loadCapacity")]
    public required CheckId[] DecidedBy { get; init; }

    /// <summary>What to tell a customer.</summary>
    [Sample("Fits: it takes no more room than the wheel and tyre fitted now.")]
    public required string Summary { get; init; }
}

/// <summary>How much a criterion counts.</summary>
public sealed record CriterionResponse
{
    /// <summary>Which criterion.</summary>
    [Sample("wetGrip")]
    public required TyreCriterion Criterion { get; init; }

    /// <summary>Its share.</summary>
    [Sample(26.5)]
    public required double SharePct { get; init; }

    /// <summary>Its share at which second and first have the same score, the others kept in proportion; null where no share does that.</summary>
    [Sample(41.0)]
    public required double? FlipsAtSharePct { get; init; }
}
