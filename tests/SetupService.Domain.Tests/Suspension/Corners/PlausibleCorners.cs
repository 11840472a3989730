using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Tests.Suspension.Corners;

/// <summary>
/// Generates corners as cars have them, of every kind: invented points within ranges of our own. All reach <see cref="TravelMm"/> of
/// bump and droop with the rack in the middle.
/// </summary>
internal static class PlausibleCorners
{
    /// <summary>Wheel travel that every generated corner reaches, mm.</summary>
    public const double TravelMm = 60;

    /// <summary>Rack travel that every generated corner with a rack reaches over all of <see cref="TravelMm"/>, mm.</summary>
    public const double RackMm = 20;

    public static Gen<CornerSetting> Struts { get; } = Settings(PlausibleSuspensions.Struts);

    public static Gen<CornerSetting> Wishbones { get; } = Settings(PlausibleSuspensions.Wishbones);

    public static Gen<CornerSetting> FiveLinks { get; } = Settings(PlausibleSuspensions.FiveLinks);

    public static Gen<CornerSetting> Arms { get; } = Settings(PlausibleSuspensions.Arms);

    public static Gen<CornerSetting> Beams { get; } = Settings(PlausibleSuspensions.Beams);

    /// <summary>Those that a rack steers or a toe link holds.</summary>
    public static Gen<CornerSetting> WithTieRod { get; } = Gen.OneOf(Struts, Wishbones, FiveLinks);

    public static Gen<CornerSetting> Any { get; } = Gen.OneOf(Struts, Wishbones, FiveLinks, Arms, Beams);

    /// <summary>A wheel travel and a rack travel that every corner reaches; the rack counts only where there is one.</summary>
    public static Gen<(double TravelMm, double RackMm)> Places { get; } = Gen.Select(Gen.Double[-TravelMm, TravelMm], Gen.Double[-RackMm, RackMm]);

    private static Gen<CornerSetting> Settings(Gen<Hardpoints> suspensions) =>
        Gen.Select(
            suspensions,
            Gen.Double[-2.8, 0.6],
            Gen.Double[-0.3, 0.4],
            Gen.Double[-12, 12],
            Gen.Enum<AxleMotion>(),
            (suspension, camberDeg, toeDeg, lowerMm, motion) => new CornerSetting
            {
                Suspension = suspension,
                CamberDeg = camberDeg,
                ToeDeg = toeDeg,
                LoadedRadiusMm = 310 + lowerMm,
                Motion = motion,
            }).Where(Walked.ReachesItsPlaces);
}
