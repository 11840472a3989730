using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;

namespace SetupService.Api.Http.Documents;

/// <summary>
/// The rule for changes to a document of the same body: the document must keep its contract with them made. The rule speaks only
/// where a refused body is examined; a handler makes the changes itself, and refuses the body where one cannot be made.
/// </summary>
public static class ChangeRules
{
    private const string Key = "contract";

    /// <summary>One change to a document.</summary>
    /// <typeparam name="T">The request.</typeparam>
    /// <typeparam name="TDocument">The document changed.</typeparam>
    /// <param name="rule">The change.</param>
    /// <param name="document">The document, a member of the request.</param>
    /// <param name="name">The name of that member.</param>
    /// <param name="rules">What the document must keep for this call; the rules of its type where left out.</param>
    public static IRuleBuilderOptionsConditions<T, DocumentChange<TDocument>?> ChangesSoundly<T, TDocument>(
        this IRuleBuilder<T, DocumentChange<TDocument>?> rule, Func<T, TDocument?> document, string name, IValidator<TDocument>? rules = null)
        where TDocument : class
    {
        ArgumentNullException.ThrowIfNull(rule);
        return rule.Make(document, name, rules, static (change, path) => [(path, change)]);
    }

    /// <summary>Several changes to a document, each made alone and, where that can be done, all of them one after the other.</summary>
    /// <typeparam name="T">The request.</typeparam>
    /// <typeparam name="TElement">What a change stands in.</typeparam>
    /// <typeparam name="TDocument">The document changed.</typeparam>
    /// <param name="rule">The array.</param>
    /// <param name="change">The change in an element.</param>
    /// <param name="changeName">The name of that member.</param>
    /// <param name="document">The document, a member of the request.</param>
    /// <param name="name">The name of that member.</param>
    /// <param name="rules">What the document must keep for this call; the rules of its type where left out.</param>
    public static void EachChangesSoundly<T, TElement, TDocument>(
        this IRuleBuilder<T, TElement[]?> rule,
        Func<TElement, DocumentChange<TDocument>?> change,
        string changeName,
        Func<T, TDocument?> document,
        string name,
        IValidator<TDocument>? rules = null)
        where TElement : class
        where TDocument : class
    {
        ArgumentNullException.ThrowIfNull(rule);
        rule.Make(document, name, rules, (elements, path) => [.. (elements ?? []).Select((one, index) => ($"{path}[{index}].{changeName}", one is null ? null : change(one)))]);
    }

    /// <summary>Tells the rules which contract the body is examined against.</summary>
    internal static ValidationContext<T> Under<T>(this ValidationContext<T> context, JsonContract contract)
    {
        context.RootContextData[Key] = contract;
        return context;
    }

    /// <summary>
    /// Makes the changes of a member and tells every fault of the documents they lead to. A Custom rule, because what it finds are as many
    /// faults as those documents have, each with its own code and limits and at the place of the body where the caller wrote what is wrong,
    /// in a change or in the document; the library's other rules tell one fault at the member they stand on.
    /// </summary>
    private static IRuleBuilderOptionsConditions<T, TProperty> Make<T, TProperty, TDocument>(
        this IRuleBuilder<T, TProperty> rule,
        Func<T, TDocument?> document,
        string name,
        IValidator<TDocument>? rules,
        Func<TProperty, string, (string Path, DocumentChange<TDocument>? Change)[]> changes)
        where TDocument : class =>
        rule.Custom((value, context) => Check(context, document(context.InstanceToValidate), name, changes(value, context.PropertyPath), rules));

    private static void Check<T, TDocument>(
        ValidationContext<T> context, TDocument? document, string name, (string Path, DocumentChange<TDocument>? Change)[] changes, IValidator<TDocument>? rules)
        where TDocument : class
    {
        if (document is null || context.IsRefused(name) || !context.RootContextData.TryGetValue(Key, out var held) || held is not JsonContract contract)
            return;

        // A fault of the document itself is told by its own readers, once, and not by every change that leaves it standing.
        var stated = contract.Changing(document, PointerOf.Path(name));
        HashSet<(string?, string)> known = [.. stated.Faults(rules).Select(fault => (fault.Pointer, fault.Code))];
        var together = stated;
        var canBeMade = known.Count == 0;
        foreach ((var path, var change) in changes)
        {
            if (change is not { IsSound: true } || context.IsRefused(path))
                continue;

            var pointer = PointerOf.Path(path);
            canBeMade &= Add(context, stated.With(change, pointer).Faults(rules), known);
            together = together.With(change, pointer);
            canBeMade = canBeMade && Add(context, together.Faults(rules), known);
        }
    }

    /// <summary>True where there is no fault.</summary>
    private static bool Add<T>(ValidationContext<T> context, IReadOnlyList<Fault> faults, HashSet<(string? Pointer, string Code)> known)
    {
        foreach (var fault in faults.Where(fault => known.Add((fault.Pointer, fault.Code))))
            context.AddFailure(new ValidationFailure(PathOf(fault.Pointer!), fault.Message) { ErrorCode = fault.Code, CustomState = fault.Limits });
        return faults.Count == 0;
    }

    // What a merged document has too much of is a member of another kind, so no name holds a dot.
    private static string PathOf(string pointer) => pointer.TrimStart('/').Replace('/', '.');
}
