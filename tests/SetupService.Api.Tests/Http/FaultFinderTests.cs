using System.Text;
using SetupService.Api.Host;
using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tests.Vehicles;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;

namespace SetupService.Api.Tests.Http;

/// <summary>The second reader: each kind of fault, where it is and in which order. Pointers are RFC 6901's.</summary>
public class FaultFinderTests
{
    private const string Wheel = "/front/wheel/";

    private static readonly ContractReader<VehicleDocument> Reader = ServiceContract.Instance.ReaderOf<VehicleDocument>();

    public static TheoryData<string, string, string> OneFault => new()
    {
        { "", "", FaultCodes.Required },
        { " \r\n\t", "", FaultCodes.Required },
        { "null", "", FaultCodes.Required },
        { "[]", "", FaultCodes.WrongType },
        { "17", "", FaultCodes.WrongType },
        { "\"car\"", "", FaultCodes.WrongType },
        { """{ "colour": 1 }""", "/colour", FaultCodes.UnknownMember },
        { """{ "Label": "wrong case" }""", "/Label", FaultCodes.UnknownMember },
        { """{ "a/b~c": { "label": 1 } }""", "/a~1b~0c", FaultCodes.UnknownMember },
        { """{ "label": "a", "label": "b" }""", "/label", FaultCodes.DuplicateMember },
        { """{ "label": 17 }""", "/label", FaultCodes.WrongType },
        { """{ "front": [] }""", "/front", FaultCodes.WrongType },
        { """{ "wheelbaseMm": "2570" }""", "/wheelbaseMm", FaultCodes.WrongType },
        { """{ "wheelbaseMm": "NaN" }""", "/wheelbaseMm", FaultCodes.WrongType },
        { """{ "wheelbaseMm": true }""", "/wheelbaseMm", FaultCodes.WrongType },
        { """{ "wheelbaseMm": { "mm": 2570 } }""", "/wheelbaseMm", FaultCodes.WrongType },
        { """{ "wheelbaseMm": 1e999 }""", "/wheelbaseMm", FaultCodes.NotFinite },
        { """{ "wheelbaseMm": -1e999 }""", "/wheelbaseMm", FaultCodes.NotFinite },
        { """{ "wheelbaseMm": 1499.999 }""", "/wheelbaseMm", FaultCodes.OutOfRange },
        { """{ "wheelbaseMm": 4500.001 }""", "/wheelbaseMm", FaultCodes.OutOfRange },
        { """{ "front": { "minimumLoadIndex": 87.5 } }""", "/front/minimumLoadIndex", FaultCodes.WrongType },
        { """{ "front": { "minimumLoadIndex": 201 } }""", "/front/minimumLoadIndex", FaultCodes.OutOfRange },
        { """{ "front": { "minimumLoadIndex": 1e300 } }""", "/front/minimumLoadIndex", FaultCodes.OutOfRange },
        { """{ "drivenAxle": "Rear" }""", "/drivenAxle", FaultCodes.UnknownWord },
        { """{ "drivenAxle": "front, rear" }""", "/drivenAxle", FaultCodes.UnknownWord },
        { """{ "drivenAxle": 1 }""", "/drivenAxle", FaultCodes.WrongType },
        { """{ "label": "\ud800" }""", "", FaultCodes.Syntax },
        { """{ "\udc00\ud800": 1 }""", "", FaultCodes.Syntax },
        { """{ "front": { "tyre": {} } }""", "/front/tyre/marking", FaultCodes.Required },
        { """{ "front": { "tyre": { "marking": null } } }""", "/front/tyre/marking", FaultCodes.Required },
        { """{ "front": { "tyre": { "marking": "45Q17" } } }""", "/front/tyre/marking", FaultCodes.Unreadable },
        { DemoCar.WithWheel("\"innerProfile\": []"), Wheel + "innerProfile", FaultCodes.TooFew },
        { DemoCar.WithWheel("\"innerProfile\": [null]"), Wheel + "innerProfile/0", FaultCodes.Required },
        { DemoCar.WithWheel("\"innerProfile\": {}"), Wheel + "innerProfile", FaultCodes.WrongType },
        { DemoCar.WithWheel("\"innerProfile\": [{\"fromMountingFaceMm\":1,\"radiusMm\":50},{\"fromMountingFaceMm\":2}]"), Wheel + "innerProfile/1/radiusMm", FaultCodes.Required },
        { DemoCar.WithWheel("\"fastenerSeat\": \"cone59\""), Wheel + "fastenerSeat", FaultCodes.UnknownWord },
        { DemoCar.WithWheel("\"boltCircle\": \"five by five\""), Wheel + "boltCircle", FaultCodes.Unreadable },
        { DemoCar.WithSuspension("{}"), "/front/suspension/kind", FaultCodes.Required },
        { DemoCar.WithSuspension("{ \"kind\": null }"), "/front/suspension/kind", FaultCodes.Required },
        { DemoCar.WithSuspension("{ \"kind\": 3 }"), "/front/suspension/kind", FaultCodes.WrongType },
        { DemoCar.WithSuspension("{ \"points\": {}, \"kind\": \"liveAxle\" }"), "/front/suspension/kind", FaultCodes.UnknownWord },
        { DemoCar.WithSuspension("{ \"kind\": \"twistBeam\" }"), "/front/suspension/points", FaultCodes.Required },
        { DemoCar.WithSuspension("{ \"kind\": \"measured\", \"readings\": [{\"travelMm\":0,\"camberDeg\":0}] }"), "/front/suspension/readings", FaultCodes.TooFew },
        { DemoCar.WithSuspension(DemoCar.Strut[..^2] + ", \"kind\": \"macPhersonStrut\" }"), "/front/suspension/kind", FaultCodes.DuplicateMember },
    };

    [Theory]
    [MemberData(nameof(OneFault))]
    public void A_body_with_one_fault_has_that_one(string body, string place, string code)
    {
        var fault = Assert.Single(Refused(body));

        Assert.Equal((place, code), (fault.Pointer, fault.Code));
    }

    [Theory]
    [InlineData("""{ "wheelbaseMm": 1500, "frontAxleLoadKg": 50 }""")]
    [InlineData("""{ "wheelbaseMm": 4500, "frontAxleLoadKg": 5000 }""")]
    [InlineData("""{ "wheelbaseMm": 2.57e3, "front": { "minimumLoadIndex": 87.0 } }""")]
    [InlineData("\uFEFF{}")]
    [InlineData("""{ "l\u0061bel": "t\u0061rn", "drivenAxle": "r\u0065ar" }""")]
    public void Limits_include_their_ends_and_spelling_does_not_matter(string body) =>
        Assert.True(Reader.Read(Encoding.UTF8.GetBytes(body), out _, out _));

    [Fact]
    public void An_escaped_kind_is_the_kind_it_spells()
    {
        var escaped = DemoCar.Strut.Replace("\"kind\": \"macPhersonStrut\"", "\"k\\u0069nd\": \"m\\u0061cPhersonStrut\"", StringComparison.Ordinal);

        Assert.True(Reader.Read(Encoding.UTF8.GetBytes(DemoCar.WithSuspension(escaped)), out var car, out _));
        Assert.IsType<MacPhersonStrutDocument>(car.Front!.Suspension);
    }

    [Fact]
    public void Every_fault_comes_in_the_order_of_the_text_and_what_only_the_mapping_tells_after_it()
    {
        const string Body =
            """
            { "front": { "wheel": { "rimWidthIn": 21, "colour": "red" }, "tyre": { "marking": "45Q17", "pressureKpa": "230" } },
              "drivenAxle": "left", "wheelbaseMm": 1e400, "front": {} }
            """;

        Assert.Equal(
            [
                ("/front/wheel/rimWidthIn", FaultCodes.OutOfRange),
                ("/front/wheel/colour", FaultCodes.UnknownMember),
                ("/front/tyre/pressureKpa", FaultCodes.WrongType),
                ("/drivenAxle", FaultCodes.UnknownWord),
                ("/wheelbaseMm", FaultCodes.NotFinite),
                ("/front", FaultCodes.DuplicateMember),
                ("/front/wheel/rimDiameterIn", FaultCodes.Required),
                ("/front/wheel/offsetMm", FaultCodes.Required),
                ("/front/tyre/marking", FaultCodes.Unreadable),
            ],
            Refused(Body).Select(fault => (fault.Pointer!, fault.Code)));
    }

    [Fact]
    public void A_number_out_of_range_names_value_limits_and_unit()
    {
        var fault = Assert.Single(Refused(DemoCar.WithWheel("\"spacerMm\": 81")));

        Assert.Equal("spacerMm is 81; it must be from 0 to 80 mm.", fault.Message);
        Assert.Equal(new FaultLimits { Minimum = 0, Maximum = 80, Unit = "mm" }, fault.Limits);
    }

    [Fact]
    public void The_unit_of_a_number_may_stand_on_the_group_above_it() =>
        Assert.Equal("kg", Assert.Single(Refused("""{ "cornerWeightsKg": { "rearLeft": 9 } }""")).Limits!.Unit);

    [Theory]
    [InlineData("""{ "wheelBaseMm": 2570 }""", "wheelbaseMm may be meant")]
    [InlineData("""{ "drivenAxle": "rera" }""", "rear may be meant")]
    [InlineData("""{ "drivenAxle": "left" }""", "one of: front, rear, both")]
    public void A_slip_of_the_pen_is_told_what_may_be_meant(string body, string expected) =>
        Assert.Contains(expected, Assert.Single(Refused(body)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("{", 1, 2)]
    [InlineData("{\n  \"label\": \"é\" x }", 2, 16)]
    [InlineData("{ \"label\": 'a' }", 1, 12)]
    [InlineData("{ \"label\": 1, }", 1, 15)]
    [InlineData("{ // note\n}", 1, 3)]
    [InlineData("{} {}", 1, 4)]
    [InlineData("{\"wheelbaseMm\": NaN}", 1, 17)]
    public void A_body_that_is_not_json_has_one_fault_with_line_and_character(string body, int line, int column)
    {
        var fault = Assert.Single(Refused(body));

        Assert.Equal(("", FaultCodes.Syntax, line, column), (fault.Pointer, fault.Code, fault.Line, fault.Column));
    }

    [Fact]
    public void Bytes_that_are_not_utf8_are_a_syntax_fault_where_they_stand()
    {
        var fault = Assert.Single(Reader.Faults([.. "{ \"label\": \"é"u8, 0xFF, .. "\" }"u8]));

        Assert.Equal((FaultCodes.Syntax, 1, 14), (fault.Code, fault.Line, fault.Column));
    }

    [Theory]
    [InlineData(ServiceLimits.JsonDepth, FaultCodes.UnknownMember)]
    [InlineData(ServiceLimits.JsonDepth + 1, FaultCodes.TooDeep)]
    [InlineData(100_000, FaultCodes.TooDeep)]
    public void Nesting_is_read_up_to_its_limit(int depth, string code)
    {
        var body = "{\"x\":" + new string('[', depth - 1) + new string(']', depth - 1) + "}";

        Assert.Equal(code, Assert.Single(Refused(body)).Code);
    }

    [Fact]
    public void A_text_may_be_as_long_as_stated_and_no_longer()
    {
        Assert.True(Reader.Read(Label(200), out _, out _));

        var fault = Assert.Single(Reader.Faults(Label(201)));
        Assert.Equal(FaultCodes.TooLong, fault.Code);
        Assert.Equal(200, fault.Limits!.Maximum);

        static byte[] Label(int length) => Encoding.UTF8.GetBytes($$"""{ "label": "{{new string('a', length)}}" }""");
    }

    [Fact]
    public void A_list_may_be_as_long_as_stated_and_no_longer()
    {
        Assert.True(Reader.Read(Encoding.UTF8.GetBytes(Profile(100)), out _, out _));

        Assert.Equal(FaultCodes.TooMany, Assert.Single(Refused(Profile(101))).Code);

        static string Profile(int points) =>
            DemoCar.WithWheel($"\"innerProfile\": [{string.Join(',', Enumerable.Repeat("{\"fromMountingFaceMm\":1,\"radiusMm\":50}", points))}]");
    }

    [Theory]
    [InlineData(100, 100, null)]
    [InlineData(101, 101, "1 further fault is not listed.")]
    [InlineData(250, 101, "150 further faults are not listed.")]
    public void A_hundred_faults_are_listed_and_the_rest_counted(int faults, int listed, string? last)
    {
        var body = "{" + string.Join(',', Enumerable.Range(0, faults).Select(number => $"\"x{number}\":0")) + "}";

        var found = Refused(body);

        Assert.Equal(listed, found.Count);
        if (last is not null)
            Assert.Equal((FaultCodes.MoreFaults, last), (found[^1].Code, found[^1].Message));
    }

    [Fact]
    public void A_misspelt_kind_is_told_as_unknown_and_kind_as_missing_beside_it()
    {
        var found = Refused(DemoCar.WithSuspension(DemoCar.Strut.Replace("\"kind\"", "\"knd\"", StringComparison.Ordinal)));

        Assert.Equal(
            [("/front/suspension/knd", FaultCodes.UnknownMember), ("/front/suspension/kind", FaultCodes.Required)],
            found.Select(fault => (fault.Pointer, fault.Code)));
        Assert.Contains("kind may be meant", found[0].Message, StringComparison.Ordinal);
    }

    private static IReadOnlyList<Fault> Refused(string body)
    {
        var faults = Reader.Faults(Encoding.UTF8.GetBytes(body));

        // Texts the domain reads are the rules' business; everything else the fast path has to refuse as well.
        var isOnlyUnreadable = faults.All(fault => fault.Code == FaultCodes.Unreadable);
        Assert.Equal(isOnlyUnreadable, Reader.TryRead(Encoding.UTF8.GetBytes(body), out _));
        Assert.All(faults, fault => Assert.Contains(fault.Code, FaultCodes.All));
        return faults;
    }
}
