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
        where T : CornerRequest
    {
        rules.RuleFor(request => request.Vehicle.Front!.Suspension).WithoutContradictions().When(request => request.Axle == CarAxle.Front && request.Suspension is not null);
        rules.RuleFor(request => request.Vehicle.Rear!.Suspension).WithoutContradictions().When(request => request.Axle == CarAxle.Rear && request.Suspension is not null);
        rules.RuleFor(request => request).Custom((request, context) =>
        {
            if (request.Vehicle is not null && !context.IsRefused("Axle")) Need(context, request, needsSuspension?.Invoke(request) ?? true);
        });
    }

    private static void Need<T>(ValidationContext<T> context, CornerRequest request, bool needsSuspension)
    {
        var (place, axle) = ($"Vehicle.{request.Axle}", request.AxleDocument);
        var isMeasured = axle?.Suspension is MeasuredSuspensionDocument;

        // Where the suspension was refused nobody knows whether it brings its own camber.
        if (axle?.Suspension is null && context.IsRefused(place + ".Suspension")) return;
        if (needsSuspension) Require("Suspension", axle?.Suspension, "suspension is missing; this call needs the suspension's points, or readings of it.");
        if (isMeasured) return;
        Require("Alignment.CamberDeg", axle?.Alignment?.CamberDeg, "camberDeg is missing; the wheel's angle is needed at the position the points are given for.");
        if (!needsSuspension) return;
        Require("Alignment.ToeDeg", axle?.Alignment?.ToeDeg, "toeDeg is missing; the wheel's angle is needed at the position the points are given for.");
        if (axle?.Tyre is null && !context.IsRefused(place + ".Tyre")) Require("LoadedRadiusMm", axle?.LoadedRadiusMm, "loadedRadiusMm is missing; give it, or the tyre, from which it is estimated.");

        void Require(string member, object? value, string message)
        {
            if (value is null && !context.IsRefused($"{place}.{member}")) context.Add($"{place}.{member}", FaultCodes.Required, message);
        }
    }
}
