using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Turns;

/// <summary>What the calls on turns hold alike: a whole car, and exactly one of radius and speed.</summary>
internal static class TurnRules
{
    /// <summary>A smaller radius of the centre of gravity's path no car drives, m: common practice, no source (turning circles of cars are 10 m and more).</summary>
    public const double LeastRadiusM = 4;

    private static readonly HandlingRules Car = new(needsWheelbase: true);

    /// <summary>Adds them.</summary>
    /// <param name="rules">The call's rules.</param>
    /// <param name="hardestG">The hardest turn asked for; null where that cannot be told.</param>
    public static void TurnsAreWhole<T>(this AbstractValidator<T> rules, Func<T, double?> hardestG)
        where T : TurnRequest
    {
        rules.RuleFor(request => request.Vehicle).SetValidator(Car).When(request => request.Vehicle is not null);
        rules.RuleFor(request => request).Custom((request, context) =>
        {
            CheckChoice(context, request);
            if (request is { SpeedKmh: { } speed, CornerRadiusM: null } && !context.IsRefused("LateralG") && hardestG(request) is { } hardest)
                CheckSpeed(context, request, speed, hardest);
        });
    }

    private static void CheckChoice<T>(ValidationContext<T> context, T request)
        where T : TurnRequest
    {
        // What was refused was still sent.
        var isRadiusSent = request.CornerRadiusM is not null || context.IsRefused("CornerRadiusM");
        var isSpeedSent = request.SpeedKmh is not null || context.IsRefused("SpeedKmh");
        if (isRadiusSent && isSpeedSent)
            Add(context, "SpeedKmh", FaultCodes.Inconsistent, "cornerRadiusM and speedKmh exclude each other: with the lateral acceleration one follows from the other.");
        if (!isRadiusSent && !isSpeedSent)
            Add(context, "CornerRadiusM", FaultCodes.Required, "cornerRadiusM or speedKmh is needed: how tight the turn is, or how fast it is driven.");
    }

    private static void CheckSpeed<T>(ValidationContext<T> context, T request, double speedKmh, double hardestG)
        where T : TurnRequest
    {
        var radiusM = TurnPath.AtSpeed(request.Turn, speedKmh).At(hardestG).RadiusM;
        if (radiusM >= LeastRadiusM) return;
        var leastKmh = new CorneringDemand(hardestG, LeastRadiusM, default).SpeedKmh;
        Add(context, "SpeedKmh", FaultCodes.Inconsistent, FormattableString.Invariant(
            $"at {speedKmh} km/h {hardestG} g makes a turn of {radiusM:0.##} m radius, less than the {LeastRadiusM} m a car can drive; it takes {leastKmh:0.#} km/h or more."));
    }

    private static void Add<T>(ValidationContext<T> context, string member, string code, string message) =>
        context.AddFailure(new ValidationFailure(member, message) { ErrorCode = code });
}
