using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

/// <summary>A corner closed in one go, from its stated position, at travels it reaches and at travels no suspension does.</summary>
public sealed class PoseSolverTests
{
    [Fact]
    public void What_is_said_to_close_holds_its_parts_and_stands_where_asked() =>
        Gen.Select(PlausibleCorners.Any, Gen.Double[-450, 450]).Sample((setting, travelMm) =>
        {
            var corner = MechanismBuilder.Build(setting);
            if (!PoseSolver.TryClose(corner, travelMm, 0, new UprightPose(corner.Stated.Centre, Rotation.None), out var state)) return;

            Assert.Equal((travelMm, 0), (state.TravelMm, state.RackMm));
            Assert.InRange(state.ResidualMm, 0, PoseSolver.ToleranceMm);
            Assert.Equal(setting.Suspension.WheelCentre.Z + travelMm, state.Pose.Centre.Z, 1e-9);
            Assert.InRange(HeldParts.WorstMm(setting, state), 0, 1e-9);
        }, iter: 3000);
}
