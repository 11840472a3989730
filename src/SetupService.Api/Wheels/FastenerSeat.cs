using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wheels;

/// <summary>The shape of the seat a wheel bolt or nut bears on.</summary>
[JsonConverter(typeof(WordConverter<FastenerSeat>))]
public enum FastenerSeat
{
    /// <summary>A cone of 60° included angle.</summary>
    Cone60,

    /// <summary>A ball of 12 mm radius.</summary>
    Ball12,

    /// <summary>A ball of 13 mm radius.</summary>
    Ball13,

    /// <summary>A ball of 14 mm radius.</summary>
    Ball14,

    /// <summary>A flat face.</summary>
    Flat,
}
