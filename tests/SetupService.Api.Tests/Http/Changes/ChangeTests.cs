using SetupService.Api.Tests.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using static SetupService.Api.Tests.Http.Changes.ChangeReading;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>What a change makes of a car.</summary>
public sealed class ChangeTests
{
    private const string Beam =
        """
        { "kind": "twistBeam", "points": { "pivotLeft": { "xMm": 400, "yMm": 550, "zMm": 300 }, "beamShearCentre": { "xMm": 300, "yMm": 0, "zMm": 310 },
          "wheelCentre": { "xMm": 0, "yMm": 740, "zMm": 305 } } }
        """;

    [Fact]
    public void A_member_named_replaces_the_car_s_and_everything_else_stays()
    {
        var changed = Changed("""{ "front": { "wheel": { "offsetMm": 35 }, "tyre": { "pressureKpa": 250 } }, "topSpeedKmh": 230 }""");

        var car = Car(DemoCar.Car);
        car.Front!.Wheel!.OffsetMm = 35;
        car.Front.Tyre!.PressureKpa = 250;
        car.TopSpeedKmh = 230;
        Assert.Equal(Text(car), Text(changed));
    }

    [Fact]
    public void An_array_is_replaced_whole() =>
        Assert.Equal(
            [(5.0, 150.0)],
            Changed("""{ "front": { "wheel": { "innerProfile": [ { "fromMountingFaceMm": 5, "radiusMm": 150 } ] } } }""")
                .Front!.Wheel!.InnerProfile!.Select(point => (point.FromMountingFaceMm, point.RadiusMm)));

    [Fact]
    public void A_part_the_car_lacks_is_added() =>
        Assert.Equal(27, Changed("""{ "front": { "spring": { "rateNPerMm": 27 } } }""", "{}").Front!.Spring!.RateNPerMm);

    // Null means absent everywhere in a request (unlike RFC 7396, where it removes).
    [Theory]
    [InlineData("{}")]
    [InlineData("""{ "front": null, "label": null, "rear": { "wheel": null, "tyre": { "marking": null }, "suspension": { "kind": null, "points": null } } }""")]
    [InlineData("""{ "front": {}, "rear": { "suspension": {}, "spring": {} } }""")]
    public void Null_and_empty_objects_change_nothing(string change) => Assert.Equal(Text(Car(DemoCar.Car)), Text(Changed(change)));

    [Theory]
    [InlineData("\"kind\": \"macPhersonStrut\", ")]
    [InlineData("")]
    public void Within_its_kind_a_suspension_is_merged(string kind)
    {
        var changed = Changed($$"""{ "front": { "suspension": { {{kind}}"points": { "strutTop": { "yMm": 570 } } } } }""");

        var points = Assert.IsType<MacPhersonStrutDocument>(changed.Front!.Suspension).Points;
        Assert.Equal((-35, 570, 790), (points.StrutTop.XMm, points.StrutTop.YMm, points.StrutTop.ZMm));
        Assert.Equal(740, points.WheelCentre.YMm);
    }

    [Fact]
    public void Another_kind_of_suspension_replaces_the_car_s_whole()
    {
        var changed = Changed($$"""{ "rear": { "suspension": {{Beam}} } }""");

        Assert.Equal(550, Assert.IsType<TwistBeamDocument>(changed.Rear!.Suspension).Points.PivotLeft.YMm);
    }

    [Fact]
    public void Escaped_names_are_the_names_they_spell() =>
        Assert.Equal(35, Changed("""{ "fr\u006fnt": { "wheel": { "offset\u004dm": 35 } } }""").Front!.Wheel!.OffsetMm);

    [Fact]
    public void Changes_follow_one_another_and_leave_the_car_they_start_from_as_it_was()
    {
        var request = Read(
            $$"""
            { "vehicle": {{DemoCar.Car}}, "changes": [
              { "label": "offset", "vehicle": { "rear": { "wheel": { "offsetMm": 35 }, "trackMm": 1500 } } },
              { "label": "offset again", "vehicle": { "rear": { "wheel": { "offsetMm": 30, "spacerMm": 5 } } } } ] }
            """);
        var stated = ChangeContract.Changing(request.Vehicle, "/vehicle");

        var together = request.Changes!.Aggregate(stated, (car, one) => car.With(one.Vehicle, "/changes"));

        Assert.True(together.Read().TryGet(out var changed, out _));
        Assert.Equal((1500, 30, 5), (changed.Rear!.TrackMm, changed.Rear.Wheel!.OffsetMm, changed.Rear.Wheel.SpacerMm));
        Assert.True(stated.Read().TryGet(out var unchanged, out _));
        Assert.Equal(Text(Car(DemoCar.Car)), Text(unchanged));
    }
}
