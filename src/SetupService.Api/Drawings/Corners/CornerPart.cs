namespace SetupService.Api.Drawings.Corners;

/// <summary>What a line of a corner is part of; it decides how the line is drawn.</summary>
public enum CornerPart
{
    /// <summary>An arm or link.</summary>
    Arm,

    /// <summary>Tie rod or toe link.</summary>
    TieRod,

    /// <summary>A strut.</summary>
    Strut,

    /// <summary>A spring or damper.</summary>
    Spring,

    /// <summary>The upright, or the part of an arm that carries the wheel.</summary>
    Upright,

    /// <summary>The line an arm turns about.</summary>
    PivotAxis,
}
