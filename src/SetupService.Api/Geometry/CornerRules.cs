using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Geometry;

/// <summary>What the calls on a car's suspension need of the axle asked about.</summary>
internal static class CornerRules
{
    private static readonly AxleDocument NotGiven = new();

    private static readonly CornerAxleRules Whole = new(needsSuspension: true);

    private static readonly CornerAxleRules AnglesOnly = new(needsSuspension: false);

    /// <summary>Adds a fault.</summary>
    public static void Add<T>(this ValidationContext<T> context, string member, string code, string message) =>
        context.AddFailure(new ValidationFailure(member, message) { ErrorCode = code });

    /// <summary>
    /// The axle has a suspension whose points or readings do not contradict each other, the angles its points were taken at, and a
    /// loaded radius or the tyre it is estimated from.
    /// </summary>
    /// <param name="rules">The rules of a call.</param>
    /// <param name="needsSuspension">Whether a request needs the suspension; all do where left out.</param>
    public static void CornerIsWhole<T>(this AbstractValidator<T> rules, Func<T, bool>? needsSuspension = null)
        where T : CornerRequest => rules.OfAxleAsked(request => needsSuspension?.Invoke(request) ?? true ? Whole : AnglesOnly);

    /// <summary>Holds the axle asked about to rules, one that is not given as if it were empty.</summary>
    public static void OfAxleAsked<T>(this AbstractValidator<T> rules, Func<T, IValidator<AxleDocument>> axleRules)
        where T : CornerRequest
    {
        rules.RuleFor(request => request.Vehicle.Front ?? NotGiven).SetValidator((request, _) => axleRules(request))
            .When((request, context) => IsAsked(request, context, CarAxle.Front)).OverridePropertyName("Vehicle.Front");
        rules.RuleFor(request => request.Vehicle.Rear ?? NotGiven).SetValidator((request, _) => axleRules(request))
            .When((request, context) => IsAsked(request, context, CarAxle.Rear)).OverridePropertyName("Vehicle.Rear");
    }

    private static bool IsAsked<T>(T request, ValidationContext<T> context, CarAxle axle)
        where T : CornerRequest => request.Vehicle is not null && request.Axle == axle && !context.IsRefused("Axle");
}

/// <summary>What one axle must have for its corner to be worked out.</summary>
public sealed class CornerAxleRules : AbstractValidator<AxleDocument>
{
    private const string NeedsAngle = "Deg is missing; the wheel's angle is needed at the position the points are given for.";

    /// <summary>Makes the rules; they hold no state.</summary>
    /// <param name="needsSuspension">False where the angles alone serve.</param>
    public CornerAxleRules(bool needsSuspension)
    {
        RuleFor(axle => axle.Suspension).WithoutContradictions().When(axle => axle.Suspension is not null);
        if (needsSuspension)
        {
            RuleFor(axle => axle.Suspension).NotNull()
                .Says(FaultCodes.Required, "suspension is missing; this call needs the suspension's points, or readings of it.").WhenRead(nameof(AxleDocument.Suspension));
        }

        // Where the suspension was refused nobody knows whether it brings its own camber.
        When((axle, context) => axle.Suspension is not (null or MeasuredSuspensionDocument) || (axle.Suspension is null && !context.IsRefused(context.PropertyChain.BuildPropertyPath(nameof(axle.Suspension)))), () =>
        {
            RuleFor(axle => axle.Alignment == null ? null : axle.Alignment.CamberDeg).NotNull()
                .Says(FaultCodes.Required, "camber" + NeedsAngle).WhenRead("Alignment.CamberDeg").OverridePropertyName("Alignment.CamberDeg");
            if (!needsSuspension) return;
            RuleFor(axle => axle.Alignment == null ? null : axle.Alignment.ToeDeg).NotNull()
                .Says(FaultCodes.Required, "toe" + NeedsAngle).WhenRead("Alignment.ToeDeg").OverridePropertyName("Alignment.ToeDeg");
            RuleFor(axle => axle.LoadedRadiusMm).NotNull().When(axle => axle.Tyre is null)
                .Says(FaultCodes.Required, "loadedRadiusMm is missing; give it, or the tyre, from which it is estimated.").WhenRead(nameof(AxleDocument.Tyre), nameof(AxleDocument.LoadedRadiusMm));
        });
    }
}
