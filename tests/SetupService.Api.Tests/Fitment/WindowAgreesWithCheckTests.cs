using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>An offset inside the window fails no check of room, one outside fails one: told by the two calls, to 0.01 mm.</summary>
public sealed class WindowAgreesWithCheckTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const double StepMm = 0.01;

    [Theory]
    [InlineData("225/45R17 94W XL", 7.5, "front", 14, 18)]
    [InlineData("225/45R17 94W XL", 8, "front", 14, 18)]
    [InlineData("235/45R17 94W", 8.5, "rear", 14, 18)]
    [InlineData("215/45R17 91W", 7, "front", 30, 10)]
    [InlineData("225/45R17 94W XL", 9, "rear", 20, 40)]
    public async Task The_ends_of_the_window_are_where_the_check_turns(string marking, double widthIn, string axle, double inboardMm, double outboardMm)
    {
        var window = Requests.Window().With("/axle", axle).With("/tyre/marking", marking).With("/rimWidthsIn", new JsonArray(widthIn));
        var check = Requests.Check().With("/axle", axle).With("/candidate/tyre/marking", marking).With("/candidate/wheel/rimWidthIn", widthIn).Without("/camberChange");
        foreach (var body in new[] { window, check })
        {
            body.With($"/vehicle/{axle}/clearance/inboardMm", inboardMm).With($"/vehicle/{axle}/clearance/outboardMm", outboardMm)
                .With($"/vehicle/{axle}/clearance/radialMm", 30).With($"/vehicle/{axle}/clearance/springSeatMm", 30);
        }

        var answer = (await fixture.Client.AnswerOf(Calls.Window, window)).GetProperty("windows")[0];
        Assert.Equal("pass", answer.GetProperty("status").GetString());
        var least = answer.GetProperty("offsetMm").GetProperty("from").GetDouble();
        var greatest = answer.GetProperty("offsetMm").GetProperty("to").GetDouble();

        Assert.Empty(await FailsAt(check, least + StepMm));
        Assert.Empty(await FailsAt(check, greatest - StepMm));
        Assert.Contains(answer.GetProperty("limitedBy").GetProperty("from").GetString(), await FailsAt(check, least - StepMm));
        Assert.Contains(answer.GetProperty("limitedBy").GetProperty("to").GetString(), await FailsAt(check, greatest + StepMm));
    }

    [Fact]
    public async Task A_place_no_offset_changes_blocks_and_the_check_fails_there_too()
    {
        var answer = (await fixture.Client.AnswerOf(Calls.Window, Requests.Window().With("/tyre/marking", "225/65R17 102H"))).GetProperty("windows")[0];
        var check = Requests.Check().With("/candidate/tyre/marking", "225/65R17 102H");

        Assert.Equal("fail", answer.GetProperty("status").GetString());
        Assert.Equal("radialClearance", answer.GetProperty("blockedBy").GetString());
        Assert.Contains("radialClearance", await FailsAt(check, 40));
    }

    [Fact]
    public async Task An_end_nobody_measured_is_null()
    {
        var half = Requests.Window().Without("/vehicle/front/clearance/outboardMm");
        var none = Requests.Window().Without("/vehicle/front/clearance");

        var oneEnd = (await fixture.Client.AnswerOf(Calls.Window, half)).GetProperty("windows")[0];
        var noEnd = (await fixture.Client.AnswerOf(Calls.Window, none)).GetProperty("windows")[0];

        Assert.Equal(JsonValueKind.Null, oneEnd.GetProperty("offsetMm").GetProperty("from").ValueKind);
        Assert.Equal(JsonValueKind.Null, oneEnd.GetProperty("limitedBy").GetProperty("from").ValueKind);
        Assert.Equal(JsonValueKind.Number, oneEnd.GetProperty("offsetMm").GetProperty("to").ValueKind);
        Assert.Equal("unknown", noEnd.GetProperty("status").GetString());
    }

    private async Task<string[]> FailsAt(JsonObject check, double offsetMm)
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, check.With("/candidate/wheel/offsetMm", offsetMm));
        return
        [
            .. answer.GetProperty("checks").EnumerateArray()
                .Where(one => one.GetProperty("id").GetString()!.EndsWith("Clearance", StringComparison.Ordinal) && one.GetProperty("id").GetString() != "brakeClearance")
                .Where(one => one.GetProperty("status").GetString() == "fail")
                .Select(one => one.GetProperty("id").GetString()!),
        ];
    }
}
