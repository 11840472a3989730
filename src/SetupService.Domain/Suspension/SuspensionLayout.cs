namespace SetupService.Domain.Suspension;

/// <summary>How an axle is suspended.</summary>
public enum SuspensionLayout
{
    /// <summary>A strut that carries the upright and slides in its top mount.</summary>
    MacPhersonStrut,

    /// <summary>An upper and a lower arm.</summary>
    DoubleWishbone,

    /// <summary>Five separate links.</summary>
    FiveLink,

    /// <summary>One arm about an oblique or transverse axis.</summary>
    SemiTrailingArm,

    /// <summary>Two trailing arms joined by a torsionally soft beam.</summary>
    TwistBeam,

    /// <summary>Not drawn but measured with a jack, a ruler and gauges.</summary>
    Measured,
}
