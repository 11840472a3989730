using System.Text;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tests.Vehicles;
using static SetupService.Api.Tests.Http.Changes.ChangeReading;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>What shows only when a change is made, and the place it is told at: in the change where the change speaks of it, else in the car.</summary>
public sealed class MergedFaultTests
{
    private const string SpringEnd = """{ "front": { "suspension": { "points": { "springChassis": { "xMm": 0, "yMm": 500, "zMm": 700 } } } } }""";

    public static TheoryData<string, string, string, string> OneFault => new()
    {
        // What the car lacks is missing where the change began it.
        { """{ "front": { "tyre": { "marking": "225/45R17 91W" } } }""", """{ "front": { "tyre": { "pressureKpa": 250 }, "wheel": { "rimDiameterIn": 17, "offsetMm": 35 } } }""", "/change/front/wheel/rimWidthIn", FaultCodes.Required },
        { "{}", """{ "front": { "suspension": { "points": {} } } }""", "/change/front/suspension/kind", FaultCodes.Required },
        { DemoCar.Car, """{ "rear": { "suspension": { "kind": "twistBeam" } } }""", "/change/rear/suspension/points", FaultCodes.Required },
        { DemoCar.WithSuspension(DemoCar.Strut), SpringEnd, "/change/front/suspension/points/springMoving", FaultCodes.Required },

        // A member of another kind than the car's.
        { DemoCar.Car, """{ "front": { "suspension": { "points": { "upperBallJoint": { "xMm": 1 } } } } }""", "/change/front/suspension/points/upperBallJoint", FaultCodes.UnknownMember },
        { DemoCar.Car, """{ "front": { "suspension": { "readings": [ { "travelMm": 0, "camberDeg": 0 }, { "travelMm": 9, "camberDeg": 0 } ] } } }""", "/change/front/suspension/readings", FaultCodes.UnknownMember },

        // What the rules find: in the change where it names the place, in the car where only the car does.
        { DemoCar.Car, """{ "rear": { "tyre": { "marking": "45Q17" } } }""", "/change/rear/tyre/marking", FaultCodes.Unreadable },
        { DemoCar.WithSuspension(DemoCar.Strut), """{ "front": { "suspension": { "points": { "strutLower": { "xMm": -35, "yMm": 580, "zMm": 790 } } } } }""", "/change/front/suspension/points/strutLower", FaultCodes.Inconsistent },
        { DemoCar.WithSuspension(DemoCar.Strut), """{ "front": { "suspension": { "points": { "strutTop": { "xMm": -8, "yMm": 655, "zMm": 330 } } } } }""", "/vehicle/front/suspension/points/strutLower", FaultCodes.Inconsistent },
    };

    [Theory]
    [MemberData(nameof(OneFault))]
    public void What_shows_when_a_change_is_made_is_told_where_the_caller_wrote_it(string car, string change, string place, string code)
    {
        var fault = Assert.Single(FaultsOf(change, car));

        Assert.Equal((place, code), (fault.Pointer, fault.Code));
    }

    [Fact]
    public void The_fast_path_refuses_what_breaks_the_contract_when_merged()
    {
        var request = Read("""{ "vehicle": {} }""");
        var isBound = ChangeContract.ReaderOf<ChangeRequest>().TryRead("""{ "vehicle": {}, "change": { "front": { "tyre": { "pressureKpa": 230 } } } }"""u8, out var bound);

        Assert.True(isBound);
        Assert.False(ChangeContract.Changing(request.Vehicle, "/vehicle").With(bound!.Change!, "/change").Read().TryGet(out _, out _));
    }

    [Fact]
    public void Each_change_is_made_alone_and_all_faults_come_in_one_answer_with_the_car_s()
    {
        const string Body =
            """
            { "vehicle": { "rear": { "tyre": { "marking": "45Q17" } } }, "changes": [
              { "label": "a", "vehicle": { "front": { "wheel": { "offsetMm": 35, "rimWidthIn": 8 } } } },
              { "label": "b", "vehicle": { "front": { "tyre": { "marking": "45Q17" } } } },
              { "label": "c", "vehicle": { "rear": { "tyre": { "marking": "225/45R17 91W" } } } } ] }
            """;

        Assert.Equal(
            [
                ("/changes/0/vehicle/front/wheel/rimDiameterIn", FaultCodes.Required),
                ("/changes/1/vehicle/front/tyre/marking", FaultCodes.Unreadable),
                ("/vehicle/rear/tyre/marking", FaultCodes.Unreadable),
            ],
            Faults(Body).Select(fault => (fault.Pointer!, fault.Code)).Order());
    }

    [Fact]
    public void Changes_that_can_be_made_alone_but_not_together_are_a_fault_of_the_one_that_speaks_of_it()
    {
        const string Changes =
            """
            [ { "label": "measured", "vehicle": { "front": { "suspension": { "kind": "measured", "readings": [ { "travelMm": -20, "camberDeg": 0 }, { "travelMm": 20, "camberDeg": -1 } ] } } } },
              { "label": "top mount", "vehicle": { "front": { "suspension": { "points": { "strutTop": { "yMm": 570 } } } } } } ]
            """;

        var fault = Assert.Single(Faults($$"""{ "vehicle": {{DemoCar.Car}}, "changes": {{Changes}} }"""));

        Assert.Equal(("/changes/1/vehicle/front/suspension/points", FaultCodes.UnknownMember), (fault.Pointer, fault.Code));
    }

    [Fact]
    public void A_fault_of_the_car_is_told_once_whatever_changes_leave_it_standing() =>
        Assert.Equal(
            [("/vehicle/front/wheel/innerProfile", FaultCodes.TooFew)],
            Faults($$"""{ "vehicle": {{DemoCar.WithWheel("\"innerProfile\": []")}}, "change": { "label": "a" }, "changes": [ { "label": "a", "vehicle": { "label": "b" } } ] }""")
                .Select(fault => (fault.Pointer!, fault.Code)));

    [Fact]
    public void A_change_to_a_car_that_is_refused_is_not_made() =>
        Assert.Equal(
            "/vehicle/front/wheel/rimWidthIn",
            Assert.Single(FaultsOf("""{ "front": { "wheel": { "offsetMm": 35 } } }""", DemoCar.WithWheel("\"rimWidthIn\": 21").Replace("\"rimWidthIn\": 7.5, ", "", StringComparison.Ordinal))).Pointer);

    [Fact]
    public void The_faults_found_leave_the_fast_path_its_say() =>
        Assert.All(OneFault.Select(row => (string)row[1]), change => Assert.True(Reader.TryRead(Encoding.UTF8.GetBytes($$"""{ "vehicle": {}, "change": {{change}} }"""), out _)));
}
