using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry;

/// <summary>What the calls that take a suspension and its alignment hold alike.</summary>
internal static class CornerRules
{
    /// <summary>Points and readings do not contradict each other; points need the angles they were taken at, a measured suspension brings its own.</summary>
    public static void CornersAreWhole<T>(this AbstractValidator<T> rules)
        where T : CornerRequest
    {
        rules.RuleFor(request => request.Suspension).WithoutContradictions();
        rules.RuleFor(request => request).Custom((request, context) =>
        {
            if (request.Suspension is null or MeasuredSuspensionDocument || request.Alignment is not { } angles) return;
            Need(context, "camberDeg", angles.CamberDeg);
            Need(context, "toeDeg", angles.ToeDeg);
        });
    }

    private static void Need<T>(ValidationContext<T> context, string member, double? value)
    {
        if (value is not null) return;
        context.AddFailure(new ValidationFailure($"Alignment.{member}", $"{member} is missing; points need the wheel's angles at the position they are given for.")
        {
            ErrorCode = FaultCodes.Required,
        });
    }
}
