namespace SetupService.Domain.Wear.Readings;

/// <summary>Why readings cannot all be of one tyre.</summary>
public enum DepthReadingFault
{
    /// <summary>The kilometres are fewer than at the reading before.</summary>
    RoadRunsBackwards,

    /// <summary>The laps are fewer than at the reading before.</summary>
    LapsRunBackwards,

    /// <summary>The tread is deeper than at the reading before by more than the gauge's error explains.</summary>
    DepthGrows,

    /// <summary>The tread is deeper than when it was new by more than the gauge's error explains.</summary>
    AboveNew,
}
