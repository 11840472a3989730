using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Emit;

namespace SetupService.Mutants;

/// <summary>The domain's source, read once, compiled as often as asked in memory; the checkout is not touched.</summary>
internal sealed class DomainCode
{
    public const string Folder = "src/SetupService.Domain";
#if DEBUG
    private const string Configuration = "Debug";
#else
    private const string Configuration = "Release";
#endif
    private readonly CSharpCompilation _whole;
    private readonly Dictionary<string, SyntaxTree> _trees = [];

    public DomainCode(string root)
    {
        var options = new CSharpParseOptions(LanguageVersion.Latest);
        var folder = Path.Combine(root, Folder);
        var built = Path.Combine(folder, "obj", Configuration, "net10.0");
        foreach (var path in Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            var file = Path.GetRelativePath(root, path).Replace('\\', '/');
            if (!file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal))
                _trees[file] = CSharpSyntaxTree.ParseText(File.ReadAllText(path), options, path);
        }

        var ofBuild = new[] { "SetupService.Domain.AssemblyInfo.cs", "SetupService.Domain.GlobalUsings.g.cs" }
            .Select(name => CSharpSyntaxTree.ParseText(File.ReadAllText(Path.Combine(built, name)), options));
        var runtime = Path.GetDirectoryName(typeof(object).Assembly.Location)!;
        var libraries = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(path => Path.GetDirectoryName(path) == runtime).Select(path => MetadataReference.CreateFromFile(path));
        var settings = new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable,
            optimizationLevel: OptimizationLevel.Release, concurrentBuild: false, generalDiagnosticOption: ReportDiagnostic.Suppress);
        var written = CSharpCompilation.Create("SetupService.Domain", [.. _trees.Values, .. ofBuild], libraries, settings);
        CSharpGeneratorDriver.Create([RegexGenerator(runtime)], parseOptions: options).RunGeneratorsAndUpdateCompilation(written, out var whole, out _);
        _whole = (CSharpCompilation)whole;
    }

    public IEnumerable<string> Rooms => _trees.Keys.Select(RoomOf).Distinct();

    public IEnumerable<Mutant> Mutants(string room) => _trees.Where(entry => RoomOf(entry.Key) == room)
        .SelectMany(entry => MutantFinder.In(entry.Value, Model(entry.Key), room, entry.Key));

    public SyntaxTree Tree(string file) => _trees[file];

    public string FileOf(SyntaxTree tree) => _trees.First(entry => entry.Value == tree).Key;

    public SemanticModel Model(string file) => _whole.GetSemanticModel(_trees[file]);

    public IEnumerable<string> Files => _trees.Keys;

    public bool Compiles(Mutant mutant)
    {
        var tree = Changed(mutant);
        var changed = _whole.ReplaceSyntaxTree(_trees[mutant.File], tree);
        return !tree.GetDiagnostics().Concat(changed.GetSemanticModel(tree).GetDiagnostics()).Any(found => found.Severity == DiagnosticSeverity.Error);
    }

    /// <summary>The assembly with this one change; null where it does not compile.</summary>
    public byte[]? Assembly(Mutant mutant) => Emit(_whole.ReplaceSyntaxTree(_trees[mutant.File], Changed(mutant)), out _);

    /// <summary>The assembly with other text for some files and files of its own.</summary>
    public byte[] Assembly(IReadOnlyDictionary<string, string> texts, string added)
    {
        var changed = _whole;
        foreach (var (file, text) in texts)
            changed = changed.ReplaceSyntaxTree(_trees[file], _trees[file].WithChangedText(Microsoft.CodeAnalysis.Text.SourceText.From(text)));
        changed = changed.AddSyntaxTrees(CSharpSyntaxTree.ParseText(added, (CSharpParseOptions)_trees.Values.First().Options));
        return Emit(changed, out var result)
            ?? throw new InvalidOperationException(string.Join('\n', result.Diagnostics.Where(found => found.Severity == DiagnosticSeverity.Error).Take(10)));
    }

    private SyntaxTree Changed(Mutant mutant)
    {
        var tree = _trees[mutant.File];
        return tree.WithChangedText(tree.GetText().WithChanges(new Microsoft.CodeAnalysis.Text.TextChange(mutant.Span, mutant.Text)));
    }

    private static string RoomOf(string file) => file[(Folder.Length + 1)..].Split('/')[0];

    private static byte[]? Emit(CSharpCompilation compilation, out EmitResult result)
    {
        using var stream = new MemoryStream();
        result = compilation.Emit(stream);
        return result.Success ? stream.ToArray() : null;
    }

    /// <summary>The framework's own generator for the domain's patterns, from the reference pack of the SDK in use.</summary>
    private static ISourceGenerator RegexGenerator(string runtime)
    {
        var pack = Path.Combine(runtime, "../../../packs/Microsoft.NETCore.App.Ref");
        var path = Directory.EnumerateFiles(pack, "System.Text.RegularExpressions.Generator.dll", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Last();
        var type = System.Reflection.Assembly.LoadFrom(path).GetType("System.Text.RegularExpressions.Generator.RegexGenerator", throwOnError: true)!;
        return ((IIncrementalGenerator)Activator.CreateInstance(type, nonPublic: true)!).AsSourceGenerator();
    }
}
