using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What the tyres say.</summary>
public sealed record DiagnosisAnswer
{
    /// <summary>The answer in one or two sentences.</summary>
    [Sample("Most likely (86 %): too little negative camber at the front for the cornering done.")]
    public required string Summary { get; init; }

    /// <summary>What can hurt somebody, worn out and unsafe first.</summary>
    public required CautionResponse[] Cautions { get; init; }

    /// <summary>The causes, the likeliest first; unlikely ones are left out, normal is always there.</summary>
    public required CausePart[] Causes { get; init; }

    /// <summary>Each tyre's tread.</summary>
    public required TreadPart[] Tread { get; init; }

    /// <summary>The wear model of each axle; empty where the car is not known well enough.</summary>
    public required AxleWearPart[] WearModel { get; init; }

    /// <summary>What to measure next.</summary>
    public required NextCheckPart NextCheck { get; init; }

    /// <summary>Readings that cannot well be true together; empty where there are none.</summary>
    public required ContradictionPart[] Contradictions { get; init; }

    /// <summary>What the answer cannot tell, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("wear-diagnosis")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }
}
