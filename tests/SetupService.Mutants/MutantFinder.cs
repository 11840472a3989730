using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace SetupService.Mutants;

/// <summary>
/// What is changed into what: relations and their limits, logic, arithmetic, conditions, numbers. Texts, attributes and what is thrown
/// are left alone: no answer depends on them, or a test of each would only repeat it.
/// </summary>
internal static class MutantFinder
{
    private static readonly Dictionary<SyntaxKind, string> Operators = new()
    {
        [SyntaxKind.LessThanToken] = "<=",
        [SyntaxKind.LessThanEqualsToken] = "<",
        [SyntaxKind.GreaterThanToken] = ">=",
        [SyntaxKind.GreaterThanEqualsToken] = ">",
        [SyntaxKind.EqualsEqualsToken] = "!=",
        [SyntaxKind.ExclamationEqualsToken] = "==",
        [SyntaxKind.AmpersandAmpersandToken] = "||",
        [SyntaxKind.BarBarToken] = "&&",
        [SyntaxKind.PlusToken] = "-",
        [SyntaxKind.MinusToken] = "+",
        [SyntaxKind.AsteriskToken] = "/",
        [SyntaxKind.SlashToken] = "*",
        [SyntaxKind.PlusEqualsToken] = "-=",
        [SyntaxKind.MinusEqualsToken] = "+=",
        [SyntaxKind.AsteriskEqualsToken] = "/=",
        [SyntaxKind.SlashEqualsToken] = "*=",
        [SyntaxKind.PlusPlusToken] = "--",
        [SyntaxKind.MinusMinusToken] = "++",
        [SyntaxKind.AndKeyword] = "or",
        [SyntaxKind.OrKeyword] = "and",
    };

    public static IEnumerable<Mutant> In(SyntaxTree tree, SemanticModel model, string room, string file)
    {
        var text = tree.GetText();
        foreach (var node in tree.GetRoot().DescendantNodes(IsComputing).Where(IsComputing))
        {
            foreach (var (span, with) in Changes(node, model))
            {
                var line = text.Lines.GetLineFromPosition(span.Start);
                var before = line.ToString();
                var end = Math.Min(span.End, line.End);
                var after = before[..(span.Start - line.Start)] + with + before[(end - line.Start)..];
                yield return new Mutant(room, file, span.Start, span.Length, with, line.LineNumber + 1, $"{before.Trim()} -> {after.Trim()}");
            }
        }
    }

    private static bool IsComputing(SyntaxNode node) =>
        node is not (AttributeListSyntax or InterpolatedStringExpressionSyntax or ThrowExpressionSyntax or ThrowStatementSyntax or UsingDirectiveSyntax);

    private static IEnumerable<(TextSpan Span, string With)> Changes(SyntaxNode node, SemanticModel model) => node switch
    {
        BinaryExpressionSyntax binary when model.GetTypeInfo(binary).Type?.SpecialType != SpecialType.System_String => Changed(binary.OperatorToken),
        AssignmentExpressionSyntax assigned when model.GetTypeInfo(assigned).Type?.SpecialType != SpecialType.System_String => Changed(assigned.OperatorToken),
        RelationalPatternSyntax relation => Changed(relation.OperatorToken),
        BinaryPatternSyntax pattern => Changed(pattern.OperatorToken),
        PostfixUnaryExpressionSyntax after => Changed(after.OperatorToken),
        PrefixUnaryExpressionSyntax before when before.IsKind(SyntaxKind.LogicalNotExpression) || before.IsKind(SyntaxKind.UnaryMinusExpression) => [(before.OperatorToken.Span, "")],
        UnaryPatternSyntax not => [(TextSpan.FromBounds(not.OperatorToken.SpanStart, not.Pattern.SpanStart), "")],
        InvocationExpressionSyntax call => Called(call),
        LiteralExpressionSyntax literal => Changed(literal),
        IfStatementSyntax branch when branch.Condition is not (BinaryExpressionSyntax or PrefixUnaryExpressionSyntax) => Negated(branch.Condition),
        ConditionalExpressionSyntax choice when choice.Condition is not (BinaryExpressionSyntax or PrefixUnaryExpressionSyntax) => Negated(choice.Condition),
        _ => [],
    };

    private static IEnumerable<(TextSpan, string)> Changed(SyntaxToken sign) => Operators.TryGetValue(sign.Kind(), out var other) ? [(sign.Span, other)] : [];

    private static IEnumerable<(TextSpan, string)> Called(InvocationExpressionSyntax call) => call.Expression.ToString() switch
    {
        "Math.Max" => [(call.Expression.Span, "Math.Min")],
        "Math.Min" => [(call.Expression.Span, "Math.Max")],
        "Math.Abs" => [(call.Expression.Span, "")],
        _ => [],
    };

    private static IEnumerable<(TextSpan, string)> Changed(LiteralExpressionSyntax literal) => literal.Token.Value switch
    {
        true => [(literal.Span, "false")],
        false => [(literal.Span, "true")],
        int whole => [(literal.Span, (whole + 1).ToString(CultureInfo.InvariantCulture))],
        0.0 => [(literal.Span, "1.0")],
        double number => [(literal.Span, (number * 1.1).ToString("0.0###############E+0", CultureInfo.InvariantCulture))],
        _ => [],
    };

    private static IEnumerable<(TextSpan, string)> Negated(ExpressionSyntax condition) => condition is IsPatternExpressionSyntax or InvocationExpressionSyntax or IdentifierNameSyntax or MemberAccessExpressionSyntax
        ? [(condition.Span, $"!({condition})")]
        : [];
}
