using FluentValidation;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles.Suspensions;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>What an alignment must keep beyond types and ranges: a suspension that does not contradict itself, and ranges that leave something between their ends.</summary>
public sealed class AlignmentRules : AbstractValidator<AlignmentRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public AlignmentRules()
    {
        RuleFor(request => request.Vehicle.Front!.Suspension).WithoutContradictions().When(request => request.Vehicle?.Front is not null);
        RuleFor(request => request.Vehicle.Rear!.Suspension).WithoutContradictions().When(request => request.Vehicle?.Rear is not null);
        RuleFor(request => request.Targets!.Front!).SetValidator(new AxleTargetsRules()).When(request => request.Targets?.Front is not null);
        RuleFor(request => request.Targets!.Rear!).SetValidator(new AxleTargetsRules()).When(request => request.Targets?.Rear is not null);
    }
}

/// <summary>The ranges of an axle: none upside down.</summary>
public sealed class AxleTargetsRules : AbstractValidator<AxleTargetsDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public AxleTargetsRules()
    {
        InOrder(RuleFor(targets => targets.CamberDeg));
        InOrder(RuleFor(targets => targets.CasterDeg));
        InOrder(RuleFor(targets => targets.ToeDeg));
        InOrder(RuleFor(targets => targets.SteeringAxisInclinationDeg));
        InOrder(RuleFor(targets => targets.TotalToeDeg));
        InOrder(RuleFor(targets => targets.CrossCamberDeg));
        InOrder(RuleFor(targets => targets.CrossCasterDeg));
    }

    private static void InOrder(IRuleBuilder<AxleTargetsDocument, AngleRangeDocument?> rule) => rule
        .Must(range => range is null || range.From <= range.To)
        .WithErrorCode(FaultCodes.Inconsistent)
        .WithMessage("from is above to: the range holds nothing.");
}
