using SetupService.Api.Fitment;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Api.Wheels;
using SetupService.Domain.Fitment;
using SetupService.Domain.Planning.Ranking;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Plans.Ranking;

/// <summary>A list of tyres, mapped: what is told of each, and how it fits where there is a car.</summary>
/// <param name="Offers">The tyres.</param>
/// <param name="Fits">The check of each, in the same order; null without a car.</param>
/// <param name="Car">The axle under check; null without a car.</param>
/// <param name="Weights">How much each criterion counts.</param>
internal sealed record MappedTyres(IReadOnlyList<TyreOffer> Offers, IReadOnlyList<TyreFit>? Fits, FitmentContext? Car, CriterionWeights Weights);

/// <summary>A tyre on the wheel it is to go on, and how it was judged.</summary>
internal sealed record TyreFit(Fitting Fitting, CheckSheet Sheet);

/// <summary>Maps a request for a ranking.</summary>
internal static class TyreRankingMapper
{
    /// <summary>Tyres, car and wheel as they are read; refused with every fault of them.</summary>
    public static MapResult<(Tyre[] Tyres, Vehicle? Vehicle, Wheel? Wheel)> Read(TyreRankingRequest request)
    {
        Refusal? refusal = null;
        var tyres = new Tyre?[request.Tyres.Length];
        for (var i = 0; i < tyres.Length; i++)
        {
            Refusal? ofTyre = null;
            tyres[i] = TyreMapper.Map(request.Tyres[i]?.Tyre).Take("tyre", ref ofTyre);
            if (ofTyre?.Under(FormattableString.Invariant($"tyres/{i}")) is { } told) refusal = refusal is null ? told : refusal.And(told);
        }

        var vehicle = request.Vehicle is null ? null : VehicleMapper.MapForFitment(request.Vehicle).Take("vehicle", ref refusal);
        var wheel = request.Wheel is null ? vehicle?.At(request.Axle ?? CarAxle.Front).Wheel : WheelMapper.Map(request.Wheel).Take("wheel", ref refusal);
        if (refusal is null && vehicle is not null && wheel is null)
            refusal = new(Fault.At("/wheel", FaultCodes.Required, "wheel is missing: the car's own is not given at this axle, so nothing tells what the tyres are to go on."));
        if (refusal is not null) return refusal;
        return (Array.ConvertAll(tyres, tyre => tyre!), vehicle, wheel);
    }

    /// <summary>The tyres with how each fits; refused with every fault of tyres, wheel and car.</summary>
    public static MapResult<MappedTyres> Map(TyreRankingRequest request)
    {
        if (!Read(request).TryGet(out var read, out var refusal)) return refusal;
        FitmentContext? car = null;
        TyreFit[]? fits = null;
        if (read.Vehicle is { } vehicle)
        {
            car = FitmentContext.Prepare(vehicle, request.Axle ?? CarAxle.Front, FitmentMapper.Settings(null, null, null));
            fits = Array.ConvertAll(read.Tyres, tyre => Check(car, new Fitting(read.Wheel!, tyre)));
        }

        var use = new TyreUseMix(request.Use.DailyPct / 100, request.Use.WetPct / 100, request.Use.TrackPct / 100);
        var weights = request.Weights is { } given ? CriterionWeights.From(TyreRankingRules.Given(given)) : CriterionWeights.From(use);
        return new MappedTyres([.. request.Tyres.Select(Offer)], fits, car, weights);
    }

    private static TyreFit Check(FitmentContext car, in Fitting fitting)
    {
        var sheet = new CheckSheet();
        FitmentCheck.Evaluate(car, fitting, sheet);
        return new(fitting, sheet);
    }

    private static TyreOffer Offer(TyreOfferDocument document) => new()
    {
        Id = document.Id,
        Category = document.Tyre.Category,
        Price = document.Price?.Amount,
        TreadwearGrade = document.TreadwearGrade,
        Traction = document.TractionGrade,
        Temperature = document.TemperatureGrade,
        WetGrip = document.WetGripClass,
        RollingResistance = document.RollingResistanceClass,
        Noise = document.NoiseClass,
        DryTestPct = document.DryTestPct,
        WetTestPct = document.WetTestPct,
        LifeKm = document.LifeKm,
        LifeLaps = document.LifeLaps,
    };
}
