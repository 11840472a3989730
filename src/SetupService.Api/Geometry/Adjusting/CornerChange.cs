using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>A corner before and after adjusting, with what the answer of either call says of it.</summary>
internal sealed record CornerChange
{
    public required CornerStand Before { get; init; }

    public required CornerStand After { get; init; }

    /// <summary>What was adjusted, by how much.</summary>
    public required Adjustment[] Adjustments { get; init; }

    /// <summary>Whether a target was met; null where none was asked for.</summary>
    public bool? IsReached { get; init; }

    public IReadOnlyList<Hindrance> Hindrances { get; init; } = [];

    public required IReadOnlyList<FigureGap> Gaps { get; init; }

    /// <summary>How much higher the body stands: the ground falls away from it by as much as the contact does.</summary>
    public double? RideHeightChangeMm => Before.ContactHeightMm - After.ContactHeightMm;

    /// <summary>Both sides adjusted alike.</summary>
    public double? TrackChangeMm => 2 * (After.HalfTrackMm - Before.HalfTrackMm);

    public BlockedByPart[] BlockedBy() => [.. Hindrances.Select(hindrance =>
    {
        var adjustment = hindrance.AdjusterIndex is { } index ? Adjustments[index] : default;
        var word = hindrance.AdjusterIndex is null ? null : (Adjuster?)adjustment.By;
        var name = word is { } known ? EnumNames<Adjuster>.Of(known) : null;
        return new BlockedByPart
        {
            Obstacle = hindrance.Obstacle,
            Adjuster = word,
            Text = HindranceWords.Of(hindrance, name, adjustment.Amount, adjustment.IsAngle),
        };
    })];

    public AdjustedPart[] Adjusted() => Array.ConvertAll(Adjustments, one => new AdjustedPart
    {
        Adjuster = one.By,
        Link = one.By == Adjuster.LinkLength ? one.LinkIndex + 1 : null,
        AmountMm = one.IsAngle ? null : one.Amount,
        AmountDeg = one.IsAngle ? one.Amount : null,
    });

    public UnknownResponse[] Unknown() => [.. Gaps.Select(gap => UnknownResponse.Of(gap.Output, gap.Reason, [.. gap.Needs]))];
}
