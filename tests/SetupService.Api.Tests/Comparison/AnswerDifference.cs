namespace SetupService.Api.Tests.Comparison;

/// <summary>What kind of difference two answers have at one place.</summary>
internal enum DifferenceKind
{
    /// <summary>A member, an item or a JSON type is there on one side only.</summary>
    Structure,

    /// <summary>A string, a boolean or the words of a text differ.</summary>
    Text,

    /// <summary>A number moved by more than the tolerance.</summary>
    Number,
}

/// <summary>One place at which a new answer differs from the kept one.</summary>
/// <param name="Path">JSON Pointer of the place; "" is the whole answer.</param>
/// <param name="Kind">What differs.</param>
/// <param name="Kept">The kept value as text, "(none)" where there was none.</param>
/// <param name="Now">The new value as text, "(none)" where there is none.</param>
/// <param name="Amount">How far a number moved, in its own unit, not negative; 0 for the other kinds.</param>
internal sealed record AnswerDifference(string Path, DifferenceKind Kind, string Kept, string Now, double Amount = 0)
{
    public override string ToString() => $"{(Path.Length == 0 ? "(whole answer)" : Path)}: {Short(Kept)} -> {Short(Now)}";

    private static string Short(string text) => text.Length <= 160 ? text : string.Concat(text.AsSpan(0, 157), "...");
}
