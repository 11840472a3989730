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
}
