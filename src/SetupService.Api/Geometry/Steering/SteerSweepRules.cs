using FluentValidation;
using SetupService.Api.Geometry.Sweeps;

namespace SetupService.Api.Geometry.Steering;

/// <summary>What a steer sweep must keep beyond types and ranges: a step that leads to the end, and not too many rows.</summary>
public sealed class SteerSweepRules : AbstractValidator<SteerSweepRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public SteerSweepRules() => RuleFor(request => request).Custom(static (request, context) =>
    {
        if (request.SteerDeg is not { } range) return;
        RangeRules.CheckCount(context, nameof(request.SteerDeg), RangeRules.Check(context, nameof(request.SteerDeg), range.ToRange()));
    });
}
