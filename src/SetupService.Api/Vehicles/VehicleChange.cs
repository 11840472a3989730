using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>
/// A change to a car: the members named here replace the car's, objects member by member, arrays whole (RFC 7396), and null
/// changes nothing. No member is required. A suspension named with another kind is replaced whole; without a kind it keeps the car's.
/// </summary>
[JsonConverter(typeof(DocumentChangeConverter<VehicleChange, VehicleDocument>))]
public sealed class VehicleChange : DocumentChange<VehicleDocument>;
