using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Fitment;

public sealed class BrakeCheckTests
{
    private static readonly Gen<ProfilePoint[]> Outline =
        Gen.Select(Gen.Int[-8, 8], Gen.Int[120, 200], (station, radius) => new ProfilePoint(station * 10, radius)).Array[1, 6]
            .Select(points => points.OrderBy(point => point.StationMm).ToArray());

    // Brute force: the outlines walked in tenths of a millimetre come no closer than the answer, wherever both are there.
    [Fact]
    public void No_sample_along_the_outlines_is_closer_than_the_answer() =>
        Gen.Select(Outline, Outline, Gen.Int[0, 3]).Sample((caliper, wheel, spacer) =>
        {
            var result = Check(caliper, wheel, spacer * 10);
            var nearest = Sampled(caliper, wheel, spacer * 10);
            if (result.Value is not { } value) return result.Status == CheckStatus.Unknown && nearest is null;
            var nominal = result.Margin?.NominalMm ?? value;
            return double.IsFinite(nominal) && nearest is { } sampled && nominal <= sampled + 1e-9;
        });

    // And the answer is reached: without steps a sample comes as close as the slope lets it.
    [Fact]
    public void The_answer_is_reached_by_a_sample_where_nothing_steps() =>
        Gen.Select(Outline, Outline).Sample((caliper, wheel) =>
        {
            caliper = [.. caliper.DistinctBy(point => point.StationMm)];
            wheel = [.. wheel.DistinctBy(point => point.StationMm)];
            var result = Check(caliper, wheel, 0);
            return result.Value is not { } value || Math.Abs((result.Margin?.NominalMm ?? value) - Sampled(caliper, wheel, 0)!.Value) < 1e-9;
        });

    [Fact]
    public void A_wheel_that_steps_inward_is_taken_at_its_smaller_radius()
    {
        var result = Check([new(0, 150), new(20, 150)], [new(-50, 190), new(10, 190), new(10, 160), new(50, 160)], 0);

        Assert.Equal(10, result.Margin!.Value.NominalMm, 9);
    }

    [Fact]
    public void A_wheel_measured_along_part_of_the_caliper_is_unknown()
    {
        var result = Check([new(-30, 150), new(20, 150)], [new(0, 190), new(50, 190)], 0);

        Assert.Equal((CheckStatus.Unknown, Finding.OutlineTooShort, 40.0), (result.Status, result.Finding, result.Value!.Value));
    }

    private static CheckResult Check(ProfilePoint[] caliper, ProfilePoint[] wheel, double spacerMm)
    {
        var axle = DemoCar.Axle();
        axle = axle with { Hub = axle.Hub with { CaliperProfile = caliper } };
        var candidate = DemoCar.Fitting(spacerMm: spacerMm);
        candidate = candidate with { Wheel = candidate.Wheel with { InnerProfile = wheel } };
        return DemoCar.Check(DemoCar.Front(axle), candidate)[CheckId.BrakeClearance];
    }

    private static double? Sampled(ProfilePoint[] caliper, ProfilePoint[] wheel, double spacerMm)
    {
        double? nearest = null;
        for (var tenth = -2000; tenth <= 2000; tenth++)
        {
            var station = tenth / 10.0;
            if (At(caliper, station) is { } inner && At(wheel, station - spacerMm) is { } outer) nearest = Math.Min(nearest ?? double.MaxValue, outer - inner);
        }

        return nearest;
    }

    // Between points only; at a point the last of its station, as a sample next to it would be.
    private static double? At(ProfilePoint[] outline, double station)
    {
        for (var i = outline.Length - 1; i >= 0; i--)
        {
            if (outline[i].StationMm == station) return outline[i].RadiusMm;
            if (i > 0 && outline[i - 1].StationMm < station && station < outline[i].StationMm)
            {
                var share = (station - outline[i - 1].StationMm) / (outline[i].StationMm - outline[i - 1].StationMm);
                return outline[i - 1].RadiusMm + (share * (outline[i].RadiusMm - outline[i - 1].RadiusMm));
            }
        }

        return null;
    }
}
