using FluentValidation;
using SetupService.Api.Geometry;

namespace SetupService.Api.Handling.Cornering;

/// <summary>What a sweep over turns must keep beyond types and ranges.</summary>
public sealed class CorneringSweepRules : AbstractValidator<CorneringSweepRequest>
{
    /// <summary>The most rows of one sweep; more than any chart shows.</summary>
    public const int MostRows = 1000;

    /// <summary>Makes the rules; they hold no state.</summary>
    public CorneringSweepRules()
    {
        this.TurnsAreWhole(request => request.LateralG?.ToRange() is { Step: not 0, Count: > 0 } range ? Math.Max(range[0], range[range.Count - 1]) : null);
        RuleFor(request => request).Custom((request, context) =>
        {
            if (request.LateralG is { } range)
                RangeRules.CheckCount(context, nameof(request.LateralG), RangeRules.Check(context, nameof(request.LateralG), range.ToRange()), MostRows);
        });
    }
}
