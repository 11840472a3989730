using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>One state of the car.</summary>
public sealed record WhatIfStatePart
{
    /// <summary>What the caller calls the change.</summary>
    [Sample("front springs 40 N/mm")]
    public required string Label { get; init; }

    /// <summary>The figures of the car with it.</summary>
    public required WhatIfFiguresPart Figures { get; init; }

    /// <summary>How far they move from the car as given.</summary>
    public required WhatIfFiguresPart Change { get; init; }

    /// <summary>What is null, and why; outputs relative to this state.</summary>
    public required UnknownResponse[] Unknown { get; init; }
}
