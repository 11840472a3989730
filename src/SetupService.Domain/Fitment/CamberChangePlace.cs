namespace SetupService.Domain.Fitment;

/// <summary>Where static camber is changed, and so about which point the wheel turns.</summary>
public enum CamberChangePlace
{
    /// <summary>The strut's top is moved; strut, upright and wheel turn together about the lower ball joint.</summary>
    StrutTop,

    /// <summary>The upright is turned on the strut; the wheel turns against the strut.</summary>
    StrutToKnuckle,

    /// <summary>The lower ball joint is moved; the wheel turns about the strut's top or the upper joint.</summary>
    LowerJoint,
}
