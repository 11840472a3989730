namespace SetupService.Api.Vehicles.Suspensions;

/// <summary>Names the kinds of suspension for people.</summary>
internal static class SuspensionWords
{
    /// <summary>The kind.</summary>
    public static string Kind(SuspensionDocument document) => document switch
    {
        MacPhersonStrutDocument => "MacPherson strut",
        DoubleWishboneDocument => "Double wishbone",
        FiveLinkDocument => "Five links",
        SemiTrailingArmDocument => "Trailing arm",
        TwistBeamDocument => "Twist beam",
        _ => "Measured suspension",
    };
}
