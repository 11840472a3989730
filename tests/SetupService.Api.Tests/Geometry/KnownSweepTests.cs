using System.Text.Json;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>
/// A sweep over travel of the two reference corners. Expected: rows of travel_sweep in
/// Domain.Tests/TestData/kinematics_cases.json, written to 1e-7; its roll centre and swing arm come from differences of positions.
/// </summary>
public sealed class KnownSweepTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const double AsWritten = 2e-7;

    /// <summary>Kind, travel; camber, toe, caster, inclination, scrub, trail; spring's length and motion ratio; roll centre, swing arm; the contact's x and y.</summary>
    public static TheoryData<string, double, double[]> Rows() => new()
    {
        { GeometryRequests.Strut, -60, [0.5163208, 0.2520621, 3.069586, 11.4777246, -5.5884057, 13.2590486, 502.1086919, 0.9220096, 223.7166869, 2188.3675677, -0.0210411, 742.2101788] },
        { GeometryRequests.Strut, 0, [-0.75, 0, 3.4422153, 13.1204032, -6.7910566, 15.5247441, 445.785823, 0.9571061, 69.4225702, 3645.2927793, 0, 753.9923266] },
        { GeometryRequests.Strut, 30, [-1.1318121, -0.0274656, 3.6447016, 13.7154605, -7.4895047, 16.6576037, 416.757545, 0.9785704, -10.4172949, 5989.237453, -0.0624347, 755.1762754] },
        { GeometryRequests.Strut, 60, [-1.3135917, -0.0105431, 3.8602152, 14.133114, -8.2676269, 17.820469, 387.0427702, 1.0029222, -94.1476041, 24586.1131436, -0.1933949, 753.1106814] },
        { GeometryRequests.Wishbone, -60, [0.9068375, 0.171933, 4.8616095, 3.3437871, 32.6414169, 24.3466189, 410.6509703, 0.6124603, 187.4142699, 3911.4553805, 2.7363928, 751.7485491] },
        { GeometryRequests.Wishbone, 0, [-0.5, 0.05, 5.3321589, 4.7636417, 32.6828118, 26.8250689, 373.7980738, 0.6171654, 91.1107861, 1771.1646095, 0.0023608, 762.705225] },
        { GeometryRequests.Wishbone, 30, [-1.620464, 0.1694247, 5.5973413, 5.8740447, 32.7338208, 28.0805113, 355.2185208, 0.6216337, 47.8952917, 1355.6676547, -1.3434856, 765.4328264] },
        { GeometryRequests.Wishbone, 60, [-3.0755794, 0.4228673, 5.8862696, 7.3046092, 32.8216095, 29.2738881, 336.4926131, 0.6268471, 9.3324332, 1061.1024415, -2.5980584, 766.5527708] },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public async Task A_row_is_what_two_other_methods_found(string kind, double travelMm, double[] expected)
    {
        var row = await RowAt(kind, travelMm);

        string[] names = ["camberDeg", "toeDeg", "casterDeg", "steeringAxisInclinationDeg", "scrubRadiusMm", "mechanicalTrailMm", "springLengthMm", "springMotionRatio"];
        foreach ((var name, var value) in names.Zip(expected))
            GeometryCalls.Near(value, row.Number(name), Math.Max(AsWritten, 5e-9 * Math.Abs(value)), name);
        GeometryCalls.Near(expected[8], row.Number("rollCentreHeightMm"), 1e-5, "rollCentreHeightMm");
        GeometryCalls.Near(expected[9], row.Number("swingArmMm"), 1e-6 * expected[9], "swingArmMm");
        GeometryCalls.Near(-expected[1], row.Number("steerDeg"), AsWritten, "steerDeg");
        GeometryCalls.Near(0, row.Number("rackMm"), 0, "rackMm");
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public async Task The_contact_moves_from_where_it_stands_at_no_travel(string kind, double travelMm, double[] expected)
    {
        var stated = Rows().Select(row => ((string)row[0], (double)row[1], (double[])row[2])).Single(row => row.Item1 == kind && row.Item2 == 0).Item3;
        var row = await RowAt(kind, travelMm);

        GeometryCalls.Near(expected[11] - stated[11], row.Number("halfTrackChangeMm"), AsWritten, "halfTrackChangeMm");
        GeometryCalls.Near(expected[10] - stated[10], row.Number("contactForwardMm"), AsWritten, "contactForwardMm");
    }

    // dcamber_dz and dtoe_in_dz of the same rows; toe in mm is measured at 406.4 mm: sin(toe) x diameter, differentiated.
    [Theory]
    [InlineData(GeometryRequests.Strut, -0.015735, -0.0018158, 0)]
    [InlineData(GeometryRequests.Wishbone, -0.0324057, 0.001906, 0.05)]
    public async Task The_slopes_at_ride_height_are_theirs(string kind, double camberDegPerMm, double toeDegPerMm, double toeDeg)
    {
        var body = GeometryRequests.Sweep(kind, 0, 0, 1).With("/measuringDiameterMm", 406.4);

        var row = (await fixture.Client.AnswerOf(GeometryCalls.Sweep, body)).GetProperty("rows")[0];

        GeometryCalls.Near(camberDegPerMm, row.Number("camberGainDegPerMm"), AsWritten, "camberGainDegPerMm");
        GeometryCalls.Near(10 * toeDegPerMm, row.Number("bumpSteerDegPer10Mm"), 10 * AsWritten, "bumpSteerDegPer10Mm");
        var mmPer10Mm = 10 * toeDegPerMm * Math.PI / 180 * 406.4 * Math.Cos(toeDeg * Math.PI / 180);
        GeometryCalls.Near(mmPer10Mm, row.Number("bumpSteerMmPer10Mm"), 2e-5, "bumpSteerMmPer10Mm");
    }

    [Theory]
    [InlineData(-60, 60, 10, 13)]
    [InlineData(60, -60, -7, 18)]
    [InlineData(-1, 1, 0.1, 21)]
    public async Task The_rows_begin_at_from_and_keep_the_step(double fromMm, double toMm, double stepMm, int count)
    {
        var rows = (await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Wishbone, fromMm, toMm, stepMm))).GetProperty("rows");

        Assert.Equal(Enumerable.Range(0, count).Select(index => Math.Round(fromMm + (index * stepMm), 6)), rows.EnumerateArray().Select(row => row.Number("travelMm")));
    }

    // Lowered by 30 mm the wheel stands as after 30 mm of bump, and travel counts from there.
    [Theory]
    [MemberData(nameof(Rows))]
    public async Task A_lowered_car_counts_travel_from_where_it_stands(string kind, double travelMm, double[] expected)
    {
        var body = GeometryRequests.Sweep(kind, travelMm - 30, travelMm - 30, 1).With("/vehicle/front/rideHeightChangeMm", -30);
        var row = (await fixture.Client.AnswerOf(GeometryCalls.Sweep, body)).GetProperty("rows")[0];

        GeometryCalls.Near(travelMm - 30, row.Number("travelMm"), 1e-9, "travelMm");
        GeometryCalls.Near(expected[0], row.Number("camberDeg"), AsWritten, "camberDeg");
        GeometryCalls.Near(expected[1], row.Number("toeDeg"), AsWritten, "toeDeg");
        GeometryCalls.Near(expected[2], row.Number("casterDeg"), AsWritten, "casterDeg");
    }

    [Fact]
    public async Task An_adjustment_of_a_lowered_car_starts_where_it_stands()
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, GeometryRequests.Adjusted(GeometryRequests.Strut, """{ "adjuster": "rideHeight", "amountMm": -30 }""").With("/vehicle/front/rideHeightChangeMm", -30));

        GeometryCalls.Near(-1.1318121, answer.Number("before", "camberDeg"), AsWritten, "before");
        GeometryCalls.Near(-1.3135917, answer.Number("after", "camberDeg"), AsWritten, "after");
    }

    // Of a strut whose camber barely follows its points at the stated position, where it is stated; further on it follows them more.
    [Fact]
    public async Task Points_known_to_an_error_give_every_figure_its_range()
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Strut, 0, 60, 60).With("/vehicle/front/suspension/points/pointErrorMm", 1));
        var (stated, bumped) = (answer.GetProperty("rows")[0], answer.GetProperty("rows")[1]);

        GeometryCalls.Near(0, Width(stated, "camberDeg"), 1e-6, "camber as stated");
        Assert.InRange(Width(bumped, "camberDeg"), 0.01, 2);
        Assert.InRange(Width(stated, "casterDeg"), 0.01, 2);

        // To first order: twice the error, twice the range.
        var twice = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Strut, 0, 60, 60).With("/vehicle/front/suspension/points/pointErrorMm", 2));
        GeometryCalls.Near(2, Width(twice.GetProperty("rows")[1], "casterDeg") / Width(bumped, "casterDeg"), 0.02, "ratio");

        static double Width(JsonElement row, string figure) => row.Number("ranges", figure, "upper") - row.Number("ranges", figure, "lower");
    }

    private async Task<JsonElement> RowAt(string kind, double travelMm)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(kind));
        return answer.GetProperty("rows").EnumerateArray().Single(row => row.Number("travelMm") == travelMm);
    }
}
