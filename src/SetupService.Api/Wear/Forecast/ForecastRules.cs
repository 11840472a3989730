using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;

namespace SetupService.Api.Wear.Forecast;

/// <summary>What a forecast must keep beyond types and ranges: readings of one tyre, a limit below them, a price in a currency.</summary>
public sealed class ForecastRules : AbstractValidator<ForecastRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public ForecastRules()
    {
        RuleFor(request => request).Custom(static (request, context) =>
        {
            DepthReadingRules.Check(context, "Readings", request.Readings, request.GaugeErrorMm, request.NewDepthMm);
            DepthReadingRules.Check(context, "OtherTyre.Readings", request.OtherTyre?.Readings, request.GaugeErrorMm);
            CheckLimit(request, context);
            if (request.TyrePrice?.Currency is { } currency && !context.IsRefused("TyrePrice.Currency") && (currency.Length != 3 || !currency.All(char.IsAsciiLetterUpper)))
                Add(context, "TyrePrice.Currency", FaultCodes.Unreadable, "currency must be a code of three capital letters, as ISO 4217 has them.");
            if (request is { OtherTreadwearGrade: not null, TreadwearGrade: null } && !context.IsRefused("TreadwearGrade"))
                Add(context, "TreadwearGrade", FaultCodes.Required, "treadwearGrade is needed beside otherTreadwearGrade: a grade tells something against another one only.");
        });
    }

    private static void CheckLimit(ForecastRequest request, ValidationContext<ForecastRequest> context)
    {
        if (request.LimitDepthMm is not { } limitMm || context.IsRefused("LimitDepthMm")) return;
        if (request.NewDepthMm is { } newMm && newMm <= limitMm)
            Add(context, "LimitDepthMm", FaultCodes.Inconsistent, FormattableString.Invariant($"limitDepthMm is {limitMm} mm, not below newDepthMm, which is {newMm}: nothing could ever be worn."));
        if (context.IsRefused("Readings") || request.Readings is not { Length: > 0 } readings || readings.Any(static one => one?.DepthMm is null)) return;
        var mostMm = readings.Max(static one => Math.Max(one.DepthMm.Outer, Math.Max(one.DepthMm.Centre, one.DepthMm.Inner)));
        if (mostMm <= limitMm)
            Add(context, "LimitDepthMm", FaultCodes.Inconsistent, FormattableString.Invariant($"limitDepthMm is {limitMm} mm, and no depth read is above it (the deepest is {mostMm}): by this limit the tyre was worn out at the first reading."));
    }

    private static void Add(ValidationContext<ForecastRequest> context, string place, string code, string message) =>
        context.AddFailure(new ValidationFailure(place, message) { ErrorCode = code });
}
