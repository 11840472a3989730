using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>Where in its travel the wheel stood when gaps were measured.</summary>
[JsonConverter(typeof(WordConverter<MeasuredAt>))]
public enum MeasuredAt
{
    /// <summary>The person has allowed for travel: the gaps are the smallest over it.</summary>
    WorstTravel,

    /// <summary>At ride height; travel still comes off.</summary>
    RideHeight,
}
