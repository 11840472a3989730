using FluentValidation;
using FluentValidation.Results;
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
        RuleFor(request => request.Change).ChangesSoundly(request => request.Vehicle, nameof(RideRequest.Vehicle), Changed);
        RuleFor(request => request.DampingRatioRange).Custom((range, context) =>
        {
            if (range is null || range.From < range.To) return;
            context.AddFailure(new ValidationFailure("DampingRatioRange.To", FormattableString.Invariant($"to is {range.To}, not above from, which is {range.From}."))
            {
                ErrorCode = FaultCodes.Inconsistent,
            });
        });
    }
}

/// <summary>What the call on ride needs of a car: what every call on handling does, and springs whose lengths fit together.</summary>
public sealed class RideCarRules : AbstractValidator<VehicleDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    /// <param name="isChanged">Whether the car is one after a change: a length at ride height it keeps is then of the spring before.</param>
    public RideCarRules(bool isChanged = false)
    {
        Include(new HandlingRules(needsWheelbase: false));
        RuleFor(car => car).Custom((car, context) =>
        {
            Check(context, "Front.Spring", car.Front?.Spring, isChanged);
            Check(context, "Rear.Spring", car.Rear?.Spring, isChanged);
        });
    }

    private static void Check(ValidationContext<VehicleDocument> context, string place, SpringDocument? spring, bool isChanged)
    {
        if (spring is null) return;
        if (spring is { SolidLengthMm: { } solid, FreeLengthMm: { } free } && solid >= free)
            Add("SolidLengthMm", FormattableString.Invariant($"solidLengthMm is {solid} mm, not below freeLengthMm, which is {free} mm: such a spring has no travel."));
        if (isChanged) return;
        if (spring is { InstalledLengthMm: { } installed, FreeLengthMm: { } unloaded } && installed >= unloaded)
            Add("InstalledLengthMm", FormattableString.Invariant($"installedLengthMm is {installed} mm, not below freeLengthMm, which is {unloaded} mm: the spring would carry nothing."));
        if (spring is { InstalledLengthMm: { } stands, SolidLengthMm: { } touching } && stands <= touching)
            Add("InstalledLengthMm", FormattableString.Invariant($"installedLengthMm is {stands} mm, not above solidLengthMm, which is {touching} mm: its coils would touch at rest."));

        void Add(string member, string message) =>
            context.AddFailure(new ValidationFailure(string.Join('.', new[] { context.PropertyPath, place, member }.Where(part => part.Length > 0)), message) { ErrorCode = FaultCodes.Inconsistent });
    }
}
