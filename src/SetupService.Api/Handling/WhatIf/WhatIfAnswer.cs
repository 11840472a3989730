using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>What each change does alone, and all of them together.</summary>
public sealed record WhatIfAnswer
{
    /// <summary>The car as given.</summary>
    public required WhatIfFiguresPart AsGiven { get; init; }

    /// <summary>Each change alone, in the order asked.</summary>
    public required WhatIfStatePart[] Alone { get; init; }

    /// <summary>All changes, one after the other: where two set the same, the later stands.</summary>
    public required WhatIfStatePart Together { get; init; }

    /// <summary>The same as a table for a person: plain text in columns, for a typeface of one width.</summary>
    [Sample("                        roll")]
    public required string Table { get; init; }

    /// <summary>What is null for the car as given, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("what-if")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
