using System.Diagnostics.CodeAnalysis;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>The answer to a comparison.</summary>
public sealed record ComparisonAnswer : ComparisonPart
{
    [SetsRequiredMembers]
    private ComparisonAnswer(ComparisonPart figures)
        : base(figures)
    {
        Method = "fitment-comparison";
        Edition = Domain.Answers.Edition.Current;
        Assumptions = AssumptionResponse.Of(FitmentAssumptions.ForComparison);
        Cautions = CautionResponse.Of(FitmentCautions.ForComparison);
    }

    /// <summary>The page under /docs/methods that derives the figures.</summary>
    [Sample("fitment-comparison")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }

    /// <summary>The answer that shows a comparison.</summary>
    internal static new ComparisonAnswer Of(in Comparison comparison) => new(ComparisonPart.Of(comparison));
}
