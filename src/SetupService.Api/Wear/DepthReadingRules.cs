using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>A request with the readings of several tyres.</summary>
internal interface ITyreHistories
{
    /// <summary>The tyres, each wheel once.</summary>
    TyreReadingsDocument[] Tyres { get; }
}

/// <summary>What the readings of one tyre must keep: depths in one form, clocks that are counted throughout and run on, tread that does not grow. Which do not, and where, the domain tells.</summary>
public sealed class TyreReadingsRules : AbstractValidator<TyreReadingsDocument>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public TyreReadingsRules()
    {
        RuleFor(tyre => tyre.Position).IsGivenOnce<ITyreHistories, TyreReadingsDocument>(request => request.Tyres, tyre => tyre.Position, nameof(ITyreHistories.Tyres));
        RuleForEach(tyre => tyre.Readings).SetValidator(new DepthReadingRules());
        RuleFor(tyre => tyre.Readings).Custom((readings, context) =>
        {
            var tyre = context.InstanceToValidate;
            if (readings is null || context.IsRefused(context.PropertyPath) || IsRefused("GaugeErrorMm") || IsRefused("NewDepthMm")) return;
            if (readings.Any(static one => one is null || (one.DepthMm is null) == (one.Zones is null) || (one.RoadKm is null && one.TrackLaps is null))) return;
            if (readings.Any(one => (one.RoadKm is null) != (readings[0].RoadKm is null) || (one.TrackLaps is null) != (readings[0].TrackLaps is null))) return;
            var gaugeMm = tyre.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm;
            foreach (var fault in DepthReadingCheck.FindFaults(tyre.ToDomain(), gaugeMm, tyre.NewDepthMm))
                context.AddFailure(new ValidationFailure($"{context.PropertyPath}[{fault.Reading}].{Member(fault, readings[fault.Reading])}", Message(fault, gaugeMm, tyre.GaugeErrorMm is null)) { ErrorCode = FaultCodes.Inconsistent });

            bool IsRefused(string member) => context.IsRefused(context.PropertyChain.BuildPropertyPath(member));
        });
    }

    private static string Member(in DepthReadingFaultAt fault, DepthReadingDocument reading) => fault.Fault switch
    {
        DepthReadingFault.RoadRunsBackwards => "RoadKm",
        DepthReadingFault.LapsRunBackwards => "TrackLaps",
        _ when reading.Zones is not null => "Zones",
        _ => $"DepthMm.{fault.Place}",
    };

    private static string Message(in DepthReadingFaultAt fault, double gaugeMm, bool isAssumed)
    {
        var gauge = FormattableString.Invariant($"a gauge error of {gaugeMm} mm{(isAssumed ? " (gaugeErrorMm, usual for a hand gauge)" : "")} explains {fault.AllowedMm:0.00} mm");
        return fault.Fault switch
        {
            DepthReadingFault.RoadRunsBackwards => FormattableString.Invariant($"roadKm is {fault.Value}, less than at the reading before, which has {fault.Before}: give totals, in the order they were read."),
            DepthReadingFault.LapsRunBackwards => FormattableString.Invariant($"trackLaps is {fault.Value}, less than at the reading before, which has {fault.Before}: give totals, in the order they were read."),
            DepthReadingFault.DepthGrows => FormattableString.Invariant($"the depth is {fault.Value:0.##} mm, {fault.Value - fault.Before:0.00} mm more than at the reading before, and {gauge}: a new tyre begins a list of its own."),
            _ => FormattableString.Invariant($"the depth is {fault.Value:0.##} mm, {fault.Value - fault.Before:0.00} mm more than newDepthMm, which is {fault.Before}, and {gauge}."),
        };
    }
}

/// <summary>What one reading must keep: depths in one form, and at least one clock, the same as the other readings of the tyre.</summary>
public sealed class DepthReadingRules : AbstractValidator<DepthReadingDocument>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public DepthReadingRules()
    {
        RuleFor(reading => reading.Zones).Must((reading, zones, context) => !(IsSent(zones, nameof(reading.Zones), context) && IsSent(reading.DepthMm, nameof(reading.DepthMm), context)))
            .Says(FaultCodes.Inconsistent, "depthMm and zones exclude each other: give the depths across the tread in one form.");
        RuleFor(reading => reading.DepthMm).Must((reading, depth, context) => depth is not null || IsSent(reading.Zones, nameof(reading.Zones), context))
            .Says(FaultCodes.Required, "depthMm is missing: a reading needs the depths across the tread, here or in zones.").WhenRead(nameof(DepthReadingDocument.DepthMm));
        RuleForEach(reading => reading.Zones).SetValidator(new ReadingZoneRules());
        RuleFor(reading => reading.AroundMm).Null().When(reading => reading.DepthMm is null)
            .Says(FaultCodes.Inconsistent, "aroundMm holds the three grooves of depthMm at further places round the tyre, and depthMm is missing.").WhenRead(nameof(DepthReadingDocument.DepthMm));
        RuleFor(reading => reading.RoadKm).Must((reading, roadKm, context) => IsSent(roadKm, nameof(reading.RoadKm), context) || !IsCounted(context, static one => one.RoadKm, static one => one.TrackLaps))
            .Says(FaultCodes.Required, "roadKm is missing: it is given in other readings of this tyre, or no clock is.").WhenRead(nameof(DepthReadingDocument.RoadKm));
        RuleFor(reading => reading.TrackLaps).Must((reading, laps, context) => IsSent(laps, nameof(reading.TrackLaps), context) || !IsCounted(context, static one => one.TrackLaps, static one => one.RoadKm))
            .Says(FaultCodes.Required, "trackLaps is missing: it is given in other readings of this tyre, or no clock is.").WhenRead(nameof(DepthReadingDocument.TrackLaps));
    }

    private static bool IsSent(object? value, string member, ValidationContext<DepthReadingDocument> context) =>
        value is not null || context.IsRefused(context.PropertyChain.BuildPropertyPath(member));

    /// <summary>Whether a clock is given in some reading of the tyre, or neither in this one.</summary>
    private static bool IsCounted(ValidationContext<DepthReadingDocument> context, Func<DepthReadingDocument, double?> clock, Func<DepthReadingDocument, double?> other) =>
        other(context.InstanceToValidate) is null || (context.Parent<TyreReadingsDocument>()?.Readings.Any(one => one is not null && clock(one) is not null) ?? false);
}

/// <summary>What a zone of a reading must keep: it lies beyond the one before it.</summary>
public sealed class ReadingZoneRules : AbstractValidator<ZoneDocument>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public ReadingZoneRules() => RuleFor(zone => zone.AcrossPct).IsBeyondTheOneBefore(context => context.Parent<DepthReadingDocument>()?.Zones);
}

/// <summary>Each wheel's tyre is given once.</summary>
internal static class WheelRules
{
    /// <summary>No tyre before this one in the list is of the same wheel.</summary>
    /// <param name="rule">The wheel of a tyre in the list.</param>
    /// <param name="list">The list.</param>
    /// <param name="wheel">The wheel of a tyre.</param>
    /// <param name="name">The list's member.</param>
    public static IRuleBuilderOptions<T, WheelPosition> IsGivenOnce<TRequest, T>(
        this IRuleBuilder<T, WheelPosition> rule, Func<TRequest, IReadOnlyList<T?>?> list, Func<T, WheelPosition> wheel, string name)
        where TRequest : class
        where T : class => rule
        .Must((one, position, context) =>
        {
            if (context.Parent<TRequest>() is not { } request || list(request) is not { } all) return true;
            for (var (i, first) = (0, -1); i < all.Count; i++)
            {
                if (ReferenceEquals(all[i], one))
                {
                    context.MessageFormatter.AppendArgument("First", first).AppendArgument("This", i);
                    return first < 0;
                }

                if (first < 0 && all[i] is { } other && wheel(other) == position && !context.IsRefused(FormattableString.Invariant($"{name}[{i}].Position"))) first = i;
            }

            return true;
        })
        .Says(FaultCodes.Inconsistent, char.ToLowerInvariant(name[0]) + name[1..] + " {First} and {This} are of the same wheel: give each once.")
        .WhenRead("Position");
}
