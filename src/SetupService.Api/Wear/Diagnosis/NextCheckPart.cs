using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>The measurement that is expected to tell most.</summary>
public sealed record NextCheckPart
{
    /// <summary>Which.</summary>
    [Sample("toe")]
    public required WearCheck Check { get; init; }

    /// <summary>How it is done.</summary>
    [Sample("Have the toe of each wheel measured, left and right apart, with the car loaded as driven.")]
    public required string Text { get; init; }

    /// <summary>How much it is expected to tell about the causes, in bits; null where all that is told apart here is read already.</summary>
    [Sample(0.42)]
    public required double? ExpectedInformation { get; init; }
}
