using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace SetupService.Mutants;

/// <summary>
/// One build with many mutants: the body of a member stands there once for each of its mutants and once unchanged, and a number chosen
/// before the tests begin says which of them runs. What must be a constant has no such choice and is built by itself.
/// </summary>
internal sealed class Switches
{
    public const string Code = """
        namespace SetupService.Mutants;
        public static class Choice
        {
            public static int Chosen = -1;
            public static bool Is(int number) => Chosen == number;
        }
        """;

    private readonly DomainCode _code;
    private readonly IReadOnlyList<(Mutant Mutant, int At, SyntaxNode Home)> _housed;

    public Switches(DomainCode code, IReadOnlyList<Mutant> mutants)
    {
        _code = code;
        _housed = [.. mutants.Select((mutant, at) => (mutant, at, HomeOf(mutant)!)).Where(each => each.Item3 is not null)];
    }

    /// <summary>Numbers of the mutants this build holds.</summary>
    public IReadOnlySet<int> Held => _housed.Select(each => each.At).ToHashSet();

    public byte[] Assembly() => _code.Assembly(_housed.GroupBy(each => each.Mutant.File).ToDictionary(file => file.Key, file =>
        _code.Tree(file.Key).GetText().WithChanges(file.GroupBy(each => each.Home).OrderBy(home => home.Key.SpanStart).Select(home =>
            Change(home.Key, [.. home.Select(each => (each.At, each.Mutant))]))).ToString()), Code);

    private SyntaxNode? HomeOf(Mutant mutant)
    {
        foreach (var node in _code.Tree(mutant.File).GetRoot().FindToken(mutant.Start).Parent!.AncestorsAndSelf())
        {
            switch (node)
            {
                case ParameterSyntax or ConstructorInitializerSyntax or InitializerExpressionSyntax { Parent: EqualsValueClauseSyntax }:
                    return null;
                case BlockSyntax { Parent: BaseMethodDeclarationSyntax or AccessorDeclarationSyntax }:
                case ArrowExpressionClauseSyntax { Parent: BaseMethodDeclarationSyntax or AccessorDeclarationSyntax or BasePropertyDeclarationSyntax }:
                    return node;
                case EqualsValueClauseSyntax { Parent: PropertyDeclarationSyntax }:
                case EqualsValueClauseSyntax { Parent: VariableDeclaratorSyntax { Parent.Parent: FieldDeclarationSyntax field } } when !field.Modifiers.Any(SyntaxKind.ConstKeyword):
                    return node;
                default:
                    break;
            }
        }

        return null;
    }

    private TextChange Change(SyntaxNode home, IReadOnlyList<(int At, Mutant Mutant)> mutants)
    {
        if (home is EqualsValueClauseSyntax start)
            return new TextChange(start.Value.Span, string.Concat(mutants.Select(each => $"{Is(each.At)} ? ({Text(start.Value, each.Mutant)}) : ")) + $"({start.Value})");
        if (home is BlockSyntax)
            return new TextChange(home.Span, $"{{ {string.Concat(mutants.Select(each => $"if ({Is(each.At)}) {Text(home, each.Mutant)} else "))}{home} }}");

        var arrow = (ArrowExpressionClauseSyntax)home;
        var isProperty = arrow.Parent is BasePropertyDeclarationSyntax;
        var isVoid = !isProperty && _code.Model(_code.FileOf(home.SyntaxTree)).GetDeclaredSymbol(arrow.Parent!) is IMethodSymbol { ReturnsVoid: true };
        var (before, after) = (isVoid ? "{ " : "{ return ", "\n; }");
        var body = string.Concat(mutants.Select(each => $"if ({Is(each.At)}) {before}{Text(arrow.Expression, each.Mutant)}{after} else ")) + before + arrow.Expression + after;
        return new TextChange(TextSpan.FromBounds(arrow.SpanStart, arrow.Parent!.Span.End), isProperty ? $"{{ get {{ {body} }} }}" : $"{{ {body} }}");
    }

    private static string Text(SyntaxNode node, Mutant mutant) => (mutant with { Start = mutant.Start - node.SpanStart }).Apply(node.ToString());

    private static string Is(int number) => string.Create(CultureInfo.InvariantCulture, $"global::SetupService.Mutants.Choice.Is({number})");
}
