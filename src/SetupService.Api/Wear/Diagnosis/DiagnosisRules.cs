using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>Rules between the members of a diagnosis: each wheel once, zones in order, depths no greater than when new, weeks and days that exist.</summary>
public sealed class DiagnosisRules : AbstractValidator<DiagnosisRequest>
{
    // A depth more than this many standard deviations above the depth when new cannot be a reading of that tyre.
    private const double BeyondDoubt = 3;

    /// <summary>Creates the rules; they hold no state.</summary>
    public DiagnosisRules()
    {
        RuleFor(request => request.Vehicle!.Front!.Suspension).WithoutContradictions().When(request => request.Vehicle?.Front is not null);
        RuleFor(request => request.Vehicle!.Rear!.Suspension).WithoutContradictions().When(request => request.Vehicle?.Rear is not null);
        RuleFor(request => request).Custom(static (request, context) =>
        {
            CheckDay(request, context);
            CheckWheels(request, context);
            for (var i = 0; i < request.Tyres?.Length; i++)
            {
                if (request.Tyres[i] is { } tyre) CheckTyre(tyre, FormattableString.Invariant($"Tyres[{i}]"), request, context);
            }
        });
    }

    private static void CheckDay(DiagnosisRequest request, ValidationContext<DiagnosisRequest> context)
    {
        if (request.ReadOn is { } text && !context.IsRefused("ReadOn") && DiagnosisMapper.Day(text) is null)
            Add(context, "ReadOn", FaultCodes.Unreadable, $"{TokenText.Quote(text)} is no day; it is written year-month-day, as 2026-11-20.");
    }

    private static void CheckWheels(DiagnosisRequest request, ValidationContext<DiagnosisRequest> context)
    {
        var seen = new int?[4];
        for (var i = 0; i < request.Tyres?.Length; i++)
        {
            var place = FormattableString.Invariant($"Tyres[{i}].Position");
            if (request.Tyres[i] is not { } tyre || (int)tyre.Position is not (>= 0 and < 4 and var wheel) || context.IsRefused(place)) continue;
            if (seen[wheel] is { } first) Add(context, place, FaultCodes.Inconsistent, $"tyres {first} and {i} are of the same wheel: give each once.");
            seen[wheel] ??= i;
        }
    }

    private static void CheckTyre(TyreReadingDocument tyre, string place, DiagnosisRequest request, ValidationContext<DiagnosisRequest> context)
    {
        CheckZones(tyre, place, context);
        CheckDepths(tyre, place, context);
        if (tyre.TemperatureWindowC is { } window && window.From >= window.To && !context.IsRefused(place + ".TemperatureWindowC"))
            Add(context, place + ".TemperatureWindowC.To", FaultCodes.Inconsistent, FormattableString.Invariant($"to is {window.To} °C, not above from, which is {window.From} °C."));
        CheckWeek(tyre, place, request, context);
    }

    private static void CheckZones(TyreReadingDocument tyre, string place, ValidationContext<DiagnosisRequest> context)
    {
        var isZoned = tyre.Zones is not null || context.IsRefused(place + ".Zones");
        if (isZoned && (tyre.DepthMm is not null || context.IsRefused(place + ".DepthMm")))
            Add(context, place + ".Zones", FaultCodes.Inconsistent, "depthMm and zones exclude each other: give the depths across the tread in one form.");
        if (tyre.AroundMm is not null && tyre.DepthMm is null && !context.IsRefused(place + ".DepthMm"))
            Add(context, place + ".DepthMm", FaultCodes.Required, "depthMm is missing; aroundMm holds the same three grooves at further places round the tyre.");
        for (var i = 1; i < tyre.Zones?.Length; i++)
        {
            if (tyre.Zones[i] is not { } zone || tyre.Zones[i - 1] is not { } before || zone.AcrossPct > before.AcrossPct) continue;
            var at = FormattableString.Invariant($"{place}.Zones[{i}]");
            if (context.IsRefused(at) || context.IsRefused(FormattableString.Invariant($"{place}.Zones[{i - 1}]"))) continue;
            Add(context, at + ".AcrossPct", FaultCodes.Inconsistent, FormattableString.Invariant($"{zone.AcrossPct} is not beyond {before.AcrossPct}, the zone before it: zones go from the outer edge inwards, each place once."));
        }
    }

    private static void CheckDepths(TyreReadingDocument tyre, string place, ValidationContext<DiagnosisRequest> context)
    {
        if (tyre.NewDepthMm is not { } newMm) return;
        var mostMm = newMm + (BeyondDoubt * (tyre.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm));
        Check(tyre.DepthMm, place + ".DepthMm");
        for (var i = 0; i < tyre.AroundMm?.Length; i++) Check(tyre.AroundMm[i], FormattableString.Invariant($"{place}.AroundMm[{i}]"));
        for (var i = 0; i < tyre.Zones?.Length; i++)
        {
            if (tyre.Zones[i] is { } zone) One(zone.DepthMm, FormattableString.Invariant($"{place}.Zones[{i}].DepthMm"));
        }

        void Check(DepthsDocument? depths, string at)
        {
            if (depths is null) return;
            One(depths.Outer, at + ".Outer");
            One(depths.Centre, at + ".Centre");
            One(depths.Inner, at + ".Inner");
        }

        void One(double depthMm, string at)
        {
            if (depthMm > mostMm && !context.IsRefused(at))
                Add(context, at, FaultCodes.Inconsistent, FormattableString.Invariant($"{depthMm} mm is more than the tyre had new, which is {newMm} mm, by more than the gauge's error leaves open."));
        }
    }

    private static void CheckWeek(TyreReadingDocument tyre, string place, DiagnosisRequest request, ValidationContext<DiagnosisRequest> context)
    {
        if (tyre.MadeWeek is not { } text || context.IsRefused(place + ".MadeWeek")) return;
        if (!MadeWeekReader.Read(text).TryGet(out var week, out var fault))
            Add(context, place + ".MadeWeek", FaultCodes.Unreadable, fault.Message);
        else if (request.ReadOn is { } readOn && DiagnosisMapper.Day(readOn) is { } day && week.AgeYears(day) is null)
            Add(context, place + ".MadeWeek", FaultCodes.Inconsistent, $"the tyre would have been made after the day of its reading, {readOn}.");
    }

    private static void Add(ValidationContext<DiagnosisRequest> context, string place, string code, string message) =>
        context.AddFailure(new ValidationFailure(place, message) { ErrorCode = code });
}
