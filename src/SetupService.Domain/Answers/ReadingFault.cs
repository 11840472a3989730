namespace SetupService.Domain.Answers;

/// <summary>Why a text a person typed could not be read, and which part of it.</summary>
/// <param name="Part">The piece of the text that could not be read, as it was typed; empty where something is missing.</param>
/// <param name="Position">Zero-based index of the piece in the text.</param>
/// <param name="Message">A sentence for a person, quoting the piece and saying what was expected.</param>
public sealed record ReadingFault(string Part, int Position, string Message);
