using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>What a camber target must keep beyond types and ranges: a whole car, one form of cornering, ranges that have an inside.</summary>
public sealed class CamberTargetRules : AbstractValidator<CamberTargetRequest>
{
    private const int MostFaultsOfBends = 20;

    private static readonly HandlingRules Car = new(needsWheelbase: true);
    private static readonly AdjustableRules Ends = new();

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
        RuleFor(request => request.Vehicle.Front!.Adjustable!).SetValidator(Ends).When(request => request.Vehicle?.Front?.Adjustable is not null);
        RuleFor(request => request.Vehicle.Rear!.Adjustable!).SetValidator(Ends).When(request => request.Vehicle?.Rear?.Adjustable is not null);
        RuleForEach(request => request.CastersDeg)
            .Must(static (request, casterDeg) => Caster(request) is not { } range || (casterDeg >= range.From && casterDeg <= range.To))
            .When(static (request, context) => Caster(request) is { } range && range.From <= range.To && !context.IsRefused($"Vehicle.{request.Axle}.Adjustable.CasterDeg"))
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage((request, casterDeg) => FormattableString.Invariant($"{casterDeg}° is outside adjustable.casterDeg of the {CorneringWords.Name(request.Axle)} axle, which is {Caster(request)!.From} to {Caster(request)!.To}°."));
    }

    private static CasterRangeDocument? Caster(CamberTargetRequest request) =>
        (request.Axle == CarAxle.Front ? request.Vehicle?.Front : request.Vehicle?.Rear)?.Adjustable?.CasterDeg;

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

/// <summary>The ends of each range an angle can be set in, the lower one first.</summary>
public sealed class AdjustableRules : AbstractValidator<AdjustableDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public AdjustableRules()
    {
        RuleFor(one => one.CamberDeg!.To).Must(static (one, to) => to >= one.CamberDeg!.From).When(one => one.CamberDeg is not null).Says(FaultCodes.Inconsistent, static (one, to) => Below(one.CamberDeg!.From, to));
        RuleFor(one => one.ToeDeg!.To).Must(static (one, to) => to >= one.ToeDeg!.From).When(one => one.ToeDeg is not null).Says(FaultCodes.Inconsistent, static (one, to) => Below(one.ToeDeg!.From, to));
        RuleFor(one => one.CasterDeg!.To).Must(static (one, to) => to >= one.CasterDeg!.From).When(one => one.CasterDeg is not null).Says(FaultCodes.Inconsistent, static (one, to) => Below(one.CasterDeg!.From, to));
    }

    private static string Below(double from, double to) => FormattableString.Invariant($"to is {to}, below from, which is {from}.");
}
