namespace SetupService.Domain.Wheels;

/// <summary>
/// The seat a wheel bolt or nut beds on. Fastener and wheel must have the same one. The kinds are common practice, no source.
/// </summary>
public enum FastenerSeat
{
    /// <summary>A cone of 60° included angle.</summary>
    Cone60,

    /// <summary>A ball of 12 mm radius.</summary>
    Ball12,

    /// <summary>A ball of 13 mm radius.</summary>
    Ball13,

    /// <summary>A ball of 14 mm radius.</summary>
    Ball14,

    /// <summary>A flat face, usually under a loose washer.</summary>
    Flat,
}
