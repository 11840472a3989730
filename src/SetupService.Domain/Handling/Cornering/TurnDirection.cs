namespace SetupService.Domain.Handling.Cornering;

/// <summary>Which way the car turns.</summary>
public enum TurnDirection
{
    /// <summary>To the left; the right wheels are the outer ones.</summary>
    Left,

    /// <summary>To the right; the left wheels are the outer ones.</summary>
    Right,
}
