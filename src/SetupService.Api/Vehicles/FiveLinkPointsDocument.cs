using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>The points of a five-link suspension. The fifth link is the tie rod or toe link.</summary>
public sealed record FiveLinkPointsDocument : SpringDamperPointsDocument
{
    /// <summary>The five links; the fifth is the tie rod or toe link.</summary>
    [JsonRequired]
    [Count(5, 5)]
    public LinkDocument[] Links { get; set; } = [];

    /// <summary>Where the spin axis meets the wheel's centre plane.</summary>
    [JsonRequired]
    public PointDocument WheelCentre { get; set; } = null!;
}
