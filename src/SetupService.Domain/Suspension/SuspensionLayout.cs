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

/// <summary>Names the kinds of suspension for people.</summary>
public static class SuspensionLayoutWords
{
    /// <summary>The kind.</summary>
    public static string Describe(SuspensionLayout? layout) => layout switch
    {
        SuspensionLayout.MacPhersonStrut => "MacPherson strut",
        SuspensionLayout.DoubleWishbone => "Double wishbone",
        SuspensionLayout.FiveLink => "Five links",
        SuspensionLayout.SemiTrailingArm => "Trailing arm",
        SuspensionLayout.TwistBeam => "Twist beam",
        _ => "Measured suspension",
    };
}
