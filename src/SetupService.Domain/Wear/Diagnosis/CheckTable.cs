namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>What each check would tell.</summary>
public static class CheckTable
{
    /// <summary>The signs of each check.</summary>
    public static IReadOnlyList<CheckRow> Signs { get; } =
    [
        new(WearCheck.DepthsAcross, WearSign.Tilt, 0.12),
        new(WearCheck.DepthsAcross, WearSign.TiltDifference, 0.15),
        new(WearCheck.DepthsAcross, WearSign.Bow, 0.10),
        new(WearCheck.DepthsAcross, WearSign.BowDifference, 0.12),
        new(WearCheck.DepthsAcross, WearSign.SideRatio, 0.10),
        new(WearCheck.DepthsAcross, WearSign.EndRatio, 0.10),
        new(WearCheck.DepthsRound, WearSign.RoundSpread, 0.07),
        new(WearCheck.DepthsRound, WearSign.RoundOnce, 0.25),
        new(WearCheck.TreadTemperatures, WearSign.HeatTilt, 4),
        new(WearCheck.TreadTemperatures, WearSign.HeatBow, 3.5),
        new(WearCheck.TreadTemperatures, WearSign.HeatEnd, 4),
        new(WearCheck.TreadTemperatures, WearSign.HeatLevel, 0.3),
        new(WearCheck.Pressures, WearSign.PressureOff, 1.5),
        new(WearCheck.Pressures, WearSign.PressureDifference, 2),
        new(WearCheck.Toe, WearSign.ToeSet, 0.04),
        new(WearCheck.Toe, WearSign.ThrustSet, 0.04),
        new(WearCheck.Camber, WearSign.CamberSet, 0.1),
        new(WearCheck.Camber, WearSign.CamberDifference, 0.15),
    ];

    /// <summary>The check that tells a mark.</summary>
    public static WearCheck CheckFor(WearMark mark) => mark switch
    {
        WearMark.RimOutsidePermitted => WearCheck.RimWidth,
        WearMark.MovedOrTurned or WearMark.TyresDiffer => WearCheck.TyreHistory,
        _ => WearCheck.LookAndFeel,
    };
}
