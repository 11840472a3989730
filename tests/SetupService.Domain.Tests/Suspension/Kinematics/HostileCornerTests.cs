using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

/// <summary>
/// Any points that do not contradict each other, any travel: a position whose parts hold, or the reason why there is none. No case can
/// run away: a position is looked for by at most five walks of at most 500 tries, each of at most 13 evaluations of the constraints,
/// and a gap by at most 80 steps.
/// </summary>
public sealed class HostileCornerTests
{
    private static readonly Gen<(double TravelMm, double RackMm)[]> Places = Gen.Select(Gen.Double[-500, 500], Gen.Double[-200, 200]).Array[1, 5];

    [Fact]
    public void A_position_holds_its_parts_or_is_said_to_be_unreachable() =>
        Gen.Select(HostileCorners.Any, Places).Sample((setting, places) =>
        {
            var corner = MechanismBuilder.Build(setting);
            if (!PoseContinuation.TryStart(corner, out var stated)) return;
            Check(setting, corner, stated);
            var last = stated;
            foreach (var (travelMm, rackMm) in places)
            {
                if (PoseContinuation.TryReach(corner, stated, travelMm, rackMm, ref last, out var state))
                {
                    Assert.Equal((travelMm, rackMm), (state.TravelMm, state.RackMm));
                    Assert.Equal(stated.AssemblySign, state.AssemblySign);
                    Check(setting, corner, state);
                }
                else
                {
                    // The last position on the way is one that holds, short of the place asked for.
                    Check(setting, corner, state);
                    Check(UnreachablePosition.From(corner, travelMm, rackMm, state));
                }
            }
        }, iter: 500);

    private static void Check(CornerSetting setting, CornerMechanism corner, in SuspensionPose state)
    {
        Assert.InRange(HeldParts.WorstMm(setting, state), 0, 1e-9);
        FigureTable.AssertFinite(WheelKinematics.Compute(corner, state));
    }

    private static void Check(in UnreachablePosition missed)
    {
        Assert.True(double.IsFinite(missed.Gap.GapMm));
        Assert.True(double.IsFinite(missed.Gap.ResidualMm));
        Assert.Equal(missed.Reason == UnreachableReason.DeadPoint, missed.Gap.ResidualMm < 1e-6);
        Assert.NotEmpty(ClosureWords.Reason(missed));
    }
}
