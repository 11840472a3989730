using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>Wear is of the place where it happened, worked by hand.</summary>
public sealed class WornHereTests
{
    private static readonly TyreReading Tyre = new()
    {
        Position = WheelPosition.RearLeft,
        NewDepthMm = 8,
        GaugeErrorMm = 0.1,
        Zones = TreadZone.FromDepths(new(4, 5, 6)),
    };

    // 9000 km in front and 500 at the rear, beside 50 laps of 2 km there, which count for 1000 km of road: 9000 / 10,500 in front.
    [Fact]
    public void Legs_share_the_wear_by_road_and_laps()
    {
        var legs = Legs(Tyre with { History = [new(WheelPosition.FrontLeft, 9000, null, false), new(WheelPosition.RearLeft, 500, 50, false)] }, new WearUse(9500, 50, 2));

        Assert.Equal([WheelPosition.FrontLeft, WheelPosition.RearLeft], legs.Select(leg => leg.Position));
        Assert.Equal(9000.0 / 10_500, legs[0].Share, 1e-12);
        Assert.Equal(1, legs.Sum(leg => leg.Share), 1e-12);
    }

    // What the history leaves over of the use was run where the tyre is now.
    [Fact]
    public void The_rest_of_the_use_was_run_here()
    {
        var legs = Legs(Tyre with { History = [new(WheelPosition.FrontLeft, 6000, null, false)] }, new WearUse(10_000, 0, null));

        Assert.Equal((WheelPosition.RearLeft, 0.4), (legs[1].Position, legs[1].Share));
    }

    [Fact]
    public void A_history_of_several_places_without_distances_tells_of_none() =>
        Assert.Empty(Legs(Tyre with { History = [new(WheelPosition.FrontLeft, null, null, false), new(WheelPosition.RearLeft, null, null, false)] }, default));

    [Fact]
    public void Without_a_history_all_was_worn_here() => Assert.Equal(new WornLeg(WheelPosition.RearLeft, false, 1), Assert.Single(Legs(Tyre, default)));

    // Half worn with its sides changed over: what it shows now is the difference of both, that is nothing.
    [Fact]
    public void Turned_on_the_rim_the_shoulders_change_places()
    {
        var use = new WearUse(10_000, 0, null);
        var whole = Worn(Tyre, use).ShoulderDifference(WheelPosition.RearLeft)!.Value;
        var turned = Worn(Tyre with { History = [new(WheelPosition.RearLeft, 10_000, null, true)] }, use).ShoulderDifference(WheelPosition.RearLeft)!.Value;

        Assert.Equal(-whole.Value, turned.Value, 1e-12);
        Assert.Null(Worn(Tyre with { History = [new(WheelPosition.RearLeft, 5000, null, true), new(WheelPosition.RearLeft, 5000, null, false)] }, use).ShoulderDifference(WheelPosition.RearLeft));
    }

    // Three quarters in front: the tread is three quarters the front's, as unsure as the quarter elsewhere makes it, and hardly tells of the rear.
    [Fact]
    public void A_tread_of_two_places_tells_of_each_by_its_share()
    {
        var worn = Worn(Tyre with { History = [new(WheelPosition.FrontLeft, 7500, null, false), new(WheelPosition.RearLeft, 2500, null, false)] }, new WearUse(10_000, 0, null));
        var read = TreadFigures.Compute(Tyre)!.Value.ShoulderDifference;
        var (front, rear) = (worn.ShoulderDifference(WheelPosition.FrontLeft)!.Value, worn.ShoulderDifference(WheelPosition.RearLeft)!.Value);

        Assert.Equal(read.Value / 0.75, front.Value, 1e-12);
        Assert.Equal(Math.Sqrt(Math.Pow(read.StandardError, 2) + Math.Pow(0.25 * 0.4, 2)) / 0.75, front.StandardError, 1e-12);
        Assert.True(rear.StandardError > 1);
        Assert.Null(worn.FiguresAt(WheelPosition.RearLeft));
    }

    private static IReadOnlyList<WornLeg> Legs(TyreReading tyre, WearUse use) => WornLegs.Compute(tyre, use, use.LapKm ?? 3, 10);

    private static WornHere Worn(TyreReading tyre, WearUse use) => new(new WearCase { Use = use, Tyres = [tyre] });
}
