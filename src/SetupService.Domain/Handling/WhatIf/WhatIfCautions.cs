using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.WhatIf;

/// <summary>The cautions that go with a comparison of changes.</summary>
public static class WhatIfCautions
{
    /// <summary>All.</summary>
    public static IReadOnlyList<Caution> All { get; } =
    [
        new("oneChangeAtATime", "Make one change at a time where you can: springs, bars and tyres move the balance of the car. Find its limit again slowly, and only where that is lawful and safe."),
        CommonCautions.SpringsUnderLoad,
        new("localLaw", "Local law, and whoever is licensed to approve changes, decide whether a change is allowed on the road; this answer is not an approval. Have alignment, headlamps and driver aids set again after it."),
    ];

    /// <summary>
    /// All, with those about inputs that can hardly both be right: of the car as given, and, at the change that brings them, of each changed car
    /// and of the car with all changes.
    /// </summary>
    /// <param name="given">The car as given.</param>
    /// <param name="changed">The car with each change alone, in the order of the changes.</param>
    /// <param name="together">The car with all changes.</param>
    /// <param name="units">Units of the sentences.</param>
    public static IReadOnlyList<Caution> For(Vehicle given, IReadOnlyList<Vehicle> changed, Vehicle together, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(changed);
        ArgumentNullException.ThrowIfNull(together);
        var known = new HashSet<Caution>(given.SuspensionCautions(units));
        List<Caution> list = [.. All, .. given.SuspensionCautions(units)];
        for (var i = 0; i < changed.Count; i++) AddNew(changed[i], i);
        AddNew(together, changed.Count - 1);
        return list;

        // The same caution reads alike in every car, so what is known is compared as if each car stood at the same place of the body.
        void AddNew(Vehicle car, int change)
        {
            var placed = car.SuspensionCautions(units, FormattableString.Invariant($"/changes/{change}/vehicle"));
            var alike = car.SuspensionCautions(units);
            for (var i = 0; i < alike.Count; i++)
            {
                if (known.Add(alike[i])) list.Add(placed[i]);
            }
        }
    }
}
