using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Geometry;

/// <summary>What every call on a car's suspension takes. Written before the call's own members.</summary>
public abstract record CornerRequest
{
    /// <summary>The car. Needed of the axle asked about: the suspension, with points its camber and toe, and loadedRadiusMm or the tyre it is estimated from.</summary>
    [JsonRequired]
    [JsonPropertyOrder(-1)]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>The axle; its left corner is computed.</summary>
    [JsonRequired]
    [JsonPropertyOrder(-1)]
    [Sample("front")]
    public CarAxle Axle { get; set; }

    /// <summary>The axle asked about; null where nothing is said of it.</summary>
    internal AxleDocument? AxleDocument => Axle == CarAxle.Front ? Vehicle?.Front : Vehicle?.Rear;

    /// <summary>Its suspension; null where nothing is said of it.</summary>
    internal SuspensionDocument? Suspension => AxleDocument?.Suspension;

    /// <summary>JSON Pointer to the axle asked about.</summary>
    internal string AxlePointer => Axle == CarAxle.Front ? "/vehicle/front" : "/vehicle/rear";
}

/// <summary>A point worked out, in the axes of the points given: x forward, y left, z up.</summary>
public sealed record PointResponse
{
    /// <summary>Forward.</summary>
    [Sample(27.7)]
    public required double XMm { get; init; }

    /// <summary>To the left of the car's centre plane.</summary>
    [Sample(756.8)]
    public required double YMm { get; init; }

    /// <summary>Up.</summary>
    [Sample(3.0)]
    public required double ZMm { get; init; }

    /// <summary>The point as it is answered.</summary>
    internal static PointResponse From(in Vector3 point) => new() { XMm = point.X, YMm = point.Y, ZMm = point.Z };
}
