using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Fitment;

/// <summary>What the caller wants of the margins.</summary>
public sealed record TolerancesDocument
{
    /// <summary>Worst-case room below which a check of room is a caution; 3 mm where left out.</summary>
    [Range(0, 50)]
    [Sample(3.0)]
    public double? MinimumMarginMm { get; set; }
}
