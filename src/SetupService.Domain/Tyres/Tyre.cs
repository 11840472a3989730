namespace SetupService.Domain.Tyres;

/// <summary>A tyre on the car: what its sidewall says, and what the owner knows beyond that. Unknown figures are null.</summary>
/// <param name="Marking">The sidewall marking.</param>
public sealed record Tyre(TyreMarking Marking)
{
    /// <summary>Mass of the tyre alone, in kg.</summary>
    public double? MassKg { get; init; }

    /// <summary>Cold gauge pressure, in kPa.</summary>
    public double? PressureKpa { get; init; }

    /// <summary>How far the rim protector stands out beyond the section width at each side, in mm.</summary>
    public double? RimProtectorMm { get; init; }

    /// <summary>Vertical rate at the working load and pressure, in N/mm.</summary>
    public double? VerticalRateNPerMm { get; init; }

    /// <summary>Side force per degree of slip angle at the working load, in N/deg.</summary>
    public double? CorneringStiffnessNPerDeg { get; init; }
}
