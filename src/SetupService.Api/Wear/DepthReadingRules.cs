using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>Reports contradictions in the depth readings of one tyre at their places in the request.</summary>
internal static class DepthReadingRules
{
    /// <summary>Checks one list of readings.</summary>
    /// <param name="context">The request being checked.</param>
    /// <param name="place">Member path of the list.</param>
    /// <param name="readings">The list; not checked where it is missing or part of it was refused already.</param>
    /// <param name="gaugeErrorMm">Error of one reading as stated, one standard deviation, mm, above 0; null = the usual error.</param>
    /// <param name="newDepthMm">Depth when new, mm; null = not known.</param>
    public static void Check<T>(ValidationContext<T> context, string place, DepthReadingDocument[]? readings, double? gaugeErrorMm, double? newDepthMm = null)
    {
        if (readings is null || context.IsRefused(place) || context.IsRefused("GaugeErrorMm") || context.IsRefused("NewDepthMm")) return;
        if (readings.Any(static one => one?.DepthMm is null)) return;
        var gaugeMm = gaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm;
        foreach (var fault in DepthReadingCheck.FindFaults(DepthReadingDocument.ToDomain(readings), gaugeMm, newDepthMm))
            context.AddFailure(new ValidationFailure($"{place}[{fault.Reading}].{Member(fault)}", Message(fault, gaugeMm, gaugeErrorMm is null)) { ErrorCode = FaultCodes.Inconsistent });
    }

    private static string Member(in DepthReadingFaultAt fault) => fault.Fault switch
    {
        DepthReadingFault.RoadRunsBackwards => "RoadKm",
        DepthReadingFault.LapsRunBackwards => "TrackLaps",
        _ => $"DepthMm.{fault.Place}",
    };

    private static string Message(in DepthReadingFaultAt fault, double gaugeMm, bool isAssumed)
    {
        var gauge = FormattableString.Invariant($"a gauge error of {gaugeMm} mm{(isAssumed ? " (gaugeErrorMm, usual for a hand gauge)" : "")} explains {fault.AllowedMm:0.00} mm");
        return fault.Fault switch
        {
            DepthReadingFault.RoadRunsBackwards => FormattableString.Invariant($"roadKm is {fault.Value}, less than at the reading before, which has {fault.Before}: give totals, in the order they were read."),
            DepthReadingFault.LapsRunBackwards => FormattableString.Invariant($"trackLaps is {fault.Value}, less than at the reading before, which has {fault.Before}: give totals, in the order they were read."),
            DepthReadingFault.DepthGrows => FormattableString.Invariant($"the depth is {fault.Value} mm, {fault.Value - fault.Before:0.00} mm more than at the reading before, and {gauge}: a new tyre begins a list of its own."),
            _ => FormattableString.Invariant($"the depth is {fault.Value} mm, {fault.Value - fault.Before:0.00} mm more than newDepthMm, which is {fault.Before}, and {gauge}."),
        };
    }
}
