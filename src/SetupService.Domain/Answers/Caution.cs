namespace SetupService.Domain.Answers;

/// <summary>A warning that belongs to an answer because acting on the answer can hurt somebody.</summary>
/// <param name="Code">Stable word that names the caution.</param>
/// <param name="Text">The caution as a sentence.</param>
public sealed record Caution(string Code, string Text);
