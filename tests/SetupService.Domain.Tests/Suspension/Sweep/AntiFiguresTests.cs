using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Sweep;

public sealed class AntiFiguresTests
{
    private static readonly AxleInputs Front = new()
    {
        IsFront = true,
        WheelbaseMm = 2600,
        CentreOfGravityHeightMm = 500,
        BrakeShareFrontPct = 65,
        Drive = AxleDrive.Alone,
    };

    private static readonly AxleInputs Rear = Front with { IsFront = false };

    // The derived figures of the reference's working, p = 0.65, L/h = 5.2: ST1 0.03812, DW1 −0.00203 of slope at the contact.
    [Theory]
    [InlineData("ST1", 12.9)]
    [InlineData("DW1", -0.7)]
    public void The_derived_anti_dive_is_reproduced(string id, double expectedPct)
    {
        var corner = MechanismBuilder.Build(KinematicsCases.Setting(id));
        var figures = WheelKinematics.Compute(corner, Walked.To(corner, 0, 0));

        Assert.Equal(expectedPct, AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Front).AntiDivePct!.Value, 0.05);
    }

    // The handbook's picture: the force at the contact (at the wheel centre, for drive) against the line to the side-view instant
    // centre, its tangent set against height of the centre of gravity over wheelbase.
    [Fact]
    public void Each_percentage_is_the_tangent_of_its_line_over_that_of_full_support() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var state = Walked.To(corner, place.TravelMm, place.RackMm);
            var figures = WheelKinematics.Compute(corner, state);
            if (figures.SideInstantCentreXMm is not { } alongMm || figures.SideInstantCentreZMm is not { } heightMm || Math.Abs(alongMm) > 1e7) return;
            var wheel = WheelKinematics.Wheel(corner, state);
            var contact = wheel.Contact(setting.LoadedRadiusMm);
            var braking = (heightMm - contact.Z) / (contact.X - alongMm);
            var full = 500.0 / 2600;

            var (front, rear) = (AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Front), AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Rear));
            Assert.Equal(65 * braking / full, front.AntiDivePct!.Value, 1e-6);
            Assert.Equal(-35 * braking / full, rear.AntiLiftPct!.Value, 1e-6);
            Assert.Equal(100 * state.PerTravel.Velocity.X / full, front.AntiLiftPct!.Value, 1e-6);
            Assert.Equal(-100 * state.PerTravel.Velocity.X / full, rear.AntiSquatPct!.Value, 1e-6);
            Assert.Null(front.AntiSquatPct);
            Assert.Null(rear.AntiDivePct);
        });

    // Braking and driving load both wheels alike; a twist beam's opposite motion is a roll of the body.
    [Fact]
    public void A_twist_beam_moving_oppositely_has_no_anti_figures()
    {
        var corner = MechanismBuilder.Build(KinematicsCases.Setting("DW1"));
        var figures = WheelKinematics.Compute(corner, Walked.To(corner, 10, 0));

        Assert.Equal(default, AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Front with { MovesOppositely = true }));
        Assert.Equal(default, AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Rear with { MovesOppositely = true }));
        Assert.NotNull(AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Rear).AntiLiftPct);
    }

    [Fact]
    public void What_is_not_known_of_the_car_leaves_its_figures_out()
    {
        var corner = MechanismBuilder.Build(KinematicsCases.Setting("DW1"));
        var figures = WheelKinematics.Compute(corner, Walked.To(corner, 10, 0));

        Assert.Equal(default, AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Front with { IsFront = null }));
        Assert.Equal(default, AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Front with { WheelbaseMm = null }));
        Assert.Equal(default, AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Front with { CentreOfGravityHeightMm = null }));
        Assert.Null(AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Front with { BrakeShareFrontPct = null }).AntiDivePct);
        Assert.Null(AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Front with { Drive = AxleDrive.Shared }).AntiLiftPct);
        Assert.Null(AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Front with { Drive = AxleDrive.None }).AntiLiftPct);
        Assert.Null(AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Rear with { Drive = null }).AntiSquatPct);
        Assert.NotNull(AntiFigures.Compute(figures.ContactForwardSlope, figures.CentreForwardSlope, Front with { Drive = null }).AntiDivePct);
    }
}
