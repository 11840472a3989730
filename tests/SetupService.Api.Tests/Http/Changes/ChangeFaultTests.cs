using System.Text;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tests.Vehicles;
using static SetupService.Api.Tests.Http.Changes.ChangeReading;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>What is wrong with a change by itself: the faults of a car, but for what would be missing.</summary>
public sealed class ChangeFaultTests
{
    public static TheoryData<string, string, string> OneFault => new()
    {
        { "[]", "", FaultCodes.WrongType },
        { "\"bar\"", "", FaultCodes.WrongType },
        { """{ "colour": 1 }""", "/colour", FaultCodes.UnknownMember },
        { """{ "front": { "wheel": { "rimWidthIn": 21 } } }""", "/front/wheel/rimWidthIn", FaultCodes.OutOfRange },
        { """{ "front": { "wheel": { "offset": 35 } } }""", "/front/wheel/offset", FaultCodes.UnknownMember },
        { """{ "front": { "wheel": { "offsetMm": 35, "offsetMm": 36 } } }""", "/front/wheel/offsetMm", FaultCodes.DuplicateMember },
        { """{ "front": { "tyre": { "pressureKpa": "250" } } }""", "/front/tyre/pressureKpa", FaultCodes.WrongType },
        { """{ "front": { "tyre": [] } }""", "/front/tyre", FaultCodes.WrongType },
        { """{ "wheelbaseMm": 1e999 }""", "/wheelbaseMm", FaultCodes.NotFinite },
        { """{ "drivenAxle": "left" }""", "/drivenAxle", FaultCodes.UnknownWord },
        { """{ "front": { "minimumLoadIndex": 87.5 } }""", "/front/minimumLoadIndex", FaultCodes.WrongType },
        { """{ "front": { "wheel": { "innerProfile": [] } } }""", "/front/wheel/innerProfile", FaultCodes.TooFew },
        { """{ "front": { "wheel": { "innerProfile": [ { "radiusMm": 150 } ] } } }""", "/front/wheel/innerProfile/0/fromMountingFaceMm", FaultCodes.Required },
        { """{ "front": { "suspension": { "kind": "liveAxle" } } }""", "/front/suspension/kind", FaultCodes.UnknownWord },
        { """{ "front": { "suspension": { "points": { "strutTop": { "yMm": 6000 } } } } }""", "/front/suspension/points/strutTop/yMm", FaultCodes.OutOfRange },
        { """{ "front": { "suspension": { "points": { "strutTip": {} } } } }""", "/front/suspension/points/strutTip", FaultCodes.UnknownMember },
    };

    [Theory]
    [MemberData(nameof(OneFault))]
    public void A_change_with_one_fault_has_that_one_at_its_place(string change, string place, string code)
    {
        var fault = Assert.Single(FaultsOf(change));
        var amongOthers = Assert.Single(Faults(
            $$"""{ "vehicle": {{DemoCar.Car}}, "changes": [ { "label": "a", "vehicle": {} }, { "label": "b", "vehicle": {{change}} } ] }"""));

        Assert.Equal(("/change" + place, code), (fault.Pointer, fault.Code));
        Assert.Equal(("/changes/1/vehicle" + place, code), (amongOthers.Pointer, amongOthers.Code));
        Assert.False(Reader.TryRead(Encoding.UTF8.GetBytes($$"""{ "vehicle": {}, "change": {{change}} }"""), out _));
    }

    [Theory]
    [InlineData("""{ "front": { "wheel": { "ofsetMm": 35 } } }""", "offsetMm may be meant")]
    [InlineData("""{ "front": { "suspension": { "points": { "struttop": {} } } } }""", "strutTop may be meant")]
    [InlineData("""{ "drivenAxle": "rera" }""", "rear may be meant")]
    public void A_slip_of_the_pen_is_told_what_may_be_meant(string change, string hint) =>
        Assert.Contains(hint, Assert.Single(FaultsOf(change)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_number_out_of_range_has_the_car_s_limits()
    {
        var fault = Assert.Single(FaultsOf("""{ "cornerWeightsKg": { "rearLeft": 9 } }"""));

        Assert.Equal(new FaultLimits { Minimum = 10, Maximum = 3000, Unit = "kg" }, fault.Limits);
    }

    [Fact]
    public void Every_fault_of_a_body_with_changes_comes_in_the_order_of_the_text()
    {
        const string Body =
            """
            { "vehicle": { "wheelbaseMm": 1 }, "changes": [ { "label": "a", "vehicle": { "front": { "trackMm": 1 } } },
              { "vehicle": { "colour": 1, "rear": { "wheel": { "rimWidthIn": true } } } } ], "change": 1 }
            """;

        Assert.Equal(
            [
                ("/vehicle/wheelbaseMm", FaultCodes.OutOfRange),
                ("/changes/0/vehicle/front/trackMm", FaultCodes.OutOfRange),
                ("/changes/1/vehicle/colour", FaultCodes.UnknownMember),
                ("/changes/1/vehicle/rear/wheel/rimWidthIn", FaultCodes.WrongType),
                ("/changes/1/label", FaultCodes.Required),
                ("/change", FaultCodes.WrongType),
            ],
            Faults(Body).Select(fault => (fault.Pointer!, fault.Code)));
    }

    [Theory]
    [InlineData("null", FaultCodes.Required)]
    [InlineData("[null]", FaultCodes.Required)]
    [InlineData("[]", FaultCodes.TooFew)]
    public void A_change_that_must_be_there_and_is_not_is_a_fault(string changes, string code)
    {
        var body = $$"""{ "vehicle": {}, "changes": [ { "label": "a", "vehicle": {{(changes == "null" ? "null" : "{}")}} }{{(changes == "[null]" ? ", null" : "")}} ] }""";
        if (changes == "[]")
            body = """{ "vehicle": {}, "changes": [] }""";

        Assert.Equal(code, Assert.Single(Faults(body)).Code);
        Assert.False(Reader.TryRead(Encoding.UTF8.GetBytes(body), out _));
    }

    [Theory]
    [InlineData("""{ "label": "\ud800" }""")]
    [InlineData("""{ "\udc00": 1 }""")]
    [InlineData("""{ "label": "a" """)]
    public void A_change_that_is_no_json_text_is_refused_where_it_stops(string change) =>
        Assert.Equal(FaultCodes.Syntax, Assert.Single(FaultsOf(change)).Code);

    [Fact]
    public void A_text_and_an_array_may_be_as_long_as_in_the_car_and_no_longer()
    {
        Assert.Empty(FaultsOf(Label(200)));
        Assert.Equal(FaultCodes.TooLong, Assert.Single(FaultsOf(Label(201))).Code);
        Assert.Empty(FaultsOf(Profile(100)));
        Assert.Equal(FaultCodes.TooMany, Assert.Single(FaultsOf(Profile(101))).Code);

        static string Label(int length) => $$"""{ "label": "{{new string('a', length)}}" }""";
        static string Profile(int points) =>
            $$"""{ "rear": { "wheel": { "innerProfile": [{{string.Join(',', Enumerable.Repeat("{\"fromMountingFaceMm\":1,\"radiusMm\":50}", points))}}] } } }""";
    }
}
