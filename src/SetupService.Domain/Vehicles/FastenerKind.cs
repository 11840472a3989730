namespace SetupService.Domain.Vehicles;

/// <summary>How the wheel is held to the hub.</summary>
public enum FastenerKind
{
    /// <summary>Bolts screwed into the hub.</summary>
    Bolt,

    /// <summary>Nuts on studs that stand in the hub.</summary>
    Nut,
}
