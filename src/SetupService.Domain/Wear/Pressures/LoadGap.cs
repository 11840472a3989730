namespace SetupService.Domain.Wear.Pressures;

/// <summary>Why the least pressure a load needs is not told.</summary>
public enum LoadGap
{
    /// <summary>It is told.</summary>
    None,

    /// <summary>The car is not given.</summary>
    NoVehicle,

    /// <summary>The axle's tyre is not given.</summary>
    NoTyre,

    /// <summary>The axle's load is not given.</summary>
    NoLoad,

    /// <summary>The marking has no load index or no speed symbol.</summary>
    MarkingSilent,

    /// <summary>The pressure the load index belongs to is marked on the sidewall only.</summary>
    ReferenceUnknown,

    /// <summary>The car is faster than the tyre's symbol.</summary>
    BeyondSpeed,

    /// <summary>No pressure lets the tyre carry the load.</summary>
    BeyondLoad,
}
