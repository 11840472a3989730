using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Tests.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Cars;

/// <summary>What stands in for an input nobody gave. Where no source is named, the values are common practice and this table repeats them, so that none moves unseen.</summary>
public sealed class TypicalValuesTests
{
    [Theory]
    [InlineData(CarAxle.Front, -0.5, -1.5, 0.3)]
    [InlineData(CarAxle.Rear, -1.0, -2.0, 0.0)]
    public void Camber(CarAxle axle, double value, double lower, double upper) => Same(TypicalValues.CamberDeg(axle), value, lower, upper);

    [Theory]
    [InlineData(CarAxle.Front, 0.05, -0.05, 0.15)]
    [InlineData(CarAxle.Rear, 0.1, 0.0, 0.25)]
    public void Toe(CarAxle axle, double value, double lower, double upper) => Same(TypicalValues.ToeDeg(axle), value, lower, upper);

    [Theory]
    [InlineData(SuspensionLayout.MacPhersonStrut, 0.95, 0.88, 1.0)]
    [InlineData(SuspensionLayout.DoubleWishbone, 0.65, 0.50, 0.85)]
    [InlineData(SuspensionLayout.FiveLink, 0.65, 0.50, 0.85)]
    [InlineData(SuspensionLayout.SemiTrailingArm, 0.75, 0.60, 0.95)]
    [InlineData(SuspensionLayout.TwistBeam, 0.90, 0.70, 1.1)]
    [InlineData(SuspensionLayout.Measured, 0.85, 0.55, 1.05)]
    [InlineData(null, 0.85, 0.55, 1.05)]
    public void Motion_ratio(SuspensionLayout? layout, double value, double lower, double upper) => Same(TypicalValues.MotionRatio(layout), value, lower, upper);

    // A strut carries its spring about the damper, so both have one ratio; elsewhere the damper's is some 0.85 to 1.2 of the spring's.
    [Theory]
    [InlineData(SuspensionLayout.MacPhersonStrut, 0.8, 0.78, 0.82)]
    [InlineData(SuspensionLayout.TwistBeam, 0.8, 0.68, 0.96)]
    [InlineData(null, 0.8, 0.68, 0.96)]
    public void Damper_motion_ratio(SuspensionLayout? layout, double value, double lower, double upper) =>
        Same(TypicalValues.DamperMotionRatio(layout, 0.8), value, lower, upper);

    // Tire Science and Technology 33(3), 2005, its coefficients from memory, worked by hand for 205/55R16 at 230 kPa:
    // 9.80665 · (0.00028 · 230 · √((1.03 − 0.22) · 205 · (225.5 + 406)) + 3.45) = 238.342 N/mm; at 250 kPa 256.125.
    [Theory]
    [InlineData(null, 238.3421)]
    [InlineData(230.0, 238.3421)]
    [InlineData(250.0, 256.1255)]
    public void Rate_of_a_tyre(double? pressureKpa, double expectedNPerMm)
    {
        var rate = TypicalValues.TyreRateNPerMm(DemoCar.Tyre("205/55R16 91V", pressureKpa));

        Assert.Equal(expectedNPerMm, rate.Value, 5e-4);
        Assert.Equal(0.8 * expectedNPerMm, rate.Lower, 5e-4);
        Assert.Equal(1.2 * expectedNPerMm, rate.Upper, 5e-4);
        Assert.Equal(pressureKpa is null, rate.Source.Contains("no pressure is given", StringComparison.Ordinal));
    }

    // Static stability factor = track / (2 · height): DOT HS 809 868, mean 1.41 for passenger cars. 1500 / 2.82 = 531.915 mm.
    [Fact]
    public void Height_of_the_centre_of_gravity() => Assert.Equal(531.915, TypicalValues.CentreOfGravityHeightMm(1500).Value, 5e-4);

    [Fact]
    public void Each_value_lies_in_its_range()
    {
        foreach (var axle in Enum.GetValues<CarAxle>())
        {
            foreach (var layout in Enum.GetValues<SuspensionLayout>().Select(one => (SuspensionLayout?)one).Append(null))
            {
                TypicalValue[] all =
                [
                    TypicalValues.CamberDeg(axle), TypicalValues.ToeDeg(axle), TypicalValues.CasterDeg, TypicalValues.LoadedRadiusMm, TypicalValues.StopRateNPerMm,
                    TypicalValues.StopLengthMm, TypicalValues.CamberComplianceDegPerKn, TypicalValues.ToeComplianceDegPerKn(axle), TypicalValues.TyreRateNPerMm(null),
                    TypicalValues.CentreOfGravityHeightMm(1500), TypicalValues.UnsprungMassKg(1300, layout), TypicalValues.RollCentreHeightMm(layout, axle),
                    TypicalValues.MotionRatio(layout), TypicalValues.DamperMotionRatio(layout, 0.9), TypicalValues.SteeringAxisInclinationDeg(layout),
                    TypicalValues.SwingArmMm(layout, axle), TypicalValues.BarRollRateNmPerDeg(axle, 30, 0.9, 1500),
                ];
                Assert.All(all, one => Assert.InRange(one.Value, one.Lower, one.Upper));
                Assert.All(all, one => Assert.True(one.Lower < one.Upper));
            }
        }
    }

    // Common practice: of the design section width, 214 mm for a 205/55R16.
    [Fact]
    public void Width_of_a_tread() => Same(TreadWidth.Mm(DemoCar.Tyre("205/55R16 91V")), 0.85 * 214, 0.78 * 214, 0.92 * 214);

    [Theory]
    [InlineData(CarAxle.Front, "/vehicle/front/bumpTravelMm")]
    [InlineData(CarAxle.Rear, "/vehicle/rear/bumpTravelMm")]
    public void An_assumption_names_its_own_axle(CarAxle axle, string place)
    {
        var notes = new List<Assumption>();

        new HandlingAxleAssumptions(axle, [], notes, UnitSystem.Metric).NoBumpStop();

        Assert.Equal(place, Assert.Single(notes).Input);
    }

    // Common practice: the errors a workshop's readings carry.
    [Fact]
    public void Errors_of_what_is_given()
    {
        var inputs = HandlingInputs.For(CarAxle.Front);

        Assert.Equal(0, inputs.CamberCompliance.ErrorOf(0));
        Assert.Equal(0, inputs.ToeCompliance.ErrorOf(0));
        Assert.Equal(0.06, inputs.CamberCompliance.ErrorOf(-0.3), 1e-12);
        Assert.Equal(6, inputs.Load.ErrorOf(600), 1e-9);
        Assert.Equal(3, inputs.Track.ErrorOf(1500), 1e-9);
        Assert.Equal(0.1, inputs.Camber.ErrorOf(-1.5), 1e-12);
    }

    private static void Same(TypicalValue typical, double value, double lower, double upper)
    {
        Assert.Equal(value, typical.Value, 1e-9);
        Assert.Equal(lower, typical.Lower, 1e-9);
        Assert.Equal(upper, typical.Upper, 1e-9);
    }
}
