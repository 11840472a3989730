using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Ranges of a sweep: a step that leads to the end, at most 5,000 rows, a rack only where there is one.</summary>
public sealed class SweepRangeTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData(-60, 60, 0, "step is 0 mm; it must be above 0 to lead from -60 to 60 mm.")]
    [InlineData(60, -60, 0, "step is 0 mm; it must be below 0 to lead from 60 to -60 mm.")]
    [InlineData(5, 5, 0, "step is 0 mm; it must be other than 0 to lead from 5 to 5 mm.")]
    [InlineData(-60, 60, -2.5, "step is -2.5 mm; it must be above 0 to lead from -60 to 60 mm.")]
    [InlineData(60, -60, 1, "step is 1 mm; it must be below 0 to lead from 60 to -60 mm.")]
    public async Task A_step_that_leads_nowhere_or_away_is_refused(double from, double to, double step, string message)
    {
        var travel = (await fixture.Client.RefusalOf(GeometryCalls.Sweep, GeometryRequests.Sweep(fromMm: from, toMm: to, stepMm: step).ToJsonString())).OnlyFault();
        var rack = (await fixture.Client.RefusalOf(GeometryCalls.Sweep, WithRack(from, to, step).ToJsonString())).OnlyFault();

        Assert.Equal(("/travelMm/step", "inconsistent", message), Told(travel));
        Assert.Equal(("/rackMm/step", "inconsistent", message), Told(rack));
    }

    [Theory]
    [InlineData(5, 5, 1)]
    [InlineData(5, 5, -1)]
    [InlineData(5, 5, 500)]
    [InlineData(5, 9, 500)]
    [InlineData(5, -9, -500)]
    public async Task One_row_is_a_sweep_too(double from, double to, double step)
    {
        var row = Assert.Single((await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(fromMm: from, toMm: to, stepMm: step))).GetProperty("rows").EnumerateArray());

        Assert.Equal(5, row.Number("travelMm"));
    }

    [Fact]
    public async Task Five_thousand_rows_are_computed_and_one_more_is_refused()
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(fromMm: -50, toMm: 49.98, stepMm: 0.02));
        var fault = (await fixture.Client.RefusalOf(GeometryCalls.Sweep, GeometryRequests.Sweep(fromMm: -50, toMm: 50, stepMm: 0.02).ToJsonString())).OnlyFault();

        Assert.Equal(5000, answer.GetProperty("rows").GetArrayLength());
        Assert.Equal(("/travelMm/step", "tooMany", "this step gives 5001 rows; at most 5000 are computed."), Told(fault));
        Assert.Equal("""{"minimum":1,"maximum":5000,"unit":"count"}""", fault.GetProperty("limits").GetRawText());
    }

    [Fact]
    public async Task Travel_and_rack_share_the_five_thousand()
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(fromMm: -49, toMm: 49, stepMm: 2).With("/rackMm", GeometryRequests.Range(-9.9, 9.9, 0.2)));
        var fine = (await fixture.Client.RefusalOf(GeometryCalls.Sweep, WithRack(-16.66, 16.66, 0.02).With("/travelMm", GeometryRequests.Range(-10, 10, 10)).ToJsonString())).OnlyFault();
        var tall = (await fixture.Client.RefusalOf(GeometryCalls.Sweep, WithRack(-10, 10, 10).With("/travelMm", GeometryRequests.Range(-16.66, 16.66, 0.02)).ToJsonString())).OnlyFault();

        Assert.Equal(5000, answer.GetProperty("rows").GetArrayLength());
        Assert.Equal(("/rackMm/step", "tooMany", "3 positions of travel with 1667 of the rack at each give 5001 rows; at most 5000 are computed."), Told(fine));
        Assert.Equal(("/travelMm/step", "tooMany", "1667 positions of travel with 3 of the rack at each give 5001 rows; at most 5000 are computed."), Told(tall));
    }

    [Theory]
    [InlineData(1e-9)]
    [InlineData(5e-324)]
    public async Task A_step_however_small_is_counted_and_not_walked(double step)
    {
        var body = WithRack(-200, 200, step).With("/travelMm", GeometryRequests.Range(-500, 500, step));

        var fault = (await fixture.Client.RefusalOf(GeometryCalls.Sweep, body.ToJsonString())).OnlyFault();

        Assert.Equal(("/travelMm/step", "tooMany", "more than 1000000 positions of travel with more than 1000000 of the rack at each give more than 1000000 rows; at most 5000 are computed."), Told(fault));
    }

    [Theory]
    [InlineData(GeometryRequests.Arm)]
    [InlineData(GeometryRequests.Beam)]
    public async Task An_arm_has_no_rack(string kind)
    {
        var body = GeometryRequests.Sweep(kind).With("/rackMm", GeometryRequests.Range(-10, 10, 10));

        Assert.Equal(["/rackMm inconsistent"], (await fixture.Client.RefusalOf(GeometryCalls.Sweep, body.ToJsonString())).FaultsOf());
    }

    [Fact]
    public async Task A_rack_that_is_not_moved_stands_in_the_middle()
    {
        var plain = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep());
        var still = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep().With("/rackMm", GeometryRequests.Range(0, 0, 1)));

        Assert.True(JsonElement.DeepEquals(plain, still));
    }

    private static JsonObject WithRack(double from, double to, double step) => GeometryRequests.Sweep().With("/rackMm", GeometryRequests.Range(from, to, step));

    private static (string Pointer, string Code, string Message) Told(JsonElement fault) =>
        (fault.GetProperty("pointer").GetString()!, fault.GetProperty("code").GetString()!, fault.Message());
}
