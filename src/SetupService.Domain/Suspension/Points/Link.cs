using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>A link between body and upright whose length can be set.</summary>
/// <param name="Inner">Its end on the rack or body, mm.</param>
/// <param name="Outer">Its end on the upright at the stated position, mm.</param>
/// <param name="LengthMm">Its length, mm; what lies between its ends unless it was adjusted.</param>
public sealed record Link(Vector3 Inner, Vector3 Outer, double LengthMm)
{
    /// <summary>A link as it is drawn.</summary>
    public Link(Vector3 inner, Vector3 outer)
        : this(inner, outer, (outer - inner).Length)
    {
    }
}
