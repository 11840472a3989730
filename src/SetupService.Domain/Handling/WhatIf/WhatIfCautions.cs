using SetupService.Domain.Answers;

namespace SetupService.Domain.Handling.WhatIf;

/// <summary>The cautions that go with a comparison of changes.</summary>
public static class WhatIfCautions
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Caution> All { get; } =
    [
        new("oneChangeAtATime", "A change of springs, bars or tyres moves the balance of the car. Make one at a time, where you can, and find its limit again slowly and only where that is lawful and safe."),
        CommonCautions.SpringsUnderLoad,
        new("localLaw", "Whether a change is allowed on the road is decided by local law and by whoever is licensed to approve changes; this answer is not an approval. Alignment, headlamps and driver aids are to be set again after it."),
    ];
}
