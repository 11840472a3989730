using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Readings;

/// <summary>All that is known of a car's tyres and their wear.</summary>
public sealed record WearCase
{
    /// <summary>The car, as far as it is known.</summary>
    public Vehicle Vehicle { get; init; } = new();

    /// <summary>What the tyres did.</summary>
    public WearUse Use { get; init; }

    /// <summary>What was read, at most one reading a position.</summary>
    public required IReadOnlyList<TyreReading> Tyres { get; init; }

    /// <summary>The tyres that must be replaced before driving; empty where none is known to be.</summary>
    public IReadOnlyList<WheelPosition> Unusable { get; init; } = [];

    /// <summary>The reading of one tyre; null where there is none.</summary>
    public TyreReading? At(WheelPosition position)
    {
        foreach (var one in Tyres)
        {
            if (one.Position == position) return one;
        }

        return null;
    }
}
