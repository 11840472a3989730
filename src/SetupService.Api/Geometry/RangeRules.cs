using FluentValidation;
using FluentValidation.Results;
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

    /// <summary>Refuses a step that leads nowhere or away; gives how many values there are, 0 where that cannot be said.</summary>
    public static int Check<T>(ValidationContext<T> context, string member, SweepRange range)
    {
        if (context.IsRefused(member)) return 0;
        if (range.Step != 0 && range.Count > 0) return range.Count;
        var unit = UnitOfName.Read(member);
        var wanted = range.To > range.From ? "above 0" : range.To < range.From ? "below 0" : "other than 0";
        Add(context, member, FaultCodes.Inconsistent, FormattableString.Invariant(
            $"step is {range.Step} {unit}; it must be {wanted} to lead from {range.From} to {range.To} {unit}."));
        return 0;
    }

    /// <summary>Refuses more rows than a call computes.</summary>
    public static void CheckCount<T>(ValidationContext<T> context, string member, long count, int most = MostRows) =>
        CheckCount(context, member, count, FormattableString.Invariant($"this step gives {Counted(count)} rows"), most);

    /// <summary>Refuses more rows of two ranges than <see cref="MostRows"/>; the finer range is named. A range not given, or refused, counts 0.</summary>
    public static void CheckCount<T>(ValidationContext<T> context, (string Member, int Count) travel, (string Member, int Count) rack)
    {
        var finer = rack.Count > travel.Count ? rack : travel;
        var count = Math.Max(1L, travel.Count) * Math.Max(1L, rack.Count);
        if (count == finer.Count)
            CheckCount(context, finer.Member, count);
        else
            CheckCount(context, finer.Member, count, FormattableString.Invariant(
                $"{Counted(travel.Count)} positions of travel with {Counted(rack.Count)} of the rack at each give {Counted(count)} rows"));
    }

    private static void CheckCount<T>(ValidationContext<T> context, string member, long count, string reason, int most = MostRows)
    {
        if (count <= most) return;
        Add(context, member, FaultCodes.TooMany, FormattableString.Invariant($"{reason}; at most {most} are computed."), new FaultLimits { Minimum = 1, Maximum = most, Unit = "count" });
    }

    private static string Counted(long count) => FormattableString.Invariant($"{(count > MostCounted ? "more than " : "")}{Math.Min(count, MostCounted)}");

    private static void Add<T>(ValidationContext<T> context, string member, string code, string message, FaultLimits? limits = null) =>
        context.AddFailure(new ValidationFailure($"{member}.Step", message) { ErrorCode = code, CustomState = limits });
}
