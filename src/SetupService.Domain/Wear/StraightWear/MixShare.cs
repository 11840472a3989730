namespace SetupService.Domain.Wear.StraightWear;

/// <summary>One number for each fitted clock: a stretch of use in units of the mix, or what the mix takes off the tread by each clock, mm.</summary>
/// <param name="Road">By the road clock, or by both where they move in proportion.</param>
/// <param name="Track">By the track clock; 0 where both move in proportion.</param>
public readonly record struct MixShare(double Road, double Track)
{
    /// <summary>Sum of the products.</summary>
    internal double Dot(double road, double track) => (Road * road) + (Track * track);

    /// <summary>Sum of the products.</summary>
    internal double Dot(in MixShare other) => Dot(other.Road, other.Track);
}
