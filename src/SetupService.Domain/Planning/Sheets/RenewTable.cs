namespace SetupService.Domain.Planning.Sheets;

/// <summary>How a part of a kind is fitted, in the order of a job. Common practice, no source; the part's own instructions come first.</summary>
internal static class RenewTable
{
    /// <summary>The kinds, in the order they are fitted.</summary>
    public static IReadOnlyList<RenewRow> Rows { get; } =
    [
        new(PartKind.TopMount, "fit one at each side, the same way round, plates at the same mark; write the mark down.", ["springsUnderLoad"]),
        new(PartKind.Spring, "fit them at both sides of the axle, the right way up, their ends against the stops of their seats.", ["springsUnderLoad"]),
        new(PartKind.Damper, "move each rod through its stroke a few times upright, hold it without marking it, and set the adjusters of both sides alike; write the clicks down.", ["springsUnderLoad"]),
        new(PartKind.BumpStop, "fit them the right way round, the same at both sides.", ["springsUnderLoad"]),
        new(PartKind.AntiRollBar, "fit it with its bushes, greased only where its maker says so, the same hole at both ends.", []),
        new(PartKind.Bush, "press them in straight, turned as their marks or the old ones show.", ["steeringParts"]),
        new(PartKind.BallJoint, "fit them with clean dry tapers and new nuts or rivet bolts.", ["steeringParts"]),
        new(PartKind.Arm, "fit them with their bolts just tight.", ["steeringParts"]),
        new(PartKind.EccentricBolt, "fit one at each side, both lobes pointing the same way, nuts just tight until camber is set.", ["steeringParts"]),
        new(PartKind.Shim, "put them between the clean faces, the thick end as the alignment sheet asks, the same at both sides unless it says otherwise.", ["steeringParts"]),
        new(PartKind.Wheel, "look that hub, spigot and seat of the fasteners belong together before a tyre is mounted, and try one by hand.", ["ratings", "wheelFasteners"]),
        new(PartKind.Tyre, "have them mounted and balanced, running direction and outer side as marked, and write marking and date code into the tyre record.", ["ratings"]),
        new(PartKind.Spacer, "put them on clean flat faces; the wheel must sit on a spigot, and the fasteners must grip over at least as many turns as before.", ["ratings", "wheelFasteners"]),
        new(PartKind.Pad, "fit them at both sides; clean the guides, push the pistons back slowly and watch the fluid.", ["brakes"]),
        new(PartKind.Disc, "clean off their oil and the hub's rust, fit them at both sides, and keep grease away from the rubbing faces.", ["brakes"]),
    ];

    /// <summary>Names in a row: 'a', 'b' and 'c'.</summary>
    public static string List(IReadOnlyList<string> ids) =>
        ids.Count == 1 ? $"'{ids[0]}'" : string.Join(", ", ids.Take(ids.Count - 1).Select(id => $"'{id}'")) + $" and '{ids[^1]}'";
}

/// <summary>How parts of one kind are fitted.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Text">What to do, after the parts' names.</param>
/// <param name="Cautions">Codes of the cautions to read before.</param>
internal sealed record RenewRow(PartKind Kind, string Text, string[] Cautions);
