using FluentValidation;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Rules;

/// <summary>
/// What the walk over a body has refused before its rules run. The rules see the body without it, so a rule that compares values
/// asks here first: else it would judge a value nobody sent.
/// </summary>
internal static class RefusedPlaces
{
    private const string Key = "refused";

    /// <summary>Tells the rules what was refused.</summary>
    public static ValidationContext<T> Knowing<T>(this ValidationContext<T> context, FaultList faults)
    {
        context.RootContextData[Key] = faults;
        return context;
    }

    /// <summary>Whether the value at a member path, part of it, or what it is part of was refused.</summary>
    public static bool IsRefused<T>(this ValidationContext<T> context, string path) =>
        context.RootContextData.TryGetValue(Key, out var known) && known is FaultList faults && faults.Refuses(PointerOf.Path(path));

    /// <summary>What holds the object judged: the request, or a member of it; null where it is another type.</summary>
    public static TParent? Parent<TParent>(this IValidationContext context)
        where TParent : class => context.ParentContext?.InstanceToValidate as TParent;

    /// <summary>Leaves a rule out where one of these members, beside the one it judges, was refused.</summary>
    public static IRuleBuilderOptions<T, TProperty> WhenRead<T, TProperty>(this IRuleBuilderOptions<T, TProperty> rule, params string[] members) =>
        rule.When((_, context) => !Array.Exists(members, member => context.IsRefused(context.PropertyChain.BuildPropertyPath(member))));

    /// <summary>Gives a rule the code and the words of its refusal.</summary>
    public static IRuleBuilderOptions<T, TProperty> Says<T, TProperty>(this IRuleBuilderOptions<T, TProperty> rule, string code, Func<T, TProperty, string> message) =>
        rule.WithErrorCode(code).WithMessage(message);

    /// <summary>The same of words that no value changes.</summary>
    public static IRuleBuilderOptions<T, TProperty> Says<T, TProperty>(this IRuleBuilderOptions<T, TProperty> rule, string code, string message) =>
        rule.WithErrorCode(code).WithMessage(message);
}
