namespace SetupService.Domain.Vehicles;

/// <summary>The shape of a car's body.</summary>
public enum CarBody
{
    /// <summary>Four doors and a boot.</summary>
    Sedan,

    /// <summary>Two doors and a low roof.</summary>
    Coupe,

    /// <summary>A tailgate, and hardly anything behind the rear axle.</summary>
    Hatchback,

    /// <summary>A tailgate and a long roof.</summary>
    Wagon,

    /// <summary>A roof that opens.</summary>
    Convertible,

    /// <summary>A tall car with ground clearance.</summary>
    Suv,

    /// <summary>A cab and an open bed.</summary>
    Pickup,

    /// <summary>A van or minivan.</summary>
    Van,
}
