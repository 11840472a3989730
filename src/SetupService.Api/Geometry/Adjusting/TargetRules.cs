using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What both calls on adjusting must keep: a change or a target, never both, and what goes with each.</summary>
internal static class TargetRules
{
    /// <summary>Adds a fault.</summary>
    public static void Add<T>(this ValidationContext<T> context, string member, string code, string message) =>
        context.AddFailure(new ValidationFailure(member, message) { ErrorCode = code });

    /// <summary>Exactly one of a change and a target. What was refused was still sent.</summary>
    public static void CheckChoice<T>(ValidationContext<T> context, string changeMember, bool hasChange, AngleTargetDocument? target)
    {
        var isChangeSent = hasChange || context.IsRefused(changeMember);
        var isTargetSent = context.IsTargetSent(target);
        if (isChangeSent && isTargetSent)
            context.Add("Target", FaultCodes.Inconsistent, $"{changeMember} and target exclude each other: ask what a change does, or which change does it.");
        if (!isChangeSent && !isTargetSent)
            context.Add(changeMember, FaultCodes.Required, $"{changeMember} or target is needed: what is changed, or the angles wanted.");
        if (target is { CamberDeg: null, CasterDeg: null } && !context.IsRefused("Target"))
            context.Add("Target", FaultCodes.Required, "target names no angle; camberDeg, casterDeg or both are needed.");
    }

    /// <summary>Whether there is a target, be it one that was refused.</summary>
    public static bool IsTargetSent<T>(this ValidationContext<T> context, AngleTargetDocument? target) => target is not null || context.IsRefused("Target");

    /// <summary>A tie rod can only be reset where there is one.</summary>
    public static void CheckReset<T>(ValidationContext<T> context, SuspensionDocument? suspension, bool? resetToe)
    {
        if (resetToe == true && suspension is SemiTrailingArmDocument or TwistBeamDocument)
            context.Add("ResetToe", FaultCodes.Inconsistent, "this kind of suspension has no tie rod to reset toe with.");
    }

    /// <summary>Limits must leave something between them.</summary>
    public static void CheckOrder<T>(ValidationContext<T> context, string member, double? minimum, double? maximum, string unit)
    {
        if (minimum > maximum && !context.IsRefused(member))
            context.Add(member, FaultCodes.Inconsistent, FormattableString.Invariant($"the least amount, {minimum} {unit}, is above the greatest, {maximum} {unit}."));
    }
}
