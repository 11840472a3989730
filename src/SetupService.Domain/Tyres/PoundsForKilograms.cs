namespace SetupService.Domain.Tyres;

/// <summary>A load that is too much for its tyres in kilograms, and would be an ordinary one in pounds.</summary>
public static class PoundsForKilograms
{
    // 0.45359237 kg by definition.
    private const double KgPerPound = 0.45359237;

    /// <summary>True where a load beyond the tyres would be carried if it was given in pounds.</summary>
    /// <param name="loadKg">The load as given, kg.</param>
    /// <param name="capacityKg">What the tyres carry, kg.</param>
    public static bool MayBe(double loadKg, double capacityKg) => loadKg > capacityKg && loadKg * KgPerPound <= capacityKg;

    /// <summary>Asks for the unit, as a sentence.</summary>
    /// <param name="loadKg">The load as given, kg.</param>
    public static string Question(double loadKg) =>
        FormattableString.Invariant($"Was the load given in pounds where kilograms are asked for? {loadKg:0} lb are {loadKg * KgPerPound:0} kg, and the tyres would carry that.");
}
