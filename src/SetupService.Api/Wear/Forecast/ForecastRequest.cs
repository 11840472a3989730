using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Wear.Forecast;

/// <summary>Tread depths of a car's tyres as their clocks ran on, and what else is known of them.</summary>
public sealed record ForecastRequest : ITyreHistories
{
    /// <summary>The tyres, each wheel once. Four readings at different distances carry a forecast, two or three a rough one.</summary>
    [JsonRequired]
    [Count(1, 4)]
    public TyreReadingsDocument[] Tyres { get; set; } = [];

    /// <summary>Depth at which a tyre is done; 1.6 where left out.</summary>
    [Range(0, 20)]
    [Sample(1.6)]
    public double? LimitDepthMm { get; set; }

    /// <summary>Price of one tyre; needed for the cost.</summary>
    public MoneyDocument? TyrePrice { get; set; }

    /// <summary>The treadwear grade on the tyres' sides.</summary>
    [Range(1, 2000)]
    [Sample(240.0)]
    public double? TreadwearGrade { get; set; }

    /// <summary>The treadwear grade of tyres thought of in their place.</summary>
    [Range(1, 2000)]
    [Sample(300.0)]
    public double? OtherTreadwearGrade { get; set; }
}

/// <summary>What a forecast must keep beyond types and ranges: readings of one tyre, a limit below them, a price in a currency.</summary>
public sealed class ForecastRules : AbstractValidator<ForecastRequest>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public ForecastRules()
    {
        RuleForEach(request => request.Tyres).SetValidator(new TyreReadingsRules());
        RuleFor(request => request.LimitDepthMm).Must((request, limitMm) => limitMm is null || !request.Tyres.Any(tyre => tyre?.NewDepthMm <= limitMm))
            .Says(FaultCodes.Inconsistent, (request, limitMm) => FormattableString.Invariant($"limitDepthMm is {limitMm} mm, not below newDepthMm, which is {request.Tyres.Min(tyre => tyre?.NewDepthMm)}: nothing could ever be worn."))
            .WhenRead(nameof(ForecastRequest.LimitDepthMm));
        RuleFor(request => request.LimitDepthMm).Must((request, limitMm) => limitMm is null || !request.Tyres.Any(tyre => DeepestMm(tyre) <= limitMm))
            .Says(FaultCodes.Inconsistent, (request, limitMm) => FormattableString.Invariant($"limitDepthMm is {limitMm} mm, and no depth read of a tyre is above it (the deepest is {request.Tyres.Min(DeepestMm)}): by this limit it was worn out at the first reading."))
            .WhenRead(nameof(ForecastRequest.LimitDepthMm), nameof(ForecastRequest.Tyres));
        RuleFor(request => request.TyrePrice!.Currency).Must(currency => currency is { Length: 3 } && currency.All(char.IsAsciiLetterUpper)).When(request => request.TyrePrice?.Currency is not null)
            .Says(FaultCodes.Unreadable, "currency must be a code of three capital letters, as ISO 4217 has them.").WhenRead("TyrePrice.Currency");
        RuleFor(request => request.TreadwearGrade).NotNull().When(request => request.OtherTreadwearGrade is not null)
            .Says(FaultCodes.Required, "treadwearGrade is needed beside otherTreadwearGrade: a grade tells something against another one only.").WhenRead(nameof(ForecastRequest.TreadwearGrade));
    }

    private static double? DeepestMm(TyreReadingsDocument? tyre)
    {
        if (tyre?.Readings is not { Length: > 0 } readings || readings.Any(static one => one is null || (one.DepthMm is null && one.Zones is null))) return null;
        return readings.Max(static one => one.DepthMm is { } depth ? Math.Max(depth.Outer, Math.Max(depth.Centre, depth.Inner)) : one.Zones!.Max(static zone => zone?.DepthMm ?? 0));
    }
}
