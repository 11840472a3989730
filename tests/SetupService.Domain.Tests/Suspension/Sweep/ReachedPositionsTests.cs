using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Tests.Oracle;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Sweep;

public sealed class ReachedPositionsTests
{
    // Near the end of its droop this corner reaches further with the rack to the right than in the middle, so not every position can
    // be come to by the wheel first.
    [Theory]
    [InlineData(-104, -112, -0.5, -30, 30, 10)]
    [InlineData(-112, -104, 0.5, -30, 30, 10)]
    [InlineData(-104, -112, -0.5, 30, -30, -10)]
    [InlineData(-112, -104, 0.5, 30, -30, -10)]
    public void A_position_is_reached_or_not_whatever_was_asked_before_it(
        double fromMm, double toMm, double stepMm, double rackFromMm, double rackToMm, double rackStepMm)
    {
        var request = GeometryCases.Named("unreachable", "short upper arm in droop at lock").GetProperty("request");
        var sweep = TravelSweep.Start(
            MechanismBuilder.Build(OracleCorner.Setting(request)), new(fromMm, toMm, stepMm), new(rackFromMm, rackToMm, rackStepMm), default)!;
        var (reached, missed) = (0, 0);
        while (sweep.TryNext(out var row, out var unreachable))
        {
            var (travelMm, rackMm) = row is { } there ? (there.Wheel.TravelMm, there.Wheel.RackMm) : (unreachable!.Value.TravelMm, unreachable.Value.RackMm);
            var alone = OracleCorner.At(request, travelMm, rackMm);

            Assert.True(row is null == alone.Row is null, $"travel {travelMm}, rack {rackMm}: {row is not null} in the sweep, {alone.Row is not null} alone");
            if (row is { } inSweep) Assert.Equal(alone.Row!.Value.Wheel.CamberDeg, inSweep.Wheel.CamberDeg, 1e-9);
            if (row is null) missed++; else reached++;
        }

        Assert.True(reached > 20 && missed > 20, $"{reached} reached, {missed} not");
    }

    [Fact]
    public void The_reachable_travel_is_reached_to_its_ends_and_ends_beyond_what_cars_use() =>
        PlausibleCorners.Any.Sample(setting =>
        {
            var corner = MechanismBuilder.Build(setting);
            var (fromMm, toMm) = ReachableTravel.Find(corner);
            Assert.True(PoseContinuation.TryStart(corner, out var stated));
            var last = stated;

            Assert.InRange(fromMm, -ReachableTravel.FurthestMm, -PlausibleCorners.TravelMm);
            Assert.InRange(toMm, PlausibleCorners.TravelMm, ReachableTravel.FurthestMm);
            Assert.True(PoseContinuation.TryReach(corner, stated, fromMm, 0, ref last, out _));
            Assert.True(PoseContinuation.TryReach(corner, stated, toMm, 0, ref last, out _));
        });

    [Fact]
    public void A_sweep_gives_every_position_once_travel_by_travel_and_rack_by_rack_within_it()
    {
        var sweep = TravelSweep.Start(MechanismBuilder.Build(KinematicsCases.Setting("DW1")), new(-20, 20, 20), new(10, -10, -10), default)!;
        var places = new List<(double, double)>();
        while (sweep.TryNext(out var row, out _)) places.Add((row!.Value.Wheel.TravelMm, row.Value.Wheel.RackMm));

        Assert.Equal(sweep.Count, places.Count);
        Assert.Equal([(-20, 10), (-20, 0), (-20, -10), (0, 10), (0, 0), (0, -10), (20, 10), (20, 0), (20, -10)], places);
    }
}
