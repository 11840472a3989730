using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What both calls on adjusting must keep: a change or a target, never both, and what goes with each.</summary>
internal static class TargetRules
{
    /// <summary>Adds a fault.</summary>
    public static void Add<T>(this ValidationContext<T> context, string member, string code, string message) =>
        context.AddFailure(new ValidationFailure(member, message) { ErrorCode = code });

    /// <summary>Exactly one of a change and a target.</summary>
    public static void CheckChoice<T>(ValidationContext<T> context, string changeMember, bool hasChange, AngleTargetDocument? target)
    {
        if (hasChange && target is not null)
            context.Add("Target", FaultCodes.Inconsistent, $"{changeMember} and target exclude each other: ask what a change does, or which change does it.");
        if (!hasChange && target is null)
            context.Add(changeMember, FaultCodes.Required, $"{changeMember} or target is needed: what is changed, or the angles wanted.");
        if (target is { CamberDeg: null, CasterDeg: null })
            context.Add("Target", FaultCodes.Required, "target names no angle; camberDeg, casterDeg or both are needed.");
    }

    /// <summary>A tie rod can only be reset where there is one.</summary>
    public static void CheckReset<T>(ValidationContext<T> context, SuspensionDocument? suspension, bool? resetToe)
    {
        if (resetToe == true && suspension is SemiTrailingArmDocument or TwistBeamDocument)
            context.Add("ResetToe", FaultCodes.Inconsistent, "this kind of suspension has no tie rod to reset toe with.");
    }

    /// <summary>Limits must leave something between them.</summary>
    public static void CheckOrder<T>(ValidationContext<T> context, string member, double? minimum, double? maximum)
    {
        if (minimum > maximum)
            context.Add(member, FaultCodes.Inconsistent, FormattableString.Invariant($"the minimum of {minimum} is above the maximum of {maximum}."));
    }
}
