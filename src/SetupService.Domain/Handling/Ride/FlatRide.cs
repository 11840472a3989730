namespace SetupService.Domain.Handling.Ride;

/// <summary>Whether the rear swings a little faster than the front, so that both ends fall into step after a bump that meets the front first.</summary>
/// <param name="FrequencyRatio">Rear ride frequency by that of the front.</param>
public readonly record struct FlatRide(double FrequencyRatio)
{
    /// <summary>Least ratio of a flat ride; from memory (Olley, as Milliken and Gillespie quote him: front some 30 % softer).</summary>
    public const double Least = 1.05;

    /// <summary>Most; from memory, as <see cref="Least"/>.</summary>
    public const double Most = 1.3;

    /// <summary>Whether it lies in that range.</summary>
    public bool IsFlat => FrequencyRatio is >= Least and <= Most;
}
