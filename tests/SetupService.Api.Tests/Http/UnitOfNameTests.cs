using SetupService.Api.Http.Contract;

namespace SetupService.Api.Tests.Http;

public class UnitOfNameTests
{
    [Theory]
    [InlineData("rimWidthIn", "in")]
    [InlineData("rimWidthsIn", "in")]
    [InlineData("offsetMm", "mm")]
    [InlineData("cornerRadiusM", "m")]
    [InlineData("revolutionsPerKm", "1/km")]
    [InlineData("camberDeg", "deg")]
    [InlineData("massKg", "kg")]
    [InlineData("loadN", "N")]
    [InlineData("rateNPerMm", "N/mm")]
    [InlineData("corneringStiffnessNPerDeg", "N/deg")]
    [InlineData("rollRateNmPerDeg", "Nm/deg")]
    [InlineData("bumpNsPerM", "Ns/m")]
    [InlineData("camberDegPerKn", "deg/kN")]
    [InlineData("rollDegPerG", "deg/g")]
    [InlineData("pressureKpa", "kPa")]
    [InlineData("temperatureC", "°C")]
    [InlineData("topSpeedKmh", "km/h")]
    [InlineData("rideFrequencyHz", "Hz")]
    [InlineData("lateralG", "g")]
    [InlineData("timeS", "s")]
    [InlineData("brakeShareFrontPct", "%")]
    [InlineData("holeCount", "count")]
    [InlineData("toeArcmin", "arcmin")]
    [InlineData("steeringRatio", null)]
    [InlineData("minimumLoadIndex", null)]
    [InlineData("margin", null)]
    [InlineData("mm", null)]
    [InlineData("", null)]
    public void The_end_of_a_name_tells_its_unit(string name, string? unit) => Assert.Equal(unit, UnitOfName.Read(name));
}
