using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Cornering;

/// <summary>Which end of the car gives way first, and by which tyres that is told.</summary>
public sealed record BalancePart
{
    /// <summary>Front axle's share of the load that crosses the car; null where hardly any does.</summary>
    [Sample(54.0)]
    public required double? FrontLoadTransferPct { get; init; }

    /// <summary>Change of steer per g beyond what the turn's own geometry takes, radius and tyres held, at the road wheels (ISO 8855's understeer gradient); positive = understeer. Null where there is no turn a little harder.</summary>
    [Sample(1.3)]
    public required double? UndersteerDegPerG { get; init; }

    /// <summary>Both in words, and whose tyres they are of.</summary>
    [Sample("The car pushes wide (understeer): each 0.1 g more needs about 0.06° more steer at this radius. …")]
    public required string Text { get; init; }
}
