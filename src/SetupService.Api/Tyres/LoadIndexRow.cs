using SetupService.Api.Http.Contract;

namespace SetupService.Api.Tyres;

/// <summary>One load index.</summary>
public sealed record LoadIndexRow
{
    /// <summary>The index.</summary>
    [Sample(91)]
    public required int LoadIndex { get; init; }

    /// <summary>The load it stands for.</summary>
    [Sample(615.0)]
    public required double LoadCapacityKg { get; init; }

    /// <summary>Whether sources print another figure as well.</summary>
    [Sample(false)]
    public required bool Disputed { get; init; }
}
