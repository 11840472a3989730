namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>A sign that a check would tell, and how closely a person usually reads it.</summary>
/// <param name="Check">The check.</param>
/// <param name="Sign">The sign.</param>
/// <param name="Error">Standard deviation of the reading, in the sign's unit; judgement.</param>
public readonly record struct CheckRow(WearCheck Check, WearSign Sign, double Error);
