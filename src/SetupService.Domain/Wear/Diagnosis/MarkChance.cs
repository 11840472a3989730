namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>How likely a cause makes a mark that a person who looks also reports.</summary>
/// <param name="Cause">The cause; <see cref="WearCause.Normal"/> = without any.</param>
/// <param name="Mark">The mark.</param>
/// <param name="Probability">The chance by that cause alone.</param>
/// <param name="Source">Where it comes from.</param>
public readonly record struct MarkChance(WearCause Cause, WearMark Mark, double Probability, string Source);
