using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Http.Shared;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Api.Wheels;
using SetupService.Domain.Planning.Ranking;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans.Ranking;

/// <summary>Tyres to choose from, and what they are for.</summary>
public sealed record TyreRankingRequest
{
    /// <summary>The most tyres of one request.</summary>
    public const int MostTyres = 500;

    /// <summary>The tyres, each with what its sidewall, label and tests tell.</summary>
    [JsonRequired]
    [Count(1, MostTyres)]
    public TyreOfferDocument[] Tyres { get; set; } = [];

    /// <summary>What they are for.</summary>
    [JsonRequired]
    public TyreUseDocument Use { get; set; } = null!;

    /// <summary>How much each criterion is to count, in place of what suits the use; what is left out counts for nothing.</summary>
    public CriterionWeightsDocument? Weights { get; set; }

    /// <summary>The tyres fitted now, by which the lives of the others are told from their treadwear grades.</summary>
    public KnownLifeDocument? Present { get; set; }

    /// <summary>The car they are to go on; where left out nothing is said of fit.</summary>
    public VehicleDocument? Vehicle { get; set; }

    /// <summary>Which axle of it; front where left out.</summary>
    [Sample("front")]
    public CarAxle? Axle { get; set; }

    /// <summary>The wheel they are to go on; the one fitted now where left out.</summary>
    public WheelDocument? Wheel { get; set; }
}

/// <summary>A tyre on offer.</summary>
public sealed record TyreOfferDocument
{
    /// <summary>What the caller calls it; each once.</summary>
    [JsonRequired]
    [StringLength(80, MinimumLength = 1)]
    [Sample("Summer A")]
    public string Id { get; set; } = "";

    /// <summary>The tyre: its marking, and its category where known.</summary>
    [JsonRequired]
    public TyreDocument Tyre { get; set; } = null!;

    /// <summary>Price of one.</summary>
    public MoneyDocument? Price { get; set; }

    /// <summary>Treadwear grade on the sidewall.</summary>
    [Range(20, 2000)]
    [Sample(240.0)]
    public double? TreadwearGrade { get; set; }

    /// <summary>Traction grade on the sidewall.</summary>
    [Sample("A")]
    public TractionGrade? TractionGrade { get; set; }

    /// <summary>Temperature grade on the sidewall.</summary>
    [Sample("A")]
    public TemperatureGrade? TemperatureGrade { get; set; }

    /// <summary>Wet grip class on the label.</summary>
    [Sample("B")]
    public LabelClass? WetGripClass { get; set; }

    /// <summary>Rolling resistance class on the label, which calls it fuel efficiency.</summary>
    [Sample("C")]
    public LabelClass? RollingResistanceClass { get; set; }

    /// <summary>Noise class on the label.</summary>
    [Sample("B")]
    public NoiseClass? NoiseClass { get; set; }

    /// <summary>Score of dry handling and braking in a test, its best tyre having 100; all scores of a list are of one test.</summary>
    [Range(20, 100)]
    [Sample(96.0)]
    public double? DryTestPct { get; set; }

    /// <summary>Score in the wet in a test, its best tyre having 100.</summary>
    [Range(20, 100)]
    [Sample(91.0)]
    public double? WetTestPct { get; set; }

    /// <summary>Road life known of this tyre on this car.</summary>
    [Range(100, 300_000)]
    [Sample(28000.0)]
    public double? LifeKm { get; set; }

    /// <summary>Track life known of this tyre on this car, in laps.</summary>
    [Range(1, 100_000)]
    [Sample(260.0)]
    public double? LifeLaps { get; set; }
}

/// <summary>What tyres are for; the shares add up to 100.</summary>
public sealed record TyreUseDocument
{
    /// <summary>Driving on the road in all weathers.</summary>
    [JsonRequired]
    [Range(0, 100)]
    [Sample(50.0)]
    public double DailyPct { get; set; }

    /// <summary>Driving where it is often wet.</summary>
    [JsonRequired]
    [Range(0, 100)]
    [Sample(20.0)]
    public double WetPct { get; set; }

    /// <summary>Track days, sprints and hill climbs.</summary>
    [JsonRequired]
    [Range(0, 100)]
    [Sample(30.0)]
    public double TrackPct { get; set; }
}

/// <summary>How much each criterion counts, against the others.</summary>
public sealed record CriterionWeightsDocument
{
    /// <summary>Grip on a wet road.</summary>
    [Range(0, 1000)]
    [Sample(30.0)]
    public double? WetGrip { get; set; }

    /// <summary>Grip on a dry road or track.</summary>
    [Range(0, 1000)]
    [Sample(25.0)]
    public double? DryGrip { get; set; }

    /// <summary>How long the tread lasts.</summary>
    [Range(0, 1000)]
    [Sample(15.0)]
    public double? TreadLife { get; set; }

    /// <summary>How much heat the tyre stands.</summary>
    [Range(0, 1000)]
    [Sample(10.0)]
    public double? HeatResistance { get; set; }

    /// <summary>How easily it rolls.</summary>
    [Range(0, 1000)]
    [Sample(5.0)]
    public double? RollingResistance { get; set; }

    /// <summary>How quiet it is outside.</summary>
    [Range(0, 1000)]
    [Sample(5.0)]
    public double? Noise { get; set; }

    /// <summary>How little it costs.</summary>
    [Range(0, 1000)]
    [Sample(10.0)]
    public double? Price { get; set; }
}

/// <summary>How long the tyres fitted now last.</summary>
public sealed record KnownLifeDocument
{
    /// <summary>Their treadwear grade.</summary>
    [JsonRequired]
    [Range(20, 2000)]
    [Sample(280.0)]
    public double TreadwearGrade { get; set; }

    /// <summary>Their life on the road.</summary>
    [Range(100, 300_000)]
    [Sample(26000.0)]
    public double? LifeKm { get; set; }

    /// <summary>Their life on the track, in laps.</summary>
    [Range(1, 100_000)]
    [Sample(240.0)]
    public double? LifeLaps { get; set; }
}

/// <summary>What a list of tyres must keep beyond types and ranges.</summary>
public sealed class TyreRankingRules : AbstractValidator<TyreRankingRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public TyreRankingRules()
    {
        RuleFor(request => request.Use).Must(use => Math.Abs(use.DailyPct + use.WetPct + use.TrackPct - 100) < 0.5).When(request => request.Use is not null)
            .Says(FaultCodes.Inconsistent, (_, use) => FormattableString.Invariant($"dailyPct, wetPct and trackPct add up to {use.DailyPct + use.WetPct + use.TrackPct:0.##}; they are shares of one whole, 100.")).WhenRead("Use.DailyPct", "Use.WetPct", "Use.TrackPct");
        RuleFor(request => request.Weights).Must(weights => Given(weights!).Any(weight => weight > 0)).When(request => request.Weights is not null)
            .Says(FaultCodes.Inconsistent, "weights names no criterion that counts; give at least one above 0, or leave weights out.").WhenRead(nameof(TyreRankingRequest.Weights));
        RuleForEach(request => request.Tyres).Must((request, tyre) => tyre?.Id is not { } id || ReferenceEquals(request.Tyres.First(one => one?.Id == id), tyre))
            .Says(FaultCodes.Inconsistent, (_, tyre) => $"another tyre before it is named {tyre.Id} too; each id stands for one tyre.");
        RuleForEach(request => request.Tyres).Must((request, tyre) => tyre?.Price?.Currency is not { } currency || !IsCode(currency) || currency == Currency(request))
            .Says(FaultCodes.Inconsistent, (request, tyre) => $"its price is in {tyre.Price!.Currency} and that of the first in {Currency(request)}; give all in one currency, this service knows no rates of exchange.");
        RuleForEach(request => request.Tyres).ChildRules(tyre =>
        {
            tyre.RuleFor(one => one.Price!.Currency).Must(IsCode).When(one => one.Price?.Currency is not null)
                .Says(FaultCodes.Unreadable, "currency must be a code of three capital letters, as ISO 4217 has them.").WhenRead("Price.Currency");
            tyre.RuleFor(one => one.Price!.Amount).GreaterThan(0).When(one => one.Price is not null)
                .WithErrorCode(FaultCodes.OutOfRange).WithMessage("amount must be above 0: a tyre for nothing has no cost to compare.");
        });
        RuleFor(request => request.Vehicle).NotNull().When(request => request.Wheel is not null || request.Axle is not null)
            .Says(FaultCodes.Required, "vehicle is missing: a wheel or an axle says nothing of fit without the car.").WhenRead(nameof(TyreRankingRequest.Vehicle));
    }

    /// <summary>The weights in the order of the criteria, what is left out as 0.</summary>
    internal static double[] Given(CriterionWeightsDocument weights) =>
        [weights.WetGrip ?? 0, weights.DryGrip ?? 0, weights.TreadLife ?? 0, weights.HeatResistance ?? 0, weights.RollingResistance ?? 0, weights.Noise ?? 0, weights.Price ?? 0];

    private static bool IsCode(string? currency) => currency is { Length: 3 } && currency.All(char.IsAsciiLetterUpper);

    private static string? Currency(TyreRankingRequest request) => request.Tyres.Select(tyre => tyre?.Price?.Currency).FirstOrDefault(IsCode);
}
