using FluentValidation;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Turns;

/// <summary>What the calls on turns hold alike: a whole car, and exactly one of radius and speed.</summary>
internal static class TurnRules
{
    /// <summary>A smaller radius of the centre of gravity's path no car drives, m: common practice, no source (turning circles of cars are 10 m and more).</summary>
    public const double LeastRadiusM = 4;

    /// <summary>Why a radius and a speed are refused together.</summary>
    public const string OneOfBoth = "cornerRadiusM and speedKmh exclude each other: with the lateral acceleration one follows from the other.";

    private static readonly HandlingRules Car = new(needsWheelbase: true);

    /// <summary>Adds them.</summary>
    /// <param name="rules">The call's rules.</param>
    /// <param name="hardestG">The hardest turn asked for; null where that cannot be told.</param>
    public static void TurnsAreWhole<T>(this AbstractValidator<T> rules, Func<T, double?> hardestG)
        where T : TurnRequest
    {
        rules.RuleFor(request => request.Vehicle).SetValidator(Car).When(request => request.Vehicle is not null);
        rules.RuleFor(request => request.SpeedKmh)
            .Must((request, _, context) => !(IsRadiusSent(request, context) && IsSpeedSent(request, context)))
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage(OneOfBoth);
        rules.RuleFor(request => request.CornerRadiusM)
            .Must((request, _, context) => IsRadiusSent(request, context) || IsSpeedSent(request, context))
            .WithErrorCode(FaultCodes.Required)
            .WithMessage("cornerRadiusM or speedKmh is needed: how tight the turn is, or how fast it is driven.");
        rules.RuleFor(request => request.SpeedKmh)
            .Must((request, speedKmh) => RadiusM(speedKmh!.Value, hardestG(request)!.Value) >= LeastRadiusM)
            .When((request, context) => request is { SpeedKmh: not null, CornerRadiusM: null } && !context.IsRefused("LateralG") && hardestG(request) is not null)
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage((request, speedKmh) => TooSlow(speedKmh!.Value, hardestG(request)!.Value));
    }

    /// <summary>Adds that driving needs a driven axle.</summary>
    public static void DrivenAxleIsKnown<T>(this AbstractValidator<T> rules, Func<T, bool> isDriven)
        where T : TurnRequest =>
        rules.RuleFor(request => request.Vehicle.DrivenAxle).NotNull()
            .When((request, context) => request.Vehicle is not null && isDriven(request) && !context.IsRefused("Vehicle.DrivenAxle"))
            .WithErrorCode(FaultCodes.Required)
            .WithMessage("drivenAxle is missing; driving (longitudinalG above 0) is asked for, and only the driven wheels can give it.");

    // What was refused was still sent.
    private static bool IsRadiusSent<T>(T request, ValidationContext<T> context)
        where T : TurnRequest => request.CornerRadiusM is not null || context.IsRefused(nameof(TurnRequest.CornerRadiusM));

    private static bool IsSpeedSent<T>(T request, ValidationContext<T> context)
        where T : TurnRequest => request.SpeedKmh is not null || context.IsRefused(nameof(TurnRequest.SpeedKmh));

    private static double RadiusM(double speedKmh, double lateralG) => CorneringDemand.AtSpeed(lateralG, speedKmh, default).RadiusM;

    private static string TooSlow(double speedKmh, double hardestG) => FormattableString.Invariant(
        $"at {speedKmh} km/h {hardestG} g makes a turn of {RadiusM(speedKmh, hardestG):0.##} m radius, less than the {LeastRadiusM} m a car can drive; it takes {new CorneringDemand(hardestG, LeastRadiusM, default).SpeedKmh:0.#} km/h or more.");
}
