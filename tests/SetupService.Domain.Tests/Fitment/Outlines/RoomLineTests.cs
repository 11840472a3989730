using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Outlines;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Fitment.Outlines;

public sealed class RoomLineTests
{
    // By hand: the present inner edge stands at −45 − 112.5 = −157.5 and the gap beside it is 14, so the part inboard stands
    // at −171.5; outboard −45 + 112.5 + 18 = 85.5; over the tread 317 + 22 = 339. A candidate moves none of them.
    [Theory]
    [InlineData(45, "225/45R17 91W")]
    [InlineData(30, "245/40R18 97Y")]
    public void Where_the_car_stands_does_not_depend_on_the_candidate(double offsetMm, string marking)
    {
        var candidate = DemoCar.Fitting(8.5, offsetMm, marking);

        Assert.Equal(-171.5, Line(candidate, CheckId.InboardClearance)!.Value.PositionMm, 9);
        Assert.Equal(85.5, Line(candidate, CheckId.OutboardClearance)!.Value.PositionMm, 9);
        Assert.Equal(339, Line(candidate, CheckId.RadialClearance)!.Value.PositionMm, 9);
    }

    [Fact]
    public void Travel_brings_the_crown_down_from_where_it_was_measured()
    {
        var axle = DemoCar.Axle();
        axle = axle with
        {
            BumpStop = new BumpStop { LengthMm = 18, CompressedLengthMm = 18, MotionRatio = 1 },
            Clearance = axle.Clearance with { MeasuredAt = ClearanceMeasuredAt.RideHeight, RadialMm = 90 },
        };

        var line = Line(DemoCar.Fitting(), CheckId.RadialClearance, axle)!.Value;

        Assert.Equal(317 + 90, line.MeasuredMm, 9);
        Assert.Equal(317 + 90 - 68, line.PositionMm, 9);
        Assert.True(line.HasMoved);
    }

    [Fact]
    public void Places_without_a_direction_and_gaps_that_are_not_known_have_no_line()
    {
        var axle = DemoCar.Axle();
        axle = axle with { Clearance = axle.Clearance with { InboardMm = null } };

        Assert.Null(Line(DemoCar.Fitting(), CheckId.InboardClearance, axle));
        Assert.Null(Line(DemoCar.Fitting(), CheckId.FullLockClearance));
        Assert.Null(Line(DemoCar.Fitting(), CheckId.SpringSeatClearance));
    }

    // A square of 10 by 10 whose right 3 lie beyond: 30 square mm by the shoelace formula.
    [Theory]
    [InlineData(CheckId.OutboardClearance, 10, -3, 30)]
    [InlineData(CheckId.InboardClearance, 0, -2, 20)]
    [InlineData(CheckId.RadialClearance, 10, -4, 40)]
    [InlineData(CheckId.RadialClearance, 10, 1, 0)]
    public void Beyond_cuts_off_what_does_not_fit(CheckId place, double edgeMm, double nominalMm, double areaMm2)
    {
        var square = new Outline(new(0, 0), OutlineStep.Line(new(10, 0)), OutlineStep.Line(new(10, 10)), OutlineStep.Line(new(0, 10)));

        var beyond = new RoomLine(place, edgeMm, nominalMm, 0).Beyond(square, 1);

        Assert.Equal(areaMm2, Area(beyond), 9);
    }

    private static double Area(IReadOnlyList<OutlinePoint> polygon)
    {
        var twice = 0.0;
        for (var i = 0; i < polygon.Count; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            twice += (a.StationMm * b.HeightMm) - (b.StationMm * a.HeightMm);
        }

        return Math.Abs(twice / 2);
    }

    private static RoomLine? Line(in Fitting candidate, CheckId place, Axle? axle = null)
    {
        var car = DemoCar.Front(axle);
        return RoomLine.Create(car, Envelope.Compute(candidate), DemoCar.Check(car, candidate), place);
    }
}
