using Microsoft.CodeAnalysis.Text;

namespace SetupService.Mutants;

/// <summary>One change of one place of the domain's code.</summary>
/// <param name="Room">Folder of src/SetupService.Domain.</param>
/// <param name="File">Path from the checkout.</param>
/// <param name="Start">First character changed.</param>
/// <param name="Length">Characters changed; 0 where text is put in.</param>
/// <param name="Text">What stands there instead.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Told">The line as it stands and as changed.</param>
internal sealed record Mutant(string Room, string File, int Start, int Length, string Text, int Line, string Told)
{
    public TextSpan Span => new(Start, Length);

    public string Key => $"{File}: {Told}";

    public string Apply(string source) => string.Concat(source.AsSpan(0, Start), Text, source.AsSpan(Start + Length));
}

/// <summary>A mutant, whether the build of many holds it, and the tests that come by its place, the quickest first.</summary>
internal sealed record Trial(Mutant Mutant, bool IsHeld, IReadOnlyList<TimedTest> Tests);

/// <summary>A test method of a class, with the processor time it took over unchanged code.</summary>
internal sealed record TimedTest(string Class, string Method, double Seconds)
{
    public string Name => $"{Class}.{Method}";
}
