using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace SetupService.Mutants;

/// <summary>
/// Lays a probe before the statement of each mutant: the build with them tells which test comes by which place. A mutant of a constant
/// has its probes where that is read. Without any place to put one, a mutant has none and every test is asked.
/// </summary>
internal sealed class Probes
{
    public const string Code = """
        namespace SetupService.Mutants;
        public static class Probe
        {
            public static bool[] Seen = [];
            public static bool[] SeenAtStart = [];
            public static bool IsHit(int place)
            {
                Hit(place);
                return true;
            }
            public static void Hit(int place)
            {
                if (Seen[place]) return;
                Seen[place] = true;
                foreach (var frame in new System.Diagnostics.StackTrace().GetFrames())
                    if (frame.GetMethod() is { Name: ".cctor" }) { SeenAtStart[place] = true; return; }
            }
        }
        """;

    private readonly DomainCode _code;
    private readonly Dictionary<SyntaxNode, int> _places = [];
    private readonly List<(string File, int At, int Rank, int Removed, string Text)> _edits = [];

    public Probes(DomainCode code, IReadOnlyList<Mutant> mutants)
    {
        _code = code;
        Of = [.. mutants.Select(PlacesOf)];
    }

    /// <summary>For each mutant its places; empty: unknown, ask every test.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Of { get; }

    public int Count => _places.Count;

    public byte[] Assembly() => _code.Assembly(_edits.GroupBy(edit => edit.File).ToDictionary(group => group.Key, group => Edited(group.Key, group)), Code);

    private string Edited(string file, IEnumerable<(string File, int At, int Rank, int Removed, string Text)> edits)
    {
        var text = _code.Tree(file).ToString();
        foreach (var edit in edits.OrderByDescending(edit => edit.At).ThenByDescending(edit => edit.Rank))
            text = text[..edit.At] + edit.Text + text[(edit.At + edit.Removed)..];
        return text;
    }

    private int[] PlacesOf(Mutant mutant) =>
        [.. PlacesOf(mutant.File, _code.Tree(mutant.File).GetRoot().FindToken(mutant.Start).Parent!, []) ?? []];

    /// <summary>Where the node runs; of a constant: where it is read. Null: cannot be told.</summary>
    private HashSet<int>? PlacesOf(string file, SyntaxNode node, HashSet<ISymbol> asked)
    {
        if (PlaceOf(file, node) is { } place)
            return [place];
        var model = _code.Model(file);
        var owner = node.AncestorsAndSelf().FirstOrDefault(each => each is VariableDeclaratorSyntax or PropertyDeclarationSyntax);
        if (owner is null || model.GetDeclaredSymbol(owner) is not { } member)
            return null;
        if (!asked.Add(member))
            return [];
        var places = new HashSet<int>();
        foreach (var (reader, name) in Readers(member))
        {
            if (PlacesOf(reader, name, asked) is not { } found)
                return null;
            places.UnionWith(found);
        }

        return places;
    }

    private IEnumerable<(string File, SyntaxNode Name)> Readers(ISymbol member)
    {
        foreach (var file in _code.Files.Where(each => _code.Tree(each).ToString().Contains(member.Name, StringComparison.Ordinal)))
        {
            var model = _code.Model(file);
            foreach (var name in _code.Tree(file).GetRoot().DescendantNodes().OfType<SimpleNameSyntax>().Where(name => name.Identifier.ValueText == member.Name))
            {
                if (SymbolEqualityComparer.Default.Equals(model.GetSymbolInfo(name).Symbol?.OriginalDefinition, member.OriginalDefinition))
                    yield return (file, name);
            }
        }
    }

    private int? PlaceOf(string file, SyntaxNode node)
    {
        foreach (var each in node.AncestorsAndSelf())
        {
            if (_places.TryGetValue(each, out var known))
                return known;
            if (each is AttributeListSyntax or ParameterListSyntax { Parent: BaseMethodDeclarationSyntax or TypeDeclarationSyntax })
                return null;
            if (each is StatementSyntax and not (BlockSyntax or LocalFunctionStatementSyntax))
                return Statement(file, (StatementSyntax)each);
            if (each is ArrowExpressionClauseSyntax arrow)
                return Arrow(file, arrow);
            if (each is LambdaExpressionSyntax { ExpressionBody: { } body } lambda && body.Span.Contains(node.Span))
                return Lambda(file, lambda, body);
            if (each is EqualsValueClauseSyntax { Value: not InitializerExpressionSyntax } start && IsSetAtStart(start))
                return Start(file, start);
            if (each is BaseMethodDeclarationSyntax or AccessorDeclarationSyntax or TypeDeclarationSyntax)
                return null;
        }

        return null;
    }

    private int New(SyntaxNode anchor) => _places[anchor] = _places.Count;

    private int Statement(string file, StatementSyntax statement)
    {
        var place = New(statement);
        var isOfBlock = statement.Parent is BlockSyntax or SwitchSectionSyntax;
        Put(file, statement, isOfBlock ? $"{Hit(place)} " : $"{{ {Hit(place)} ", isOfBlock ? "" : " }");
        return place;
    }

    private int Lambda(string file, LambdaExpressionSyntax lambda, ExpressionSyntax body)
    {
        var place = New(lambda);
        var isVoid = ((IMethodSymbol)_code.Model(file).GetSymbolInfo(lambda).Symbol!).ReturnsVoid;
        Put(file, body, $"{{ {Hit(place)} {Return(isVoid, body)}", "; }");
        return place;
    }

    private int Arrow(string file, ArrowExpressionClauseSyntax arrow)
    {
        var place = New(arrow);
        var model = _code.Model(file);
        var isProperty = arrow.Parent is PropertyDeclarationSyntax or IndexerDeclarationSyntax;
        var isVoid = !isProperty && model.GetDeclaredSymbol(arrow.Parent!) is IMethodSymbol { ReturnsVoid: true };
        var semicolon = arrow.Parent!.GetLastToken();
        var start = arrow.ArrowToken.SpanStart;
        _edits.Add((file, start, -arrow.Span.Length, 2, $"{(isProperty ? "{ get " : "")}{{ {Hit(place)} {Return(isVoid, arrow.Expression)}"));
        _edits.Add((file, semicolon.Span.End, -int.MaxValue + arrow.Span.Length, 0, isProperty ? " } }" : " }"));
        return place;
    }

    private static bool IsSetAtStart(EqualsValueClauseSyntax start) =>
        start.Parent is PropertyDeclarationSyntax || (start.Parent?.Parent?.Parent is FieldDeclarationSyntax field && !field.Modifiers.Any(SyntaxKind.ConstKeyword));

    private int Start(string file, EqualsValueClauseSyntax start)
    {
        var place = New(start);
        Put(file, start.Value, $"global::SetupService.Mutants.Probe.IsHit({place}) ? (", ") : throw new global::System.InvalidOperationException()");
        return place;
    }

    private static string Return(bool isVoid, ExpressionSyntax body) => body is ThrowExpressionSyntax || isVoid ? "" : "return ";

    private static string Hit(int place) => $"global::SetupService.Mutants.Probe.Hit({place});";

    /// <summary>Text before and after a node; where several meet at a place, ends stand before starts, the inner end first, the outer start first.</summary>
    private void Put(string file, SyntaxNode node, string before, string after)
    {
        _edits.Add((file, node.SpanStart, -node.Span.Length, 0, before));
        if (after.Length > 0)
            _edits.Add((file, node.Span.End, -int.MaxValue + node.Span.Length, 0, after));
    }
}
