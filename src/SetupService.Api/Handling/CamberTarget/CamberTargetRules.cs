using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>What a camber target must keep beyond types and ranges: a whole car, one form of cornering, ranges that have an inside.</summary>
public sealed class CamberTargetRules : AbstractValidator<CamberTargetRequest>
{
    private const int MostFaultsOfBends = 20;

    private static readonly HandlingRules Car = new(needsWheelbase: true);

    /// <summary>Makes the rules; they hold no state.</summary>
    public CamberTargetRules()
    {
        RuleFor(request => request.Vehicle).SetValidator(Car).When(request => request.Vehicle is not null);
        RuleFor(request => request.LateralG)
            .Must(static (request, _, context) => FormsSent(request, context).Count > 0)
            .WithErrorCode(FaultCodes.Required)
            .WithMessage("one of lateralG, corners and histogramCsv is needed: the cornering the tyre is to stand right for.");
        RuleFor(request => request.Corners)
            .Must(static (request, _, context) => IsOnly(request, context, "corners"))
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage("{Forms} exclude each other: give the cornering in one form.");
        RuleFor(request => request.HistogramCsv)
            .Must(static (request, _, context) => IsOnly(request, context, "histogramCsv"))
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage("{Forms} exclude each other: give the cornering in one form.");
        RuleFor(request => request.SpeedKmh)
            .Null().When(request => request.CornerRadiusM is not null)
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage(TurnRules.OneOfBoth);
        RuleFor(request => request).Custom(AddFaultsOfBends);
        RuleFor(request => request.Adjustable!.CamberDeg!.To)
            .Must(static (request, to) => to >= request.Adjustable!.CamberDeg!.From)
            .When(request => request.Adjustable?.CamberDeg is not null)
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage((request, to) => FormattableString.Invariant($"to is {to}, below from, which is {request.Adjustable!.CamberDeg!.From}."));
        RuleFor(request => request.Adjustable!.CasterDeg!.To)
            .Must(static (request, to) => to >= request.Adjustable!.CasterDeg!.From)
            .When(request => request.Adjustable?.CasterDeg is not null)
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage((request, to) => FormattableString.Invariant($"to is {to}, below from, which is {request.Adjustable!.CasterDeg!.From}."));
        RuleForEach(request => request.CastersDeg)
            .Must(static (request, casterDeg) => casterDeg >= request.Adjustable!.CasterDeg!.From && casterDeg <= request.Adjustable.CasterDeg.To)
            .When(static (request, context) => request.Adjustable?.CasterDeg is { } range && range.From <= range.To && !context.IsRefused("Adjustable.CasterDeg"))
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage((request, casterDeg) => FormattableString.Invariant($"{casterDeg}° is outside adjustable.casterDeg, which is {request.Adjustable!.CasterDeg!.From} to {request.Adjustable.CasterDeg.To}°."));
    }

    // What was refused was still sent.
    private static List<string> FormsSent(CamberTargetRequest request, ValidationContext<CamberTargetRequest> context)
    {
        var sent = new List<string>(3);
        if (request.LateralG is not null || context.IsRefused("LateralG")) sent.Add("lateralG");
        if (request.Corners is not null || context.IsRefused("Corners")) sent.Add("corners");
        if (request.HistogramCsv is not null || context.IsRefused("HistogramCsv")) sent.Add("histogramCsv");
        return sent;
    }

    /// <summary>False where another form was sent before this one; only the second of several is named.</summary>
    private static bool IsOnly(CamberTargetRequest request, ValidationContext<CamberTargetRequest> context, string form)
    {
        var sent = FormsSent(request, context);
        context.MessageFormatter.AppendArgument("Forms", string.Join(" and ", sent));
        return sent.Count < 2 || sent[1] != form;
    }

    /// <summary>What the reader of the bends finds, of each entry or line, where the form is clear.</summary>
    private static void AddFaultsOfBends(CamberTargetRequest request, ValidationContext<CamberTargetRequest> context)
    {
        if (FormsSent(request, context).Count != 1 || request is { CornerRadiusM: not null, SpeedKmh: not null } || context.IsRefused("CornerRadiusM") || context.IsRefused("SpeedKmh")) return;
        foreach (var (place, code, message) in BendMixMapper.Map(request).Faults.Where(one => !context.IsRefused(one.Place)).Take(MostFaultsOfBends))
            context.AddFailure(new ValidationFailure(place, message) { ErrorCode = code });
    }
}
