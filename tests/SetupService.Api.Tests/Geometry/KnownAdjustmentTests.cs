using System.Text.Json;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>
/// What a movement, a length and a ride height do to the two reference corners. Expected: the adjustments and travel sweeps of
/// Domain.Tests/TestData/kinematics_cases.json and the rounded table of changes worked from the same programs.
/// </summary>
public sealed class KnownAdjustmentTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Strut, wheel-centre height kept, tie rod untouched; the table has four decimals.
    [Theory]
    [InlineData(10, 0, -0.8406, 0.8041, -0.0029, 0.2932)]
    [InlineData(5, 0, -0.4210, 0.4028, -0.0015, 0.1468)]
    [InlineData(-5, 0, 0.4225, -0.4042, 0.0015, -0.1472)]
    [InlineData(0, 10, 0.0085, 0.0021, 0.8584, -0.0331)]
    [InlineData(0, -10, -0.0060, -0.0014, -0.8595, 0.0266)]
    public async Task A_top_mount_moved_changes_the_angles_as_the_table_says(
        double inboardMm, double rearwardMm, double camberDeg, double inclinationDeg, double casterDeg, double toeDeg)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, GeometryRequests.Move(inboardMm, rearwardMm));

        CheckChange(answer, camberDeg, inclinationDeg, casterDeg, toeDeg, 6e-5);
        Assert.Equal((inboardMm, rearwardMm), (answer.AmountOf("strutTopInboard"), answer.AmountOf("strutTopRearward")));
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("isReached").ValueKind);
    }

    [Theory]
    [InlineData(GeometryRequests.Wishbone, "lowerJointOutboard", 5, -0.7429815, 0.9245578, -0.0031681, -1.9195534)]
    [InlineData(GeometryRequests.Wishbone, "lowerJointOutboard", -5, 0.7481534, -0.9237167, 0.0037783, 1.9038991)]
    [InlineData(GeometryRequests.Wishbone, "upperJointOutboard", 5, 0.9345069, -0.918574, 0.0052852, -0.169628)]
    [InlineData(GeometryRequests.Wishbone, "upperJointOutboard", -5, -0.9334666, 0.9178514, -0.0047715, 0.1674949)]
    [InlineData(GeometryRequests.Wishbone, "tieRodLength", 1, -0.0374462, -0.0011739, -0.0003087, 0.4157799)]
    [InlineData(GeometryRequests.Strut, "tieRodLength", 1, -0.0238279, -0.0004673, -0.0001359, 0.4085126)]
    [InlineData(GeometryRequests.Strut, "tieRodLength", -1, 0.0245192, 0.0004839, 0.0001408, -0.4088647)]
    public async Task A_length_changed_changes_the_angles_as_two_other_methods_found(
        string kind, string adjuster, double amountMm, double camberDeg, double inclinationDeg, double casterDeg, double toeDeg)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, GeometryRequests.Adjusted(kind, $$"""{ "adjuster": "{{adjuster}}", "amountMm": {{amountMm}} }"""));

        CheckChange(answer, camberDeg, inclinationDeg, casterDeg, toeDeg, 2e-7);
        GeometryCalls.Near(adjuster == "tieRodLength" ? amountMm : 0, answer.Number("tieRodChangeMm"), 1e-6, "tieRodChangeMm");
    }

    // Lowered by 30 mm is bumped by 30 mm: rows of travel_sweep; the ground comes nearer by what the contact rises.
    [Theory]
    [InlineData(GeometryRequests.Strut, -1.1318121, -0.0274656, 3.6447016, -10.4172949, 0.0261301 - 30.0595058)]
    [InlineData(GeometryRequests.Wishbone, -1.620464, 0.1694247, 5.5973413, 47.8952917, 0.0118039 - 30.1239756)]
    public async Task A_car_lowered_stands_as_in_bump(string kind, double camberDeg, double toeDeg, double casterDeg, double rollCentreMm, double rideHeightMm)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, GeometryRequests.Adjusted(kind, """{ "adjuster": "rideHeight", "amountMm": -30 }"""));

        GeometryCalls.Near(camberDeg, answer.Number("after", "camberDeg"), 2e-7, "camberDeg");
        GeometryCalls.Near(toeDeg, answer.Number("after", "toeDeg"), 2e-7, "toeDeg");
        GeometryCalls.Near(casterDeg, answer.Number("after", "casterDeg"), 2e-7, "casterDeg");
        GeometryCalls.Near(rollCentreMm, answer.Number("after", "rollCentreHeightMm"), 1e-5, "rollCentreHeightMm");
        GeometryCalls.Near(rideHeightMm, answer.Number("rideHeightChangeMm"), 2e-7, "rideHeightChangeMm");
    }

    // The movement found for an angle is the one whose known effect is that angle.
    [Theory]
    [InlineData(-0.75 - 0.8405569, 3.4422153 - 0.0028623, 10, 0)]
    [InlineData(-0.75 + 0.0085084, 3.4422153 + 0.8583919, 0, 10)]
    public async Task The_movement_for_known_angles_is_the_known_movement(double camberDeg, double casterDeg, double inboardMm, double rearwardMm)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, GeometryRequests.TopMountFor(camberDeg, casterDeg));

        Assert.True(answer.GetProperty("isReached").GetBoolean());
        GeometryCalls.Near(inboardMm, answer.AmountOf("strutTopInboard"), 1e-5, "inboard");
        GeometryCalls.Near(rearwardMm, answer.AmountOf("strutTopRearward"), 1e-5, "rearward");
    }

    private static void CheckChange(JsonElement answer, double camberDeg, double inclinationDeg, double casterDeg, double toeDeg, double within)
    {
        (string Name, double Expected)[] figures =
            [("camberDeg", camberDeg), ("steeringAxisInclinationDeg", inclinationDeg), ("casterDeg", casterDeg), ("toeDeg", toeDeg)];
        Assert.All(figures, figure => GeometryCalls.Near(figure.Expected, answer.Number("change", figure.Name), within, figure.Name));
        Assert.All(figures, figure => GeometryCalls.Near(
            answer.Number("after", figure.Name) - answer.Number("before", figure.Name), answer.Number("change", figure.Name), 1e-6, figure.Name));
    }
}
