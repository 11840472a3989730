using CsCheck;
using SetupService.Domain.Fitment;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Tests.Drawings;

/// <summary>What is measured in the picture is what the check says, and what the person measured on the car.</summary>
public sealed class DrawnGapsTests
{
    private const double Tolerance = 0.01;

    private static readonly string[] Markings = ["225/45R17 91W", "165/70R10 72T", "335/20R22 100Y", "455/100R26 120Y", "205/40R17 84W"];

    private static readonly Gen<Fitting> AnyFitting = Gen
        .Select(Gen.Int[0, Markings.Length - 1], Gen.Double[3, 16], Gen.Double[-150, 150], Gen.Double[0, 80])
        .Select((marking, widthIn, offsetMm, spacerMm) => DrawnCar.Fitting(widthIn, offsetMm, Markings[marking], spacerMm));

    // By hand: half an inch more rim widens the section by 0.4 × 12.7 = 5.08, an offset of 5 less moves everything 5 outboard.
    // Inboard 14 − 2.54 + 5 = 16.46; outboard 18 − 2.54 − 5 = 10.46; the diameter stays, so 22 over the tread.
    [Fact]
    public void A_wider_wheel_further_out_leaves_what_the_sum_by_hand_leaves()
    {
        var picture = DrawnCar.Picture(DrawnCar.Fitting(8, 40));
        var reach = picture.Reach("candidate");

        Assert.Equal(16.46, picture.X("strut") - reach.Right, Tolerance);
        Assert.Equal(10.46, reach.Left - picture.X("arch-lip"), Tolerance);
        Assert.Equal(22, reach.Top - picture.Y("arch-crown"), Tolerance);
        Assert.Equal(634, 2 * Math.Abs(reach.Top), Tolerance);
        Assert.Equal(0, picture.X("hub-face"));
    }

    [Fact]
    public void The_lines_stand_at_the_nominal_margin_from_the_candidate() =>
        Gen.Select(AnyFitting, AnyFitting, Gen.Double[0, 200], Gen.Double[0, 200], Gen.Double[-3, 3]).Sample(
            (candidate, present, gapMm, otherMm, camberDeg) =>
            {
                var gaps = new Clearance { InboardMm = gapMm, OutboardMm = otherMm, RadialMm = gapMm };
                var camber = new CamberChange(camberDeg, CamberChangePlace.StrutToKnuckle, 400, 600);
                var picture = DrawnCar.Picture(candidate, DrawnCar.Axle(gaps, present), camber: camber);
                var reach = picture.Reach("candidate");

                Assert.Equal(picture.NominalMm(CheckId.InboardClearance), picture.X("strut") - reach.Right, Tolerance);
                Assert.Equal(picture.NominalMm(CheckId.OutboardClearance), reach.Left - picture.X("arch-lip"), Tolerance);
                Assert.Equal(picture.NominalMm(CheckId.RadialClearance), reach.Top - picture.Y("arch-crown"), Tolerance);
            });

    // What was measured was measured with the present wheel and tyre, so the dashed line stands the measured gap away from them.
    [Fact]
    public void Dashes_stand_at_the_measured_gap_from_the_present_fitting() =>
        Gen.Select(AnyFitting, AnyFitting, Gen.Double[150, 300], Gen.Double[1, 120]).Sample(
            (candidate, present, gapMm, travelMm) =>
            {
                var gaps = new Clearance { InboardMm = gapMm, OutboardMm = gapMm, RadialMm = gapMm, MeasuredAt = ClearanceMeasuredAt.RideHeight };
                var axle = DrawnCar.Axle(gaps, present) with
                {
                    BumpTravelMm = travelMm,
                    BumpStop = new BumpStop { LengthMm = 18, CompressedLengthMm = 18, MotionRatio = 1 },
                    Suspension = SuspensionModel.From(new CornerReadings { Travel = [new(-60, -1.5), new(0, 0), new(60, -1), new(120, 1)] }),
                };
                var picture = DrawnCar.Picture(candidate, axle);
                var reach = picture.Reach("current");

                Assert.Equal(gapMm, picture.X("strut-measured") - reach.Right, Tolerance);
                Assert.Equal(gapMm, reach.Top - picture.Y("arch-crown-measured"), Tolerance);
                if (picture.Find("arch-lip-measured") is not null) Assert.Equal(gapMm, reach.Left - picture.X("arch-lip-measured"), Tolerance);
            });

    [Fact]
    public void Without_travel_or_camber_nothing_is_dashed()
    {
        var picture = DrawnCar.Picture(DrawnCar.Fitting());

        Assert.Null(picture.Find("strut-measured"));
        Assert.Null(picture.Find("arch-lip-measured"));
        Assert.Null(picture.Find("arch-crown-measured"));
    }

    [Fact]
    public void A_gap_that_was_not_measured_is_named_and_not_drawn()
    {
        var picture = DrawnCar.Picture(DrawnCar.Fitting(offsetMm: 62.2), DrawnCar.Axle(new Clearance { OutboardMm = 18 }));

        Assert.Null(picture.Find("strut"));
        Assert.Null(picture.Find("arch-crown"));
        Assert.NotNull(picture.Find("arch-lip"));
        Assert.Contains("Not measured: inboard, at full lock, spring seat. Not measured, and no more room taken there than now: over the tread.", picture.Find("drawing-description")!.Value, StringComparison.Ordinal);
    }

    // 14 of room, and an offset 17.2 greater: 3.2 too much.
    [Fact]
    public void What_touches_says_so_with_how_much_too_much()
    {
        var picture = DrawnCar.Picture(DrawnCar.Fitting(offsetMm: 62.2));
        var gaps = picture.Find("gaps")!.Elements(Picture.Svg + "text").Select(text => text.Value).ToList();

        Assert.Equal(["inboard", "touches,", "3.2 mm", "too much"], gaps[..4]);
        Assert.NotEmpty(picture.Find("overlaps")!.Elements());
        Assert.Empty(DrawnCar.Picture(DrawnCar.Fitting()).Find("overlaps")!.Elements());
    }
}
