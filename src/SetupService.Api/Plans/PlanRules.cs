using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Handling;
using SetupService.Api.Handling.CamberTarget;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Api.Wear;

namespace SetupService.Api.Plans;

/// <summary>What a plan must keep beyond types and ranges: a whole car, bends that load a tyre, sound readings, goals named once, changes the car can take.</summary>
public sealed class PlanRules : AbstractValidator<PlanRequest>
{
    private static readonly AdjustableRules Ends = new();

    /// <summary>What the car must keep, as given and with parts.</summary>
    internal static HandlingRules Car { get; } = new(needsWheelbase: true);

    /// <summary>Makes the rules; they hold no state.</summary>
    public PlanRules()
    {
        RuleFor(request => request.Vehicle).SetValidator(Car).When(request => request.Vehicle is not null);
        RuleFor(request => request.Vehicle.Front!.Adjustable!).SetValidator(Ends).When(request => request.Vehicle?.Front?.Adjustable is not null);
        RuleFor(request => request.Vehicle.Rear!.Adjustable!).SetValidator(Ends).When(request => request.Vehicle?.Rear?.Adjustable is not null);
        RuleFor(request => request.Wear!).SetValidator(new PlanWearRules()).When(request => request.Wear is not null);
        RuleFor(request => request.Bends).Custom(AddFaultsOfBends);
        RuleForEach(request => request.Goals)
            .Must(static (request, goal, context) => goal is null || Array.FindIndex(request.Goals!, other => other?.Goal == goal.Goal) == Array.FindIndex(request.Goals!, other => ReferenceEquals(other, goal)))
            .Says(FaultCodes.Inconsistent, static (_, goal) => $"{EnumNamesOf(goal.Goal)} is named twice among the goals.");
        RuleFor(request => request.Parts).EachChangesSoundly(
            static one => one.Change?.Vehicle, $"{nameof(PlanPartDocument.Change)}.{nameof(CarChangeDocument.Vehicle)}", static request => request.Vehicle, nameof(PlanRequest.Vehicle), Car);
    }

    private static string EnumNamesOf(Domain.Planning.PlanGoal goal) => char.ToLowerInvariant(goal.ToString()[0]) + goal.ToString()[1..];

    /// <summary>What the reader of the bends finds of each.</summary>
    private static void AddFaultsOfBends(BendMixEntry[] bends, ValidationContext<PlanRequest> context)
    {
        if (bends is null || context.IsRefused(nameof(PlanRequest.Bends))) return;
        foreach (var (place, code, message) in PlanMapper.Bends(context.InstanceToValidate).Faults)
        {
            var path = place.Replace("Corners", nameof(PlanRequest.Bends), StringComparison.Ordinal);
            if (!context.IsRefused(path)) context.AddFailure(new ValidationFailure(path, message.Replace(", here or for all", "", StringComparison.Ordinal)) { ErrorCode = code });
        }
    }
}

/// <summary>Rules of the readings: a day that exists, sound tyre readings.</summary>
public sealed class PlanWearRules : AbstractValidator<PlanWearDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public PlanWearRules()
    {
        RuleFor(wear => wear.ReadOn).IsADay();
        RuleForEach(wear => wear.Tyres).SetValidator(new TyreReadingRules());
    }
}
