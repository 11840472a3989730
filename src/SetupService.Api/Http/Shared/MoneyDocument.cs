using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Shared;

/// <summary>A sum of money.</summary>
public sealed record MoneyDocument
{
    /// <summary>The amount in the currency.</summary>
    [JsonRequired]
    [Range(0, 100_000)]
    [Sample(148.0)]
    public double Amount { get; set; }

    /// <summary>The currency's code of three letters (ISO 4217).</summary>
    [JsonRequired]
    [StringLength(3)]
    [Sample("EUR")]
    public string Currency { get; set; } = null!;
}
