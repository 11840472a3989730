namespace SetupService.Domain.Answers;

/// <summary>A value the answer used although it was not given, listed so that it can be seen and replaced.</summary>
/// <param name="Input">JSON Pointer to where the value would stand in the request.</param>
/// <param name="Value">The number used, in the unit its member name ends in, or null where it is not a number.</param>
/// <param name="Text">The word or sentence used, or null where it is a number.</param>
/// <param name="Source">Where the value comes from.</param>
/// <param name="Reason">Why it was needed, and what it does to the answer.</param>
public sealed record Assumption(string Input, double? Value, string? Text, string Source, string Reason);
