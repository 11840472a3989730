using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Tests.Oracle;

namespace SetupService.Domain.Tests.Suspension.Points;

/// <summary>A suspension of each kind that nothing is wrong with: the second working's.</summary>
internal static class DrawnSuspensions
{
    public static MacPhersonStrut Strut { get; } = (MacPhersonStrut)Of("ST1");

    public static DoubleWishbone Wishbone { get; } = (DoubleWishbone)Of("DW1");

    public static FiveLink Five { get; } = (FiveLink)Of("FL1");

    public static TrailingArm Arm { get; } = (TrailingArm)Of("SA1");

    public static TwistBeam Beam { get; } = (TwistBeam)Of("TB1 parallel");

    private static Hardpoints Of(string name) => OracleCorner.Setting(GeometryCases.Named("corners", name).GetProperty("request")).Suspension;
}
