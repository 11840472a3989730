using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Benchmarks.Geometry;

/// <summary>The corners that the peers beside this file solve too; invented.</summary>
internal static class BenchmarkCorners
{
    public static CornerSetting Wishbone { get; } = new()
    {
        Suspension = new DoubleWishbone
        {
            LowerArm = new ControlArm(new(150, 390, 190), new(-180, 400, 180), new(10, 715, 180)),
            UpperArm = new ControlArm(new(90, 480, 455), new(-130, 490, 440), new(-18, 690, 480)),
            TieRod = new Link(new(-125, 370, 208), new(-130, 695, 205)),
            WheelCentre = new(0, 760, 310),
            Spring = new SpringLine(new(-10, 520, 560), new(0, 600, 195), SuspensionMember.LowerArm),
        },
        CamberDeg = -0.5,
        ToeDeg = 0.05,
        LoadedRadiusMm = 310,
    };

    public static CornerSetting Strut { get; } = new()
    {
        Suspension = new MacPhersonStrut
        {
            LowerArm = new ControlArm(new(15, 380, 190), new(-310, 390, 195), new(5, 720, 175)),
            StrutTop = new(-35, 565, 840),
            StrutLower = new(-5, 630, 400),
            StrutAxis = (new Vector3(-35, 565, 840) - new Vector3(-5, 630, 400)).Unit(),
            TieRod = new Link(new(-150, 330, 235), new(-140, 695, 225)),
            WheelCentre = new(0, 750, 305),
        },
        CamberDeg = -0.75,
        ToeDeg = 0,
        LoadedRadiusMm = 305,
    };

    public static CornerSetting Named(string name) => name == "doubleWishbone" ? Wishbone : Strut;
}
