using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry;

/// <summary>What the ranges of a sweep must keep: a step that leads to the end, and not too many rows.</summary>
internal static class RangeRules
{
    /// <summary>The most rows of one sweep; more than any chart shows.</summary>
    public const int MostRows = 5000;

    // Beyond this nobody needs to know how many exactly.
    private const long MostCounted = 1_000_000;

    /// <summary>The step of a range leads to its end, and gives no more rows than a call computes.</summary>
    /// <param name="rules">The rules of a call.</param>
    /// <param name="member">The range's member.</param>
    /// <param name="range">The range; null where it is not given.</param>
    /// <param name="most">The most rows.</param>
    public static void LeadsToItsEnd<T>(this AbstractValidator<T> rules, string member, Func<T, SweepRange?> range, int most = MostRows)
    {
        rules.StepLeads(member, range);
        rules.KeepsRows(member, range, static (_, _) => 1, most);
    }

    /// <summary>The steps of two ranges, one within the other, lead to their ends and together give no more than <see cref="MostRows"/>; the finer is named.</summary>
    public static void LeadToTheirEnds<T>(this AbstractValidator<T> rules, string travel, Func<T, SweepRange?> ofTravel, string rack, Func<T, SweepRange?> ofRack)
    {
        rules.StepLeads(travel, ofTravel);
        rules.StepLeads(rack, ofRack);
        rules.KeepsRows(travel, ofTravel, (request, context) => CountOf(rack, ofRack(request), context) is var others && others <= CountOf(travel, ofTravel(request), context) ? others : 0);
        rules.KeepsRows(rack, ofRack, (request, context) => CountOf(travel, ofTravel(request), context) is var others && others < CountOf(rack, ofRack(request), context) ? others : 0);
    }

    private static void StepLeads<T>(this AbstractValidator<T> rules, string member, Func<T, SweepRange?> range) => rules.RuleFor(request => range(request))
        .Must(static range => range is not { } known || (known.Step != 0 && known.Count > 0))
        .Says(FaultCodes.Inconsistent, (_, range) => Astray(range!.Value, UnitOfName.Read(member)))
        .When((_, context) => !context.IsRefused(member)).OverridePropertyName(member + ".Step");

    // The other range's count is 0 where that one is the finer and named.
    private static void KeepsRows<T>(this AbstractValidator<T> rules, string member, Func<T, SweepRange?> range, Func<T, ValidationContext<T>, int> others, int most = MostRows) =>
        rules.RuleFor(request => range(request))
            .Must((request, range, context) =>
            {
                var (own, other) = (CountOf(member, range, context), others(request, context));
                context.MessageFormatter.AppendArgument("Rows", other > 1
                    ? FormattableString.Invariant($"{Counted(member, own, other)} give {Counted((long)own * other)} rows")
                    : FormattableString.Invariant($"this step gives {Counted(own)} rows"));
                return (long)own * other <= most;
            })
            .Says(FaultCodes.TooMany, FormattableString.Invariant($"{{Rows}}; at most {most} are computed."))
            .WithState(_ => new FaultLimits { Minimum = 1, Maximum = most, Unit = "count" }).OverridePropertyName(member + ".Step");

    /// <summary>How many values a range has; 1 where it is not given, was refused or leads nowhere.</summary>
    private static int CountOf<T>(string member, SweepRange? range, ValidationContext<T> context) =>
        range is { Step: not 0, Count: > 0 } known && !context.IsRefused(member) ? known.Count : 1;

    private static string Astray(SweepRange range, string? unit)
    {
        var wanted = range.To > range.From ? "above 0" : range.To < range.From ? "below 0" : "other than 0";
        return FormattableString.Invariant($"step is {range.Step} {unit}; it must be {wanted} to lead from {range.From} to {range.To} {unit}.");
    }

    private static string Counted(string member, long own, long other) => member == "RackMm"
        ? $"{Counted(other)} positions of travel with {Counted(own)} of the rack at each"
        : $"{Counted(own)} positions of travel with {Counted(other)} of the rack at each";

    private static string Counted(long count) => FormattableString.Invariant($"{(count > MostCounted ? "more than " : "")}{Math.Min(count, MostCounted)}");
}
