using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Tests.Suspension.Sweep;

/// <summary>Why a position is not reached, in words with the figures of the case.</summary>
public sealed class ClosureWordsTests
{
    private static readonly ClosureGap Short = new(ConstraintRole.TieRod, 2.04, 2.04);

    // Of the rack nothing is said where nothing was asked of it.
    [Theory]
    [InlineData(0, 0, "48.0 mm of travel.")]
    [InlineData(1, 0, "48.0 mm of travel and 0.0 mm of rack.")]
    [InlineData(0, 1, "48.0 mm of travel and 1.0 mm of rack.")]
    public void The_last_position_before_it_is_told(double rackMm, double lastRackMm, string end)
    {
        foreach (var reason in (UnreachableReason[])[UnreachableReason.DeadPoint, UnreachableReason.WorkSpent, UnreachableReason.DoesNotClose])
            Assert.EndsWith(" " + end, ClosureWords.Reason(new(60, rackMm, reason, Short, 48, lastRackMm)), StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_are_told_with_how_far_they_go() => Assert.Equal(
        "the readings go from −40.0 mm to 60.0 mm of travel and are carried on for 20.0 mm at most; 90.0 mm is beyond.",
        ClosureWords.Reason(new(90, 0, UnreachableReason.BeyondReadings, default, 80, 0) { BeyondMm = 10, ReadFromMm = -40, ReadToMm = 60 }));

    [Theory]
    [InlineData(2.04, "the tie rod is 2.0 mm too short")]
    [InlineData(-2.04, "the tie rod is 2.0 mm too long")]
    public void A_part_lacks_or_has_too_much(double gapMm, string said)
    {
        var gap = new ClosureGap(ConstraintRole.TieRod, gapMm, 2.04);

        Assert.Equal(said, ClosureWords.Part(gap));
        Assert.Equal($"the parts do not meet: at best {said}", ClosureWords.Adjusted(gap));
        Assert.Contains("dead point", ClosureWords.Adjusted(gap with { ResidualMm = 1e-9 }), StringComparison.Ordinal);
    }
}
