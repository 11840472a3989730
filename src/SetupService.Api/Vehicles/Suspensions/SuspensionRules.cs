using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Api.Vehicles.Suspensions;

/// <summary>What a suspension must keep beyond types and ranges: points and readings that do not contradict each other.</summary>
internal static class SuspensionRules
{
    /// <summary>Refuses each contradiction by the name of its point.</summary>
    public static IRuleBuilderOptionsConditions<T, SuspensionDocument?> WithoutContradictions<T>(this IRuleBuilder<T, SuspensionDocument?> rule) =>
        rule.Custom(static (document, context) =>
        {
            if (MeasuredMapper.Refuse(document) is { } refusal)
            {
                foreach (var one in refusal) AddFailure(context, one.Pointer!.TrimStart('/'), one.Message, one.Code);
                return;
            }

            if (SuspensionMapper.SpringDamper(document) is { } points) AddHalfLines(points, context);
            if (document is MeasuredSuspensionDocument measured && (measured.Table is not null || measured.Readings is { Length: > 1 }) && !context.IsRefused(context.PropertyPath + ".Readings")
                && MeasuredMapper.Read(measured, null, out var fault) is null)
            {
                var (member, message) = MeasuredWords.Fault(fault!.Value);
                AddFailure(context, member, message);
            }

            if (context.IsRefused(context.PropertyPath + ".Points") || SuspensionMapper.Read(document) is not { } suspension) return;
            foreach (var one in Contradictions.Find(suspension)) AddFailure(context, "Points." + one.Member, one.Message);
        });

    /// <summary>A spring or damper needs both its ends, and a part is carried only where there is an end to carry.</summary>
    private static void AddHalfLines<T>(SpringDamperPointsDocument points, ValidationContext<T> context)
    {
        AddHalfLine(context, "spring", points.SpringChassis, points.SpringMoving, points.SpringOn);
        AddHalfLine(context, "damper", points.DamperChassis, points.DamperMoving, points.DamperOn);
    }

    private static void AddHalfLine<T>(ValidationContext<T> context, string name, PointDocument? chassis, PointDocument? moving, SuspensionMember? on)
    {
        if (chassis is null == moving is null && (on is null || moving is not null)) return;
        AddFailure(context, $"Points.{name}{(chassis is null ? "Chassis" : "Moving")}", $"{name}Chassis and {name}Moving belong together: the line between them is what the {name} acts along.", FaultCodes.Required);
    }

    private static void AddFailure<T>(ValidationContext<T> context, string member, string message, string code = FaultCodes.Inconsistent) =>
        context.AddFailure(new ValidationFailure($"{context.PropertyPath}.{member}", message) { ErrorCode = code });
}
