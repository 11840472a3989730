using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Envelope;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Envelope;

/// <summary>The most lateral acceleration over longitudinal: its ends, its points, its directions.</summary>
public sealed class GripEnvelopeTests
{
    private static readonly TurnPath Left80 = TurnPath.AtRadius(TurnDirection.Left, 80);

    [Fact]
    public void Without_longitudinal_acceleration_it_is_the_lower_limit_of_cornering()
    {
        var car = Car();

        var point = Envelope(car).At(0);

        var limits = GripLimits.Solve(CorneringSolver.Create(car, TurnDirection.Left)!, Left80, 0.9);
        Assert.Equal(limits.LowerG!.Value, point.LateralG!.Value, 1e-8);
        Assert.Equal(limits.Front.LimitG < limits.Rear.LimitG ? EnvelopeEnd.Front : EnvelopeEnd.Rear, point.End);
    }

    [Fact]
    public void At_each_point_the_axle_named_uses_all_it_has_and_no_other_uses_more()
    {
        foreach (var differential in (Differential[])[Differential.Open, Differential.LimitedSlip(2), Differential.Locked])
        {
            var envelope = Envelope(Car() with { Differential = differential });
            var ends = new HashSet<EnvelopeEnd>();
            foreach (var longitudinalG in Enumerable.Range(-11, 18).Select(i => 0.1 * i))
            {
                var point = envelope.At(longitudinalG);
                if (point.LateralG is null)
                {
                    Assert.True(point.End is EnvelopeEnd.FrontLongitudinal or EnvelopeEnd.RearLongitudinal, $"{longitudinalG}: {point.End}");
                    continue;
                }

                ends.Add(point.End);
                var at = point.Attitude!.Value;
                double[] used = [at.Front.GripUsed, at.Rear.GripUsed, at.Front.LongitudinalUsed, at.Rear.LongitudinalUsed];
                Assert.All(used, one => Assert.InRange(one, 0, 1 + 1e-5));
                Assert.Equal(1, used[(int)point.End], 1e-5);
            }

            Assert.Contains(EnvelopeEnd.Front, ends);
            Assert.Contains(EnvelopeEnd.Rear, ends);
        }
    }

    [Fact]
    public void It_narrows_towards_hard_braking_and_ends_where_the_tyres_brake_no_harder()
    {
        var envelope = Envelope(Car());

        var (mostG, end) = envelope.Straight(braking: true);

        Assert.InRange(mostG!.Value, -1.3, -0.8);
        Assert.True(end is EnvelopeEnd.FrontLongitudinal or EnvelopeEnd.RearLongitudinal);
        Assert.Null(envelope.At(mostG.Value - 0.01).LateralG);
        Assert.Equal(end, envelope.At(mostG.Value - 0.01).End);
        double[] lateral = [.. new[] { -0.3, -0.6, -0.8 }.Select(g => envelope.At(g).LateralG!.Value)];
        Assert.True(lateral[0] > lateral[1] && lateral[1] > lateral[2], string.Join(", ", lateral));
        Assert.InRange(envelope.At(mostG.Value + 0.002).LateralG!.Value, 0, 0.35);
    }

    // The ideal distribution: braking ends latest where both axles come to their ends together (common practice, no source); by hand from loads and longitudinal friction.
    [Fact]
    public void Braking_straight_ends_where_the_axle_that_brakes_too_much_for_its_load_says()
    {
        var car = Car();
        foreach (var share in new[] { 55.0, 90 })
        {
            var (mostG, end) = Envelope(car with { BrakeShareFrontPct = share }).Straight(braking: true);

            Assert.Equal(share < 60 ? EnvelopeEnd.RearLongitudinal : EnvelopeEnd.FrontLongitudinal, end);
            var ofAxle = share < 60 ? (1 - (share / 100)) : share / 100;
            var axle = share < 60 ? car.Rear : car.Front;
            var moved = car.MassKg * -mostG!.Value * HandlingCar.StandardGravity * car.CentreOfGravityHeightMm / 2600;
            var loadN = axle.LoadN + (share < 60 ? -moved : moved);
            var most = loadN * 1.05 * 1.21 / 0.99 * (1 - (0.037 / 1.21 * ((loadN / 2 / 3900) - 1)));
            Assert.Equal(most, ofAxle * car.MassKg * -mostG.Value * HandlingCar.StandardGravity, 2e-4 * most);
        }
    }

    [Fact]
    public void A_locked_differential_drives_harder_out_of_a_bend_than_an_open_one()
    {
        var (open, slip, locked) = (Envelope(Car()), Envelope(Car() with { Differential = Differential.LimitedSlip(2) }), Envelope(Car() with { Differential = Differential.Locked }));
        const double hardG = 0.42;
        Assert.Equal(EnvelopeEnd.RearLongitudinal, open.At(hardG).End);
        Assert.True(open.At(hardG).LateralG < slip.At(hardG).LateralG && slip.At(hardG).LateralG < locked.At(hardG).LateralG);
    }

    [Fact]
    public void Driving_without_a_driven_axle_is_not_answered_and_braking_is()
    {
        var envelope = Envelope(Car() with { DriveShareFrontPct = null });

        Assert.Equal((null, EnvelopeEnd.DrivenAxleUnknown), (envelope.At(0.1).LateralG, envelope.At(0.1).End));
        Assert.Equal(EnvelopeEnd.DrivenAxleUnknown, envelope.Straight(braking: false).End);
        Assert.NotNull(envelope.At(-0.3).LateralG);
    }

    [Fact]
    public void A_car_whose_rear_locks_first_is_warned_of()
    {
        Assert.Contains("lock before the front", EnvelopeWords.Cautions(Envelope(Car() with { BrakeShareFrontPct = 55 }).Straight(braking: true), null)[0].Text, StringComparison.Ordinal);
        Assert.Empty(EnvelopeWords.Cautions(Envelope(Car() with { BrakeShareFrontPct = 85 }).Straight(braking: true), null));

        // Where nobody said how the brakes share, the warning says on what it rests.
        var assumed = EnvelopeWords.Cautions(Envelope(Car() with { BrakeShareFrontPct = 55 }).Straight(braking: true), 55)[0].Text;
        Assert.StartsWith("If the front brakes do 55 % of the whole, as assumed, ", assumed, StringComparison.Ordinal);
        Assert.Contains("give brakeShareFrontPct", assumed, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_name_what_ends_a_point_and_the_whole()
    {
        var envelope = Envelope(Car());
        EnvelopePoint[] points = [.. new[] { -1.5, -0.3, 0, 0.2 }.Select(envelope.At)];

        Assert.Equal("Braking at 1.50 g is more than the rear tyres hold, even straight ahead.", EnvelopeWords.End(points[0]));
        Assert.StartsWith("Driving at 0.20 g it holds ", EnvelopeWords.End(points[3]), StringComparison.Ordinal);
        var summary = EnvelopeWords.Summary(points, envelope.Straight(true), envelope.Straight(false));
        Assert.StartsWith("Most of all: ", summary, StringComparison.Ordinal);
        Assert.Contains("engine permitting", summary, StringComparison.Ordinal);
    }

    [Fact]
    public void A_car_that_leans_over_first_ends_there()
    {
        var point = Envelope(Car() with { CentreOfGravityHeightMm = 800, GripFactor = 1.6 }).At(-0.2);

        Assert.Equal(EnvelopeEnd.RollOver, point.End);
        Assert.InRange(point.LateralG!.Value, 0.5, 1.1);
    }

    // A tall car ends where it would roll over; there the turn was sought a second time from rest, not found, and told as none at all, between points that were.
    [Fact]
    public void A_tall_car_that_stands_straight_ahead_has_a_point_and_begun_anew_the_same_one()
    {
        foreach (var heightMm in Enumerable.Range(10, 16).Select(i => 50.0 * i))
        {
            foreach (var differential in (Differential[])[Differential.Open, Differential.LimitedSlip(2), Differential.Locked])
            {
                var car = Car() with { CentreOfGravityHeightMm = heightMm, Differential = differential };
                var envelope = Envelope(car);
                foreach (var longitudinalG in Enumerable.Range(-11, 18).Select(i => 0.1 * i))
                {
                    var point = envelope.At(longitudinalG);
                    var anew = Envelope(car).At(longitudinalG);

                    Assert.Equal(point.LateralG is null, anew.LateralG is null);
                    if (point.LateralG is null) Assert.True(point.End is EnvelopeEnd.FrontLongitudinal or EnvelopeEnd.RearLongitudinal or EnvelopeEnd.AxleUnloaded, $"{heightMm}, {differential}, {longitudinalG}: {point.End}");
                    else Assert.Equal(point.LateralG.Value, anew.LateralG!.Value, 5e-3);
                }
            }
        }
    }

    [Fact]
    public void A_point_does_not_depend_on_those_before_it_and_allocates_nothing()
    {
        var one = Envelope(Car());
        double[] forth = [.. Enumerable.Range(-8, 13).Select(i => one.At(0.1 * i).LateralG!.Value)];
        double[] back = [.. Enumerable.Range(-8, 13).Reverse().Select(i => one.At(0.1 * i).LateralG!.Value)];
        Array.Reverse(back);
        Assert.All(forth.Zip(back), pair => Assert.Equal(pair.First, pair.Second, 1e-6));

        one.At(-0.3);
        var before = GC.GetAllocatedBytesForCurrentThread();
        one.At(-0.31);
        one.At(0.42);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static HandlingCar Car() => WorkedCar.Make() with { DriveShareFrontPct = 0 };

    private static GripEnvelope Envelope(HandlingCar car) => GripEnvelope.Create(car, Left80)!;
}
