using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>What a camber target must keep beyond types and ranges: a whole car, one form of cornering, ranges that have an inside.</summary>
public sealed class CamberTargetRules : AbstractValidator<CamberTargetRequest>
{
    private static readonly HandlingRules Car = new(needsWheelbase: true);

    /// <summary>Makes the rules; they hold no state.</summary>
    public CamberTargetRules()
    {
        RuleFor(request => request.Vehicle).SetValidator(Car).When(request => request.Vehicle is not null);
        RuleFor(request => request).Custom(static (request, context) =>
        {
            CheckForm(request, context);
            CheckRange(context, "Adjustable.CamberDeg.To", request.Adjustable?.CamberDeg?.From, request.Adjustable?.CamberDeg?.To);
            CheckRange(context, "Adjustable.CasterDeg.To", request.Adjustable?.CasterDeg?.From, request.Adjustable?.CasterDeg?.To);
            CheckCasters(request, context);
        });
    }

    private static void CheckForm(CamberTargetRequest request, ValidationContext<CamberTargetRequest> context)
    {
        string[] sent = [.. new[]
        {
            ("lateralG", request.LateralG is not null || context.IsRefused("LateralG")),
            ("corners", request.Corners is not null || context.IsRefused("Corners")),
            ("histogramCsv", request.HistogramCsv is not null || context.IsRefused("HistogramCsv")),
        }.Where(one => one.Item2).Select(one => one.Item1)];
        if (sent.Length == 0) Add(context, "LateralG", FaultCodes.Required, "one of lateralG, corners and histogramCsv is needed: the cornering the tyre is to stand right for.");
        if (sent.Length > 1) Add(context, char.ToUpperInvariant(sent[1][0]) + sent[1][1..], FaultCodes.Inconsistent, $"{string.Join(" and ", sent)} exclude each other: give the cornering in one form.");
        if (request is { CornerRadiusM: not null, SpeedKmh: not null })
            Add(context, "SpeedKmh", FaultCodes.Inconsistent, "cornerRadiusM and speedKmh exclude each other: with the lateral acceleration one follows from the other.");
        else if (sent.Length == 1 && !context.IsRefused("CornerRadiusM") && !context.IsRefused("SpeedKmh"))
            foreach (var (place, code, message) in BendMixMapper.Map(request).Faults.Where(one => !context.IsRefused(one.Place)).Take(20)) Add(context, place, code, message);
    }

    private static void CheckCasters(CamberTargetRequest request, ValidationContext<CamberTargetRequest> context)
    {
        if (request.Adjustable?.CasterDeg is not { } range || range.From > range.To || context.IsRefused("Adjustable.CasterDeg")) return;
        for (var i = 0; i < request.CastersDeg?.Length; i++)
        {
            var asked = request.CastersDeg[i];
            if (asked >= range.From && asked <= range.To) continue;
            if (!context.IsRefused($"CastersDeg[{i}]")) Add(context, $"CastersDeg[{i}]", FaultCodes.Inconsistent, FormattableString.Invariant($"{asked}° is outside adjustable.casterDeg, which is {range.From} to {range.To}°."));
        }
    }

    private static void CheckRange(ValidationContext<CamberTargetRequest> context, string place, double? from, double? to)
    {
        if (from > to) Add(context, place, FaultCodes.Inconsistent, FormattableString.Invariant($"to is {to}, below from, which is {from}."));
    }

    private static void Add(ValidationContext<CamberTargetRequest> context, string place, string code, string message) =>
        context.AddFailure(new ValidationFailure(place, message) { ErrorCode = code });
}
