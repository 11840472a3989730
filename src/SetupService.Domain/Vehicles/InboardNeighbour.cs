namespace SetupService.Domain.Vehicles;

/// <summary>The part of the car that the wheel comes nearest to inboard.</summary>
public enum InboardNeighbour
{
    /// <summary>The body, a liner, or a hose held by it: the wheel moves against it by all of its travel.</summary>
    Body,

    /// <summary>The strut that carries the upright: it moves with the wheel.</summary>
    Strut,

    /// <summary>A suspension arm or link: it follows the wheel in part.</summary>
    Arm,
}
