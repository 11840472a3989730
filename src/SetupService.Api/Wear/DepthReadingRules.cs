using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>Reports contradictions in the depth readings of one tyre at their places in the request.</summary>
internal static class DepthReadingRules
{
    /// <summary>The readings are of one tyre: clocks that run on, depths that do not grow. Which of them, and where, the domain tells.</summary>
    /// <param name="rule">The list; not judged where it is missing or part of it was refused already.</param>
    /// <param name="gaugeErrorMm">Error of one reading as stated, one standard deviation, mm, above 0; null = the usual error.</param>
    /// <param name="newDepthMm">Depth when new, mm; null = not known.</param>
    public static IRuleBuilderOptionsConditions<T, DepthReadingDocument[]?> AreOfOneTyre<T>(
        this IRuleBuilder<T, DepthReadingDocument[]?> rule, Func<T, double?> gaugeErrorMm, Func<T, double?>? newDepthMm = null) => rule.Custom((readings, context) =>
    {
        if (readings is null || context.IsRefused(context.PropertyPath) || context.IsRefused("GaugeErrorMm") || context.IsRefused("NewDepthMm")) return;
        if (readings.Any(static one => one?.DepthMm is null)) return;
        var stated = gaugeErrorMm(context.InstanceToValidate);
        var gaugeMm = stated ?? TreadDepths.UsualGaugeErrorMm;
        foreach (var fault in DepthReadingCheck.FindFaults(DepthReadingDocument.ToDomain(readings), gaugeMm, newDepthMm?.Invoke(context.InstanceToValidate)))
            context.AddFailure(new ValidationFailure($"{context.PropertyPath}[{fault.Reading}].{Member(fault)}", Message(fault, gaugeMm, stated is null)) { ErrorCode = FaultCodes.Inconsistent });
    });

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
