using System.Text.Json;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>The end of travel, which the second working finds as the fold of the curve of poses. See README.md beside this file.</summary>
public sealed class UnreachableOracleTests
{
    // ReachableTravel and the last position named promise 0.05 mm of the dead point.
    private const double EndMm = 0.1;

    public static TheoryData<string> Ends() => GeometryCases.Names("unreachable");

    [Theory]
    [MemberData(nameof(Ends))]
    public void Travel_short_of_the_end_is_reached(string name)
    {
        var (request, rackMm, _) = Read(name);
        foreach (var travel in GeometryCases.Named("unreachable", name).GetProperty("reachable").EnumerateArray())
        {
            var (row, unreachable) = OracleCorner.At(request, travel.GetDouble(), rackMm);

            Assert.True(row is not null, $"travel {travel}: {unreachable}");
            Assert.Null(unreachable);
        }
    }

    [Theory]
    [MemberData(nameof(Ends))]
    public void Travel_beyond_the_end_says_what_does_not_meet_and_how_far_it_came(string name)
    {
        var (request, rackMm, lastTravelMm) = Read(name);
        var gapMm = 0.0;
        foreach (var travel in GeometryCases.Named("unreachable", name).GetProperty("unreachable").EnumerateArray())
        {
            var (row, unreachable) = OracleCorner.At(request, travel.GetDouble(), rackMm);

            Assert.True(row is null, $"travel {travel} is reached");
            var missed = unreachable!.Value;
            Assert.Equal(UnreachableReason.DoesNotClose, missed.Reason);
            Assert.Equal((travel.GetDouble(), rackMm), (missed.TravelMm, missed.RackMm));
            Assert.Equal(rackMm, missed.LastRackMm);
            Assert.Equal(lastTravelMm, missed.LastTravelMm, EndMm);
            Assert.True(missed.Gap.ResidualMm > gapMm, $"{missed.Gap.ResidualMm} mm lack at {travel}, {gapMm} mm nearer to the end");
            Assert.StartsWith(Lacking(name), missed.Gap.Role.ToString(), StringComparison.Ordinal);

            // Positive: too short.
            Assert.Equal(missed.Gap.ResidualMm, missed.Gap.GapMm);
            gapMm = missed.Gap.ResidualMm;
            Assert.Contains("do not meet", ClosureWords.Reason(missed), StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Ends))]
    public void The_reachable_travel_ends_where_the_second_working_ends(string name)
    {
        var (request, rackMm, lastTravelMm) = Read(name);
        if (rackMm != 0) return;
        var (fromMm, toMm) = ReachableTravel.Find(MechanismBuilder.Build(OracleCorner.Setting(request)));

        Assert.Equal(lastTravelMm, lastTravelMm < 0 ? fromMm : toMm, EndMm);
    }

    /// <summary>The part that each case is about; five links end their droop where the first, an upper one, reaches no further.</summary>
    private static string Lacking(string name) => name switch
    {
        "five links in droop" => nameof(ConstraintRole.Link1),
        "arm straight down" => nameof(ConstraintRole.ArmPivot),
        _ => name.Contains("upper arm", StringComparison.Ordinal) ? "UpperArm" : "LowerArm",
    };

    private static (JsonElement Request, double RackMm, double LastTravelMm) Read(string name)
    {
        var end = GeometryCases.Named("unreachable", name);
        return (end.GetProperty("request"), end.GetProperty("rackMm").GetDouble(), end.GetProperty("lastTravelMm").GetDouble());
    }
}
