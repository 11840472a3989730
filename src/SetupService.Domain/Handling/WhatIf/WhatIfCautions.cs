using SetupService.Domain.Answers;

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
}
