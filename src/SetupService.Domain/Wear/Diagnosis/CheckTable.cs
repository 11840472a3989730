namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>The signs each check reads.</summary>
public static class CheckTable
{
    /// <summary>The signs of each check.</summary>
    public static IReadOnlyList<CheckRow> Signs { get; } =
    [
        new(WearCheck.DepthsAcross, WearSign.ShoulderDifference, 0.12),
        new(WearCheck.DepthsAcross, WearSign.ShoulderDifferenceAcrossAxle, 0.15),
        new(WearCheck.DepthsAcross, WearSign.CrownDifference, 0.10),
        new(WearCheck.DepthsAcross, WearSign.CrownDifferenceAcrossAxle, 0.12),
        new(WearCheck.DepthsAcross, WearSign.SideWearRatio, 0.10),
        new(WearCheck.DepthsAcross, WearSign.AxleWearRatio, 0.10),
        new(WearCheck.DepthsRound, WearSign.SpreadAround, 0.07),
        new(WearCheck.DepthsRound, WearSign.OncePerTurnShare, 0.25),
        new(WearCheck.TreadTemperatures, WearSign.ShoulderTemperatureDifference, 4),
        new(WearCheck.TreadTemperatures, WearSign.CrownTemperatureDifference, 3.5),
        new(WearCheck.TreadTemperatures, WearSign.AxleTemperatureDifference, 4),
        new(WearCheck.TreadTemperatures, WearSign.TemperatureInWindow, 0.3),
        new(WearCheck.Pressures, WearSign.PressureDeviation, 1.5),
        new(WearCheck.Pressures, WearSign.PressureDifference, 2),
        new(WearCheck.Toe, WearSign.ToeSet, 0.04),
        new(WearCheck.Toe, WearSign.ThrustSet, 0.04),
        new(WearCheck.Camber, WearSign.CamberSet, 0.1),
        new(WearCheck.Camber, WearSign.CamberDifference, 0.15),
    ];

    /// <summary>The check that shows a mark.</summary>
    public static WearCheck CheckFor(WearMark mark) => mark switch
    {
        WearMark.RimOutsidePermitted => WearCheck.RimWidth,
        WearMark.MovedOrTurned or WearMark.TyresDiffer => WearCheck.TyreHistory,
        _ => WearCheck.LookAndFeel,
    };
}

/// <summary>A sign that a check reads, and how closely a person usually reads it.</summary>
/// <param name="Check">The check.</param>
/// <param name="Sign">The sign.</param>
/// <param name="Error">Standard deviation of the reading, in the sign's unit; judgement.</param>
public readonly record struct CheckRow(WearCheck Check, WearSign Sign, double Error);
