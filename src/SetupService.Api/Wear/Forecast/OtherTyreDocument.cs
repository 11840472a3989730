using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Forecast;

/// <summary>Another tyre of the same car.</summary>
public sealed record OtherTyreDocument
{
    /// <summary>Its readings, like the first tyre's.</summary>
    [JsonRequired]
    [Count(2, 200)]
    public DepthReadingDocument[] Readings { get; set; } = [];
}
