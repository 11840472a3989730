using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

public sealed class FiniteFiguresTests
{
    // Four links whose lines meet one line along the car below the wheel centre: the fifth can only turn the upright about that.
    private static readonly CornerSetting LevelAxis = new()
    {
        Suspension = new FiveLink
        {
            Links =
            [
                new(new(100, 300, 200), new(25, 645, 200)), new(new(-100, 300, 200), new(-25, 645, 200)), new(new(0, 300, 300), new(25, 530, 250)),
                new(new(-400, 690, 250), new(0, 690, 250)), new(new(0, 300, 450), new(0, 700, 450)),
            ],
            WheelCentre = new(0, 760, 310),
        },
        CamberDeg = -1,
        ToeDeg = 0.1,
        LoadedRadiusMm = 300,
    };

    [Fact]
    public void No_figure_of_a_plausible_corner_is_other_than_a_number() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var figures = WheelKinematics.Compute(corner, Walked.To(corner, place.TravelMm, place.RackMm));

            FigureTable.AssertFinite(figures);
            Assert.Equal(corner.HasRack, figures.CasterDeg is not null);
            Assert.Equal(corner.HasRack, figures.SteeringAxisInclinationDeg is not null);
            Assert.Equal(corner.HasRack, figures.ScrubRadiusMm is not null);
            Assert.Equal(corner.HasRack, figures.MechanicalTrailMm is not null);
        });

    [Fact]
    public void A_level_steering_axis_has_no_figures()
    {
        var sweep = TravelSweep.Start(
            MechanismBuilder.Build(LevelAxis), new SweepRange(-10, 10, 5), new SweepRange(-10, 10, 5), new() { IsFront = true, WheelbaseMm = 2600 })!;
        while (sweep.TryNext(out var row, out _))
        {
            FigureTable.AssertFinite(row!.Value.Wheel);
            if (row.Value.Wheel is not { TravelMm: 0, RackMm: 0 } stated) continue;
            Assert.Null(stated.CasterDeg);
            Assert.Null(stated.SteeringAxisInclinationDeg);
            Assert.Null(stated.ScrubRadiusMm);
            Assert.Null(stated.MechanicalTrailMm);
        }

        var rows = TravelSweep.Start(
            MechanismBuilder.Build(LevelAxis), new SweepRange(-10, 10, 5), new SweepRange(-10, 10, 5), new() { IsFront = true, WheelbaseMm = 2600 })!;
        while (rows.TryNext(out var row, out _))
        {
            Assert.Null(row!.Value.Pair!.Value.AckermannPct);
        }
    }
}
