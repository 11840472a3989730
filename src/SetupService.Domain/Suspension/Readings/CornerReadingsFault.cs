namespace SetupService.Domain.Suspension.Readings;

/// <summary>Why readings make no corner.</summary>
public enum CornerReadingsFault
{
    /// <summary>Camber was read at fewer than two different heights.</summary>
    TooFewHeights,

    /// <summary>Camber readings at one height lie further apart than the gauge's error allows.</summary>
    CamberContradicts,

    /// <summary>Toe readings at one height lie further apart than the gauge's error allows.</summary>
    ToeContradicts,

    /// <summary>Camber readings at one place of the top mount lie further apart than the gauge's error allows.</summary>
    TopMountContradicts,

    /// <summary>A reading is not a finite number, or an error is below zero.</summary>
    NotANumber,
}
