using FluentValidation;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Handling.Ride;

/// <summary>What the call on ride must keep beyond types and ranges: a whole car before and after, springs and ranges that do not contradict themselves.</summary>
public sealed class RideRules : AbstractValidator<RideRequest>
{
    private static readonly RideCarRules Car = new();

    /// <summary>What the car after the change must keep.</summary>
    internal static RideCarRules Changed { get; } = new(isChanged: true);

    /// <summary>Makes the rules; they hold no state.</summary>
    public RideRules()
    {
        RuleFor(request => request.Vehicle).SetValidator(Car).When(request => request.Vehicle is not null);
        RuleFor(request => request.Change!.Vehicle).ChangesSoundly(request => request.Vehicle, nameof(RideRequest.Vehicle), Changed).When(request => request.Change is not null);
        RuleFor(request => request.DampingRatioRange!.To)
            .Must((request, to) => to > request.DampingRatioRange!.From)
            .When(request => request.DampingRatioRange is not null)
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage((request, to) => FormattableString.Invariant($"to is {to}, not above from, which is {request.DampingRatioRange!.From}."));
    }
}

/// <summary>What the call on ride needs of a car: what every call on handling does, and springs whose lengths fit together.</summary>
public sealed class RideCarRules : AbstractValidator<VehicleDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    /// <param name="isChanged">True for a car after a change: a length at ride height it keeps is then of the spring before.</param>
    public RideCarRules(bool isChanged = false)
    {
        Include(new HandlingRules(needsWheelbase: false));
        var spring = new SpringRules(isChanged);
        RuleFor(car => car.Front!.Spring!).SetValidator(spring).When(car => car.Front?.Spring is not null);
        RuleFor(car => car.Rear!.Spring!).SetValidator(spring).When(car => car.Rear?.Spring is not null);
    }
}

/// <summary>The lengths of a spring: solid below installed below free.</summary>
public sealed class SpringRules : AbstractValidator<SpringDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    /// <param name="isChanged">True for a spring after a change, whose length at ride height may be that of the spring before.</param>
    public SpringRules(bool isChanged)
    {
        RuleFor(spring => spring.SolidLengthMm)
            .Must((spring, solidMm) => !(solidMm >= spring.FreeLengthMm))
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage((spring, solidMm) => FormattableString.Invariant($"solidLengthMm is {solidMm} mm, not below freeLengthMm, which is {spring.FreeLengthMm} mm: such a spring has no travel."));
        if (isChanged) return;
        RuleFor(spring => spring.InstalledLengthMm)
            .Must((spring, installedMm) => !(installedMm >= spring.FreeLengthMm))
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage((spring, installedMm) => FormattableString.Invariant($"installedLengthMm is {installedMm} mm, not below freeLengthMm, which is {spring.FreeLengthMm} mm: the spring would carry nothing."));
        RuleFor(spring => spring.InstalledLengthMm)
            .Must((spring, installedMm) => !(installedMm <= spring.SolidLengthMm))
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage((spring, installedMm) => FormattableString.Invariant($"installedLengthMm is {installedMm} mm, not above solidLengthMm, which is {spring.SolidLengthMm} mm: its coils would touch at rest."));
    }
}
