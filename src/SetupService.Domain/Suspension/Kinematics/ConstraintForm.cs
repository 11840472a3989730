namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>The forms a constraint between body and upright takes.</summary>
internal enum ConstraintForm
{
    /// <summary>A point of the body and one of the upright keep their distance: a link with a ball at each end.</summary>
    Link,

    /// <summary>A point of the upright stays in a plane of the body: a part of a pivot.</summary>
    BodyPlane,

    /// <summary>A point of the body stays in a plane of the upright: a part of a strut that slides on its axis.</summary>
    UprightPlane,

    /// <summary>A direction of the upright stays in a vertical plane of the body: toe held by setting the tie rod.</summary>
    Heading,
}
