using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Geometry.Sweeps;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>What the ranges of a sweep must keep: a step that leads to the end, and not too many rows.</summary>
internal static class RangeRules
{
    /// <summary>The most rows of one sweep; more than any chart shows.</summary>
    public const int MostRows = 5000;

    /// <summary>Whether a range of one axis keeps both rules below.</summary>
    public static bool Holds(SweepRange range) => range.Step != 0 && range.Count is > 0 and <= MostRows;

    /// <summary>Refuses a step that leads nowhere or away.</summary>
    public static void Check<T>(ValidationContext<T> context, string member, SweepRange range)
    {
        if (range.Step == 0 || (range.Count == 0))
        {
            Add(context, member, FaultCodes.Inconsistent, $"step is {range.Step}; it must lead from {range.From} to {range.To}.");
        }
    }

    /// <summary>Refuses more rows than <see cref="MostRows"/>.</summary>
    public static void CheckCount<T>(ValidationContext<T> context, string member, long count)
    {
        if (count <= MostRows) return;
        Add(context, member, FaultCodes.TooMany, $"the sweep has {count} rows; at most {MostRows} are computed.", new FaultLimits { Minimum = 1, Maximum = MostRows, Unit = "count" });
    }

    private static void Add<T>(ValidationContext<T> context, string member, string code, string message, FaultLimits? limits = null) =>
        context.AddFailure(new ValidationFailure($"{member}.Step", FormattableString.Invariant($"{message}")) { ErrorCode = code, CustomState = limits });
}
