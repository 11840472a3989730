using SetupService.Domain.Suspension;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>
/// Figures that rows lack although the corner's kind has them and no input is missing, so that no null stands without a reason. What
/// is null below 5° of steer says so itself.
/// </summary>
internal static class RowGaps
{
    private static readonly (string[] Outputs, Predicate<TravelSweepRow> IsMissing, string Reason)[] OfEvery =
    [
        (["instantCentreYMm", "instantCentreZMm", "swingArmMm"], row => row.SwingArmMm is null, "the wheel rises without leaning, so seen from the front its instant centre is out of reach"),
        (["sideInstantCentreXMm", "sideInstantCentreZMm"], row => row.SideInstantCentreXMm is null, "the upright rises without pitching, so seen from the side its instant centre is out of reach"),
        (["rollCentreHeightMm"], row => row.RollCentreHeightMm is null, "the contact does not rise with the wheel"),
    ];

    private static readonly (string[] Outputs, Predicate<TravelSweepRow> IsMissing, string Reason)[] OfSteered =
    [
        (["casterDeg", "steeringAxisInclinationDeg", "scrubRadiusMm", "mechanicalTrailMm"], row => row.CasterDeg is null, "the rack turns the wheel about no upright axis"),
        (["otherSteerDeg"], row => row.OtherSteerDeg is null, "the right wheel's parts do not meet at this travel and rack, so nothing is known of both wheels together"),
    ];

    /// <summary>The figures, each with how many rows lack it, and why.</summary>
    public static IEnumerable<FigureGap> Of(TravelSweepRow[] rows, bool hasRack) =>
        from figures in hasRack ? OfEvery.Concat(OfSteered) : OfEvery
        let count = rows.Count(row => figures.IsMissing(row))
        where count > 0
        from output in figures.Outputs
        select new FigureGap(output, count == rows.Length ? figures.Reason : FormattableString.Invariant($"in {count} of {rows.Length} rows {figures.Reason}"));
}
