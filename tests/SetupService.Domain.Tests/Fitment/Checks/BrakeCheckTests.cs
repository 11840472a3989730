using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Fitment.Checks;

public sealed class BrakeCheckTests
{
    private const double StepMm = 1;

    /// <summary>Outlines that mostly stay apart: a caliper below and a wheel above, points on a grid so that steps and shared stations are common.</summary>
    private static readonly Gen<(ProfilePoint[] Caliper, ProfilePoint[] Wheel)> Apart =
        Gen.Select(Outline(120, 165, -8, 3), Outline(160, 200, -14, 9));

    [Fact]
    public void A_spoke_a_tenth_of_a_millimetre_away_does_not_pass()
    {
        // The barrel is 32 mm above the caliper, the spoke's back stands 0.1 mm outboard of its face.
        var result = Check([new(-30, 150), new(18, 150)], [new(-110, 182), new(18.1, 182), new(18.1, 90), new(40, 90)]);

        Assert.Equal(CheckStatus.Fail, result.Status);
        Assert.Equal(0.1, result.Margin!.Value.NominalMm, 9);
    }

    // By hand: from the corner (18, 165) to the line from (20, 178) to (40, 158), whose normal is (1, 1)/√2: (2 + 13)/√2.
    [Fact]
    public void A_slanting_spoke_is_as_far_as_its_normal_says()
    {
        var result = Check([new(-30, 160), new(18, 165)], [new(-110, 200), new(-40, 200), new(20, 178), new(40, 158)]);

        Assert.Equal(15 / Math.Sqrt(2), result.Margin!.Value.NominalMm, 9);
    }

    // The caliper moves 10.5 mm inboard and 0.5 mm outboard (wear and play, common practice): a wall 4 mm inboard of it is reached.
    [Fact]
    public void Pads_that_wear_take_the_caliper_to_what_stands_inboard_of_it()
    {
        var result = Check([new(-20, 150), new(18, 150)], [new(-130, 140), new(-24, 140), new(-24, 190), new(60, 190)]);

        Assert.Equal(4, result.Margin!.Value.NominalMm, 9);
        Assert.Equal(CheckStatus.Fail, result.Status);
        Assert.Equal(4 - 4 - Math.Sqrt(2), result.Margin!.Value.ProbableMm, 9);
    }

    [Fact]
    public void Play_takes_half_a_millimetre_of_the_room_to_a_spoke()
    {
        var result = Check([new(-20, 150), new(18, 150)], [new(-130, 190), new(26, 190), new(26, 100), new(40, 100)]);

        Assert.Equal(8, result.Margin!.Value.NominalMm, 9);
        Assert.Equal(8 - BrakeCheck.FloatMm - 2, result.Margin!.Value.WorstCaseMm, 9);
        Assert.Equal(CheckStatus.Pass, result.Status);
    }

    [Theory]
    [InlineData(20.9, CheckStatus.Unknown, UnknownReason.OutlineTooShort)]
    [InlineData(21.1, CheckStatus.Caution, UnknownReason.OutlineEndsNear)]
    [InlineData(24, CheckStatus.Pass, UnknownReason.Computed)]
    public void The_wheel_must_be_known_past_the_caliper_by_the_margin_wanted(double toMm, CheckStatus status, UnknownReason reason)
    {
        var result = Check([new(-20, 150), new(18, 150)], [new(-130, 190), new(toMm, 190)]);

        Assert.Equal((status, reason), (result.Status, result.Reason));
    }

    // Backspacing of 7.5 in with offset 45: (190.5 + 22)/2 + 45 = 151.25 mm; beyond the rim there is nothing to know.
    [Theory]
    [InlineData(-152, CheckStatus.Pass)]
    [InlineData(-140, CheckStatus.Unknown)]
    public void Inboard_no_more_is_asked_for_than_the_rim_has(double fromMm, CheckStatus status) =>
        Assert.Equal(status, Check([new(-160, 150), new(0, 150)], [new(fromMm, 190), new(30, 190)]).Status);

    [Fact]
    public void A_wheel_that_touches_where_it_is_known_fails_however_short_its_outline() =>
        Assert.Equal(CheckStatus.Fail, Check([new(-30, 150), new(20, 150)], [new(0, 140), new(10, 140)]).Status);

    [Fact]
    public void Outlines_that_overlap_are_as_negative_as_the_deepest_point()
    {
        // The caliper's corner (18, 150) stands 3 mm outboard of the spoke's back and 50 below the barrel: 3 mm deep.
        var result = Check([new(-20, 150), new(18, 150)], [new(-130, 190), new(15, 190), new(15, 100), new(40, 100)]);

        Assert.Equal(-3, result.Margin!.Value.NominalMm, 9);
        Assert.Equal(CheckStatus.Fail, result.Status);
    }

    // Brute force: both outlines cut into pieces of a millimetre, the caliper moved in as small steps. No pair of places is
    // nearer than the answer, and the nearest pair is as near as the cuts let it be.
    [Fact]
    public void No_pair_of_places_is_nearer_and_one_is_as_near_over_500_outlines() =>
        Apart.Sample(
            pair =>
            {
                var (measured, moved) = new OutlineDistance(pair.Caliper, pair.Wheel, BrakeCheck.PadWearMm + BrakeCheck.FloatMm, BrakeCheck.FloatMm).Least();

                // A corner of one that lies on a face of the other is in it by nothing.
                if (Overlaps(pair.Caliper, pair.Wheel)) return measured <= 0;
                if (measured < 0) return false;
                var (caliper, wheel) = (Places(pair.Caliper), Places(pair.Wheel));
                var still = Nearest(caliper, wheel, 0, 0);
                var reached = Nearest(caliper, wheel, BrakeCheck.PadWearMm + BrakeCheck.FloatMm, BrakeCheck.FloatMm);

                // A place is at most half a cut from a sample, on either outline; at a distance d that adds less than h²/2d, and never more than h.
                return measured <= still + 1e-9 && still <= measured + StepMm && moved <= reached + 1e-9 && reached <= moved + StepMm
                    && (measured < 1 || still <= measured + (StepMm * StepMm / measured)) && moved <= measured;
            },
            iter: 500);

    // The exact other way, by convexity: the distance of two straight pieces is convex in the place on each of them, so ternary searches find it.
    [Fact]
    public void The_distance_is_that_of_a_search_along_both_outlines() =>
        Apart.Where(pair => !Overlaps(pair.Caliper, pair.Wheel)).Sample(
            pair =>
            {
                var (measured, _) = new OutlineDistance(pair.Caliper, pair.Wheel, 0, 0).Least();
                return Math.Abs(measured - Searched(pair.Caliper, pair.Wheel)) < 1e-6;
            },
            iter: 500);

    [Fact]
    public void Room_to_the_brake_is_required_only_under_a_smaller_rim()
    {
        var axle = DemoCar.Axle();
        var car = DemoCar.Front(axle with { Hub = axle.Hub with { MinimumRimDiameterIn = null } });
        var smaller = DemoCar.Fitting(marking: "225/50R16 92W");

        Assert.True(car.RequiredFor(smaller).Contains(CheckId.BrakeClearance));
        Assert.False(car.RequiredFor(DemoCar.Fitting()).Contains(CheckId.BrakeClearance));
        Assert.False(DemoCar.Front(settings: new CheckSettings { Required = default(CheckIdSet) }).RequiredFor(smaller).Contains(CheckId.BrakeClearance));
        Assert.Equal(CheckStatus.Unknown, DemoCar.Check(car, smaller)[CheckId.BrakeClearance].Status);
    }

    // A level caliper of 10 mm beside a level wall at its own radius: it reaches as far as it may move, 10.5 mm inboard and 0.5 outboard, and no further.
    [Theory]
    [InlineData(30, 20, 19.5)]
    [InlineData(10.4, 0.4, 0)]
    [InlineData(-50, 20, 9.5)]
    [InlineData(-40.4, 10.4, 0)]
    public void A_level_piece_reaches_a_level_one_only_by_moving(double wallFromMm, double measuredMm, double movedMm)
    {
        var (measured, moved) = new OutlineDistance([new(0, 100), new(10, 100)], [new(wallFromMm, 100), new(wallFromMm + 30, 100)], 10.5, 0.5).Least();

        Assert.Equal((measuredMm, movedMm), (Math.Round(measured, 9), Math.Round(moved, 9)));
    }

    private static Gen<ProfilePoint[]> Outline(int low, int high, int first, int last) =>
        Gen.Select(Gen.Int[first, last], Gen.Int[low, high], (station, radius) => new ProfilePoint(station * 10, radius)).Array[1, 6]
            .Select(points => points.OrderBy(point => point.StationMm).ToArray());

    private static CheckResult Check(ProfilePoint[] caliper, ProfilePoint[] wheel)
    {
        var axle = DemoCar.Axle();
        axle = axle with { Hub = axle.Hub with { CaliperProfile = caliper } };
        var candidate = DemoCar.Fitting();
        candidate = candidate with { Wheel = candidate.Wheel with { InnerProfile = wheel } };
        return DemoCar.Check(DemoCar.Front(axle), candidate)[CheckId.BrakeClearance];
    }

    /// <summary>Points at most a cut apart all along an outline.</summary>
    private static List<ProfilePoint> Places(ProfilePoint[] outline)
    {
        var places = new List<ProfilePoint> { outline[0] };
        for (var i = 1; i < outline.Length; i++)
        {
            var (from, to) = (outline[i - 1], outline[i]);
            var cuts = Math.Max(1, (int)Math.Ceiling(double.Hypot(to.StationMm - from.StationMm, to.RadiusMm - from.RadiusMm) / StepMm));
            for (var cut = 1; cut <= cuts; cut++) places.Add(Between(from, to, (double)cut / cuts));
        }

        return places;
    }

    private static double Nearest(List<ProfilePoint> caliper, List<ProfilePoint> wheel, double inboardMm, double outboardMm)
    {
        var least = double.PositiveInfinity;
        foreach (var a in caliper)
        {
            foreach (var b in wheel)
            {
                // However far the caliper moves along the axis, the station differs by what is left after the movement.
                var apart = b.StationMm - a.StationMm;
                var (along, up) = (apart - Math.Clamp(apart, -inboardMm, outboardMm), b.RadiusMm - a.RadiusMm);
                least = Math.Min(least, (along * along) + (up * up));
            }
        }

        return Math.Sqrt(least);
    }

    private static double Searched(ProfilePoint[] caliper, ProfilePoint[] wheel)
    {
        var least = double.PositiveInfinity;
        for (var i = Math.Min(1, caliper.Length - 1); i < caliper.Length; i++)
        {
            for (var k = Math.Min(1, wheel.Length - 1); k < wheel.Length; k++)
            {
                var (a, b) = (caliper[Math.Max(0, i - 1)], caliper[i]);
                var (c, d) = (wheel[Math.Max(0, k - 1)], wheel[k]);
                least = Math.Min(least, Ternary(s => Ternary(t => Far(Between(a, b, s), Between(c, d, t)))));
            }
        }

        return least;
    }

    private static double Ternary(Func<double, double> convex)
    {
        var (low, high) = (0.0, 1.0);
        for (var step = 0; step < 45; step++)
        {
            var (left, right) = (low + ((high - low) / 3), high - ((high - low) / 3));
            if (convex(left) < convex(right)) high = right;
            else low = left;
        }

        return convex((low + high) / 2);
    }

    private static double Far(ProfilePoint a, ProfilePoint b) => double.Hypot(a.StationMm - b.StationMm, a.RadiusMm - b.RadiusMm);

    private static ProfilePoint Between(ProfilePoint from, ProfilePoint to, double share) =>
        new(from.StationMm + (share * (to.StationMm - from.StationMm)), from.RadiusMm + (share * (to.RadiusMm - from.RadiusMm)));

    /// <summary>Whether at some station the caliper stands higher than the wheel, looked at in hundredths of a millimetre and at every point.</summary>
    private static bool Overlaps(ProfilePoint[] caliper, ProfilePoint[] wheel)
    {
        foreach (var station in caliper.Concat(wheel).Select(point => point.StationMm).Distinct())
        {
            if (At(caliper, station).Append(double.NegativeInfinity).Max() > At(wheel, station).Append(double.PositiveInfinity).Min()) return true;
        }

        return false;
    }

    /// <summary>Every radius an outline has at a station.</summary>
    private static IEnumerable<double> At(ProfilePoint[] outline, double station)
    {
        for (var i = 0; i < outline.Length; i++)
        {
            if (outline[i].StationMm == station) yield return outline[i].RadiusMm;
            else if (i > 0 && outline[i - 1].StationMm < station && station < outline[i].StationMm)
            {
                yield return Between(outline[i - 1], outline[i], (station - outline[i - 1].StationMm) / (outline[i].StationMm - outline[i - 1].StationMm)).RadiusMm;
            }
        }
    }

    // A caliper of one point 10 mm above a wheel of one point at the same station stands 10 mm into it.
    [Fact]
    public void Outlines_of_one_point_have_a_depth_too() => Assert.Equal(-10, new OutlineDistance([new(0, 100)], [new(0, 90)], 0, 0).Least().Item1);
}
