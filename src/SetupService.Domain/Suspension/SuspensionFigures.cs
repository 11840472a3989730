namespace SetupService.Domain.Suspension;

/// <summary>Groups of figures a suspension may tell by itself.</summary>
[Flags]
public enum SuspensionFigures
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>How camber goes with travel.</summary>
    CamberOverTravel = 1,

    /// <summary>Roll centre, and how the contact moves sideways.</summary>
    RollCentre = 2,

    /// <summary>Spring motion ratio over travel.</summary>
    SpringMotionRatio = 4,

    /// <summary>Caster and inclination of the steering axis, over travel and rack.</summary>
    SteeringAxis = 8,

    /// <summary>How far a rack turns each wheel.</summary>
    SteeringLinkage = 16,

    /// <summary>Distance of the contact from the car's centre plane.</summary>
    Track = 32,
}
