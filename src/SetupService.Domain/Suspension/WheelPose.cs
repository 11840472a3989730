namespace SetupService.Domain.Suspension;

/// <summary>What the suspension makes of a wheel at one travel and steer, in the axes of the body and as a left wheel. Lengths in mm.</summary>
public readonly record struct WheelPose
{
    /// <summary>Camber against the body, degrees.</summary>
    public required double CamberDeg { get; init; }

    /// <summary>Change of that camber per mm of wheel travel, degrees, to first order: nothing where camber is told by readings.</summary>
    public required double CamberPerTravel { get; init; }

    /// <summary>Change of that camber per unit of steer input, degrees, to first order: without what added caster makes of it.</summary>
    public required double CamberPerSteer { get; init; }

    /// <summary>Heading against the body, degrees, positive = left; toe included.</summary>
    public required double HeadingDeg { get; init; }

    /// <summary>Change of heading per mm of wheel travel, degrees, to first order: nothing where toe is told by readings.</summary>
    public required double HeadingPerTravel { get; init; }

    /// <summary>Change of heading per unit of steer input, degrees.</summary>
    public required double HeadingPerSteer { get; init; }

    /// <summary>How far the contact of the undeflected tyre stands above where it stood at ride height.</summary>
    public required double ContactRiseMm { get; init; }

    /// <summary>Distance of the contact from the car's centre plane.</summary>
    public required double HalfTrackMm { get; init; }

    /// <summary>Movement of the contact outboard per mm of its rise, against the body, or against the ground where <see cref="HoldsInRoll"/>.</summary>
    public required double OutboardSlope { get; init; }

    /// <summary>Rise of the contact per mm of wheel travel.</summary>
    public required double RisePerTravel { get; init; }

    /// <summary>Rise of the contact per unit of steer input, mm.</summary>
    public required double RisePerSteer { get; init; }

    /// <summary>Movement of the contact outboard per unit of steer input, mm.</summary>
    public required double OutboardPerSteer { get; init; }

    /// <summary>Movement of the upright's point at the contact forward per mm of wheel travel: what braking meets, its torque held by the upright.</summary>
    public required double ContactForwardPerTravel { get; init; }

    /// <summary>Movement of the wheel centre forward per mm of wheel travel: what driving through half-shafts meets.</summary>
    public required double CentreForwardPerTravel { get; init; }

    /// <summary>Spring travel by wheel travel.</summary>
    public required double SpringMotionRatio { get; init; }

    /// <summary>How far the spring is compressed since ride height; negative = extended.</summary>
    public required double SpringTravelMm { get; init; }

    /// <summary>Spring travel per unit of steer input, mm.</summary>
    public required double SpringTravelPerSteer { get; init; }

    /// <summary>Damper travel by wheel travel.</summary>
    public required double DamperMotionRatio { get; init; }

    /// <summary>True where the roll centre is taken to stay where it is stated while the body rolls: no points say how it moves.</summary>
    public required bool HoldsInRoll { get; init; }

    /// <summary>True where the wheel is beyond what was read of it, carried on for 20 mm: camber and toe are then held at their last known values, which are no answer.</summary>
    public bool IsBeyondReadings { get; init; }
}
