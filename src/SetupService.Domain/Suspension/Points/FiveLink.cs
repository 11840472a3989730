using System.Collections.Immutable;

namespace SetupService.Domain.Suspension.Points;

/// <summary>Five links; the fifth is the tie rod or toe link.</summary>
public sealed record FiveLink : Hardpoints
{
    /// <summary>The five links, in the order given.</summary>
    public required ImmutableArray<Link> Links { get; init; }

    /// <summary>The tie rod or toe link.</summary>
    public Link TieRod => Links[4];

    /// <inheritdoc />
    public override SuspensionMember UsualCarrier => SuspensionMember.Upright;

    /// <inheritdoc />
    public override bool HasTieRod => true;

    /// <summary>The same with one link in another's place.</summary>
    /// <param name="index">Which, 0 to 4.</param>
    /// <param name="link">The link that takes the place.</param>
    public FiveLink WithLink(int index, Link link) => this with { Links = Links.SetItem(index, link) };
}
