using System.Text.Json;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Sweeps of which some positions are reached: each is a row or unreachable with its reason, and both agree with the range told.</summary>
public sealed class PartlyReachableTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // The ends of the travel are told to within 0.05 mm.
    private const double End = 0.05;

    [Theory]
    [MemberData(nameof(Corners.AllKinds), MemberType = typeof(Corners))]
    public async Task Every_travel_is_a_row_or_unreachable_and_no_row_lies_beyond_the_range(string kind)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(kind, -500, 500, 25));

        var (fromMm, toMm) = (answer.Number("reachableTravelMm", "from"), answer.Number("reachableTravelMm", "to"));
        Assert.InRange(fromMm, -500, -100);
        Assert.InRange(toMm, 100, 500);
        var rows = Travels(answer, "rows");
        var missed = Travels(answer, "unreachable");
        Assert.Equal(Enumerable.Range(0, 41).Select(index => -500.0 + (25 * index)), rows.Concat(missed).Order());
        Assert.NotEmpty(missed);
        Assert.All(rows, travel => Assert.InRange(travel, fromMm - End, toMm + End));
        Assert.All(missed, travel => Assert.True(travel < fromMm || travel > toMm, $"{travel} is unreachable within {fromMm} to {toMm}"));
    }

    [Theory]
    [MemberData(nameof(Corners.AllKinds), MemberType = typeof(Corners))]
    public async Task What_is_unreachable_says_why_in_figures_of_its_own(string kind)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(kind, -500, 500, 25));

        foreach (var missed in answer.GetProperty("unreachable").EnumerateArray())
        {
            var reason = missed.GetProperty("reason").GetString()!;
            Assert.Contains($"{missed.Number("residualMm"):F1} mm", reason, StringComparison.Ordinal);
            Assert.Contains("of travel.", reason, StringComparison.Ordinal);
            Assert.True(missed.Number("residualMm") > 0.01, reason);
            Assert.Equal(0, missed.Number("rackMm"));
        }
    }

    // A position is what it is whatever was asked before it: there, back, and from the middle.
    [Theory]
    [MemberData(nameof(Corners.AllKinds), MemberType = typeof(Corners))]
    public async Task The_way_through_a_sweep_makes_no_difference(string kind)
    {
        var up = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(kind, -500, 500, 50));
        var down = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(kind, 500, -500, -50));

        Assert.Equal(Travels(up, "rows"), Travels(down, "rows").Reverse());
        Assert.Equal(Travels(up, "unreachable"), Travels(down, "unreachable").Reverse());
        foreach ((var there, var back) in up.GetProperty("rows").EnumerateArray().Zip(down.GetProperty("rows").EnumerateArray().Reverse()))
            GeometryCalls.Near(there.Number("camberDeg"), back.Number("camberDeg"), 1e-6, "camberDeg");
    }

    [Theory]
    [MemberData(nameof(Corners.AllKinds), MemberType = typeof(Corners))]
    public async Task Where_all_is_reached_no_range_is_told(string kind)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(kind));

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("reachableTravelMm").ValueKind);
        Assert.Equal((13, 0), (answer.GetProperty("rows").GetArrayLength(), answer.GetProperty("unreachable").GetArrayLength()));
    }

    // The right wheel is the mirrored corner at the opposite rack; where it does not close there, that is said.
    [Fact]
    public async Task A_right_wheel_that_does_not_close_is_not_passed_over()
    {
        var body = GeometryRequests.Sweep(GeometryRequests.Wishbone, 0, 0, 1).With("/rackMm", GeometryRequests.Range(-200, 200, 4)).With("/vehicle/wheelbaseMm", 2600);

        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, body);

        var alone = answer.GetProperty("rows").EnumerateArray().Count(row => row.GetProperty("otherSteerDeg").ValueKind == JsonValueKind.Null);
        Assert.InRange(alone, 1, 100);
        Assert.Equal(101, answer.GetProperty("rows").GetArrayLength() + answer.GetProperty("unreachable").GetArrayLength());
        var reason = answer.GetProperty("unknown").EnumerateArray().Single(gap => gap.GetProperty("id").GetString() == "otherSteerDeg").GetProperty("reason").GetString();
        Assert.Contains($"in {alone} of {answer.GetProperty("rows").GetArrayLength()} rows", reason, StringComparison.Ordinal);
    }

    private static double[] Travels(JsonElement answer, string list) => [.. answer.GetProperty(list).EnumerateArray().Select(one => one.Number("travelMm"))];
}
