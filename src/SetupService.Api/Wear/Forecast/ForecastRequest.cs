using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;

namespace SetupService.Api.Wear.Forecast;

/// <summary>Tread depths of one tyre as its clocks ran on, and what else is known of it.</summary>
public sealed record ForecastRequest
{
    /// <summary>The readings in the order they were taken; four at different distances carry a forecast.</summary>
    [JsonRequired]
    [Count(2, 200)]
    public DepthReadingDocument[] Readings { get; set; } = [];

    /// <summary>Depth at which the tyre is done; 1.6 where left out.</summary>
    [Range(0, 20)]
    [Sample(1.6)]
    public double? LimitDepthMm { get; set; }

    /// <summary>Error of one reading, one standard deviation; the readings' own scatter tells it where left out.</summary>
    [Range(0.01, 2)]
    [Sample(0.15)]
    public double? GaugeErrorMm { get; set; }

    /// <summary>Depth of the tread when new; needed for the cost.</summary>
    [Range(0, 20)]
    [Sample(8.0)]
    public double? NewDepthMm { get; set; }

    /// <summary>Price of the tyre; needed for the cost.</summary>
    public TyrePriceDocument? TyrePrice { get; set; }

    /// <summary>The treadwear grade on the tyre's side.</summary>
    [Range(1, 2000)]
    [Sample(240.0)]
    public double? TreadwearGrade { get; set; }

    /// <summary>The treadwear grade of a tyre thought of in its place.</summary>
    [Range(1, 2000)]
    [Sample(300.0)]
    public double? OtherTreadwearGrade { get; set; }

    /// <summary>A tyre of the car this one may change places with.</summary>
    public OtherTyreDocument? OtherTyre { get; set; }
}

/// <summary>What a tyre costs, fitted or not as the caller sees it.</summary>
public sealed record TyrePriceDocument
{
    /// <summary>The amount in the currency.</summary>
    [JsonRequired]
    [Range(0, 100_000)]
    [Sample(148.0)]
    public double Amount { get; set; }

    /// <summary>The currency's code of three letters (ISO 4217).</summary>
    [JsonRequired]
    [StringLength(3)]
    [Sample("EUR")]
    public string Currency { get; set; } = null!;
}

/// <summary>Another tyre of the same car.</summary>
public sealed record OtherTyreDocument
{
    /// <summary>Its readings, like the first tyre's.</summary>
    [JsonRequired]
    [Count(2, 200)]
    public DepthReadingDocument[] Readings { get; set; } = [];
}

/// <summary>What a forecast must keep beyond types and ranges: readings of one tyre, a limit below them, a price in a currency.</summary>
public sealed class ForecastRules : AbstractValidator<ForecastRequest>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public ForecastRules()
    {
        RuleFor(request => request.Readings).AreOfOneTyre(request => request.GaugeErrorMm, request => request.NewDepthMm);
        RuleFor(request => request.OtherTyre!.Readings).AreOfOneTyre(request => request.GaugeErrorMm).When(request => request.OtherTyre is not null);
        RuleFor(request => request.LimitDepthMm).Must((request, limitMm) => !(request.NewDepthMm <= limitMm))
            .Says(FaultCodes.Inconsistent, (request, limitMm) => FormattableString.Invariant($"limitDepthMm is {limitMm} mm, not below newDepthMm, which is {request.NewDepthMm}: nothing could ever be worn."))
            .WhenRead(nameof(ForecastRequest.LimitDepthMm));
        RuleFor(request => request.LimitDepthMm).Must((request, limitMm) => !(DeepestMm(request) <= limitMm))
            .Says(FaultCodes.Inconsistent, (request, limitMm) => FormattableString.Invariant($"limitDepthMm is {limitMm} mm, and no depth read is above it (the deepest is {DeepestMm(request)}): by this limit the tyre was worn out at the first reading."))
            .WhenRead(nameof(ForecastRequest.LimitDepthMm), nameof(ForecastRequest.Readings));
        RuleFor(request => request.TyrePrice!.Currency).Must(currency => currency is { Length: 3 } && currency.All(char.IsAsciiLetterUpper)).When(request => request.TyrePrice?.Currency is not null)
            .Says(FaultCodes.Unreadable, "currency must be a code of three capital letters, as ISO 4217 has them.").WhenRead("TyrePrice.Currency");
        RuleFor(request => request.TreadwearGrade).NotNull().When(request => request.OtherTreadwearGrade is not null)
            .Says(FaultCodes.Required, "treadwearGrade is needed beside otherTreadwearGrade: a grade tells something against another one only.").WhenRead(nameof(ForecastRequest.TreadwearGrade));
    }

    private static double? DeepestMm(ForecastRequest request) => request.Readings is { Length: > 0 } readings && !readings.Any(static one => one?.DepthMm is null)
        ? readings.Max(static one => Math.Max(one.DepthMm.Outer, Math.Max(one.DepthMm.Centre, one.DepthMm.Inner)))
        : null;
}
