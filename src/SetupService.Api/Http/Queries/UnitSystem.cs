using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Queries;

/// <summary>The units of texts and drawings made for people. Numbers in JSON always keep the unit of their name.</summary>
[JsonConverter(typeof(WordConverter<UnitSystem>))]
public enum UnitSystem
{
    /// <summary>Millimetres, kilograms, kilopascals, km/h, °C.</summary>
    Metric,

    /// <summary>Inches, pounds, psi, mph, °F.</summary>
    Us,
}
