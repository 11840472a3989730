using System.Text;
using SetupService.Api.Host;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Suspension;

namespace SetupService.Api.Tests.Vehicles;

/// <summary>A measured suspension takes its readings as a list or as a table, never both.</summary>
public sealed class MeasuredTableTests
{
    [Fact]
    public void A_table_is_the_same_as_its_readings()
    {
        var table = MeasuredMapper.Readings(new() { Table = "-20; -0,4; 0,05\n20; -1,3" }, null);
        var readings = MeasuredMapper.Readings(
            new() { Readings = [new() { TravelMm = -20, CamberDeg = -0.4, ToeDeg = 0.05 }, new() { TravelMm = 20, CamberDeg = -1.3 }] }, null);

        Assert.Equal(readings.Travel, table.Travel);
    }

    [Theory]
    [InlineData("", "/readings", FaultCodes.Required)]
    [InlineData(""", "table": "0 -1\n20 -2", "readings": [{ "travelMm": 0, "camberDeg": -1 }, { "travelMm": 20, "camberDeg": -2 }]""", "/table", FaultCodes.Inconsistent)]
    public void Exactly_one_of_the_two_is_needed(string members, string place, string code)
    {
        var fault = Assert.Single(Faults(members));

        Assert.Equal(("/front/suspension" + place, code), (fault.Pointer, fault.Code));
    }

    [Fact]
    public void Every_bad_line_is_a_fault_with_its_number()
    {
        var faults = Faults(""", "table": "0 -1\nten -2\n20" """);

        Assert.Equal(["line 2", "line 3"], faults.Select(fault => fault.Message[..6]));
        Assert.All(faults, fault => Assert.Equal(("/front/suspension/table", FaultCodes.Unreadable), (fault.Pointer, fault.Code)));
    }

    /// <summary>What is said of the readings points at the member they were sent in.</summary>
    [Theory]
    [InlineData(true, "/vehicle/front/suspension/table")]
    [InlineData(false, "/vehicle/front/suspension/readings")]
    public void Assumptions_and_gaps_point_at_what_was_sent(bool isTable, string place)
    {
        var model = SuspensionMapper.Model(
            isTable ? new MeasuredSuspensionDocument { Table = "-20 -0.4\n20 -1.3" } : new MeasuredSuspensionDocument { Readings = [new() { TravelMm = -20, CamberDeg = -0.4 }, new() { TravelMm = 20, CamberDeg = -1.3 }] },
            null);
        var setup = new WheelSetup { CamberDeg = null, ToeDeg = null, RideHeightChangeMm = -100 };

        Assert.Equal(place, model.Assumptions("/vehicle/front", setup)[0].Input);
        Assert.Equal(place, "/vehicle/front" + model.WhyNotAtRide(setup).Input);
        Assert.Equal(place, "/vehicle/front" + model.PathOver(setup, 0, 200).Gap!.Needs[0]);
    }

    private static IReadOnlyList<Fault> Faults(string members) =>
        ServiceContract.Instance.ReaderOf<VehicleDocument>().Faults(Encoding.UTF8.GetBytes($$"""{ "front": { "suspension": { "kind": "measured"{{members}} } } }"""));
}
