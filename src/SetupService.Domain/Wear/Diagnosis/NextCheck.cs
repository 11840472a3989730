namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>The measurement that is expected to tell most.</summary>
/// <param name="Check">What to measure.</param>
/// <param name="ExpectedBits">How much it is expected to tell, bits; null where all that is told apart here is read already.</param>
public readonly record struct NextCheck(WearCheck Check, double? ExpectedBits);
