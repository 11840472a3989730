using FluentValidation;
using FluentValidation.Internal;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>What the readings of one tyre must keep.</summary>
public sealed class TyreReadingRules : AbstractValidator<TyreReadingDocument>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public TyreReadingRules()
    {
        RuleFor(tyre => tyre.Position).IsGivenOnce<ITyreReadings, TyreReadingDocument>(request => request.Tyres, tyre => tyre.Position, nameof(ITyreReadings.Tyres));

        // What was refused was still sent.
        RuleFor(tyre => tyre.Zones).Must((tyre, zones, context) => !(IsSent(zones, nameof(tyre.Zones), context) && IsSent(tyre.DepthMm, nameof(tyre.DepthMm), context)))
            .Says(FaultCodes.Inconsistent, "depthMm and zones exclude each other: give the depths across the tread in one form.");
        RuleFor(tyre => tyre.DepthMm).NotNull().When(tyre => tyre.AroundMm is not null)
            .Says(FaultCodes.Required, "depthMm is missing; aroundMm holds the same three grooves at further places round the tyre.").WhenRead(nameof(TyreReadingDocument.DepthMm));
        RuleForEach(tyre => tyre.Zones).SetValidator(new ZoneRules());
        RuleFor(tyre => tyre.DepthMm).SetValidator(new DepthsRules()!);
        RuleForEach(tyre => tyre.AroundMm).SetValidator(new DepthsRules());
        RuleFor(tyre => tyre.TemperatureWindowC!.To).GreaterThan(tyre => tyre.TemperatureWindowC!.From).When(tyre => tyre.TemperatureWindowC is not null)
            .Says(FaultCodes.Inconsistent, (tyre, to) => FormattableString.Invariant($"to is {to} °C, not above from, which is {tyre.TemperatureWindowC!.From} °C.")).WhenRead(nameof(TyreReadingDocument.TemperatureWindowC));
        RuleFor(tyre => tyre.PressureKpa!.AimHot).Must((tyre, aimHot) => !(aimHot < tyre.PressureKpa!.AimCold)).When(tyre => tyre.PressureKpa is not null)
            .Says(FaultCodes.Inconsistent, (tyre, aimHot) => FormattableString.Invariant($"aimHot is {aimHot} kPa, below aimCold, which is {tyre.PressureKpa!.AimCold} kPa: a tyre that gets warm gains pressure."));
        RuleFor(tyre => tyre.MadeWeek).Must(text => text is null || MadeWeekReader.Read(text).TryGet(out _, out _))
            .Says(FaultCodes.Unreadable, (tyre, text) => MadeWeekReader.Read(text!).TryGet(out var week, out var fault) ? "" : fault.Message).WhenRead(nameof(TyreReadingDocument.MadeWeek));
        RuleFor(tyre => tyre.MadeWeek).Must((_, text, context) => !IsMadeAfterReading(text, context.Parent<ITyreReadings>()?.ReadOn, context.MessageFormatter))
            .Says(FaultCodes.Inconsistent, "the tyre would have been made after the day of its reading, {ReadOn}.").WhenRead(nameof(TyreReadingDocument.MadeWeek));
    }

    private static bool IsSent(object? value, string member, ValidationContext<TyreReadingDocument> context) =>
        value is not null || context.IsRefused(context.PropertyChain.BuildPropertyPath(member));

    private static bool IsMadeAfterReading(string? madeWeek, string? readOn, MessageFormatter words)
    {
        words.AppendArgument("ReadOn", readOn);
        return madeWeek is not null && readOn is not null && MadeWeekReader.Read(madeWeek).TryGet(out var week, out _) && TyreReadingMapper.Day(readOn) is { } day && week.AgeYears(day) is null;
    }
}

/// <summary>What a zone must keep: it lies beyond the one before it, and is no deeper than the tyre was new.</summary>
public sealed class ZoneRules : AbstractValidator<ZoneDocument>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public ZoneRules()
    {
        RuleFor(zone => zone.AcrossPct).IsBeyondTheOneBefore(context => context.Parent<TyreReadingDocument>()?.Zones);
        RuleFor(zone => zone.DepthMm).IsNoDeeperThanNew();
    }
}

/// <summary>What depths must keep: none is deeper than the tyre was new.</summary>
public sealed class DepthsRules : AbstractValidator<DepthsDocument>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public DepthsRules()
    {
        RuleFor(depths => depths.Outer).IsNoDeeperThanNew();
        RuleFor(depths => depths.Centre).IsNoDeeperThanNew();
        RuleFor(depths => depths.Inner).IsNoDeeperThanNew();
    }
}

/// <summary>A depth against the depth when new, of the tyre it is read of.</summary>
internal static class NewDepthRules
{
    // A depth more than this many standard deviations above the depth when new cannot be a reading of that tyre.
    private const double BeyondDoubt = 3;

    public static void IsNoDeeperThanNew<T>(this IRuleBuilder<T, double> rule) => rule.Must(static (_, depthMm, context) =>
    {
        if (context.Parent<TyreReadingDocument>() is not { NewDepthMm: { } newMm } tyre) return true;
        context.MessageFormatter.AppendArgument("Depth", FormattableString.Invariant($"{depthMm}")).AppendArgument("New", FormattableString.Invariant($"{newMm}"));
        return depthMm <= newMm + (BeyondDoubt * (tyre.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm)) || context.IsRefused(context.PropertyPath);
    }).Says(FaultCodes.Inconsistent, "{Depth} mm is more than the tyre had new, which is {New} mm, by more than the gauge's error leaves open.");
}

/// <summary>A day that exists.</summary>
internal static class DayRules
{
    public static void IsADay<T>(this IRuleBuilder<T, string?> rule) => rule.Must(static text => text is null || TyreReadingMapper.Day(text) is not null)
        .Says(FaultCodes.Unreadable, (_, text) => $"{TokenText.Quote(text!)} is no day; it is written year-month-day, as 2026-11-20.").WhenRead("ReadOn");
}

/// <summary>Zones across a tread go from the outer edge inwards.</summary>
internal static class ZoneOrderRules
{
    public static void IsBeyondTheOneBefore(this IRuleBuilder<ZoneDocument, double> rule, Func<IValidationContext, ZoneDocument[]?> list) => rule.Must((zone, acrossPct, context) =>
    {
        if (list(context) is not { } zones) return true;
        var index = Array.FindIndex(zones, other => ReferenceEquals(other, zone));
        if (index < 1 || zones[index - 1] is not { } before || acrossPct > before.AcrossPct) return true;
        var place = context.PropertyChain.ToString();
        context.MessageFormatter.AppendArgument("Here", FormattableString.Invariant($"{acrossPct}")).AppendArgument("Before", FormattableString.Invariant($"{before.AcrossPct}"));
        return context.IsRefused(place) || context.IsRefused(FormattableString.Invariant($"{place[..place.LastIndexOf('[')]}[{index - 1}]"));
    }).Says(FaultCodes.Inconsistent, "{Here} is not beyond {Before}, the zone before it: zones go from the outer edge inwards, each place once.");
}
