using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Handling.Cars;

namespace SetupService.Api.Handling;

/// <summary>What the calls on handling need of a car, and what of it must not contradict.</summary>
public sealed class HandlingRules : AbstractValidator<VehicleDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    /// <param name="needsWheelbase">Whether the call computes turns.</param>
    public HandlingRules(bool needsWheelbase)
    {
        RuleFor(car => car.Front!.Suspension).WithoutContradictions().When(car => car.Front is not null);
        RuleFor(car => car.Rear!.Suspension).WithoutContradictions().When(car => car.Rear is not null);
        RuleFor(car => car).Custom((car, context) =>
        {
            CheckScales(context, car.CornerWeightsKg);
            if (needsWheelbase && car.WheelbaseMm is null) Add(context, "/wheelbaseMm", FaultCodes.Required, "wheelbaseMm is missing; a turn cannot be computed without it.");
            if (!VehicleMapper.Map(WithoutTexts(car)).TryGet(out var read, out _)) return;
            var missing = HandlingCarBuilder.Missing(read);
            foreach (var place in missing) AddMissing(context, place, car);
            if (missing.Count > 0) return;
            foreach (var one in LoadContradiction.Find(read)) Add(context, one.Place, FaultCodes.Inconsistent, one.Message);
        });
    }

    /// <summary>The scales of an axle tell its load only together.</summary>
    private static void CheckScales(ValidationContext<VehicleDocument> context, CornerWeightsDocument? scales)
    {
        if (scales is null) return;
        CheckPair("front", scales.FrontLeft, scales.FrontRight);
        CheckPair("rear", scales.RearLeft, scales.RearRight);

        void CheckPair(string axle, double? left, double? right)
        {
            if (left is null == right is null) return;
            var (missing, given) = left is null ? ("Left", "Right") : ("Right", "Left");
            Add(context, $"/cornerWeightsKg/{axle}{missing}", FaultCodes.Required, $"{axle}{missing} is missing; beside {axle}{given} it is needed, or neither: the scales of an axle tell its load together.");
        }
    }

    private static void AddMissing(ValidationContext<VehicleDocument> context, string place, VehicleDocument car)
    {
        // A value that was refused is not missing.
        var isLoad = place.EndsWith("AxleLoadKg", StringComparison.Ordinal);
        if (isLoad && context.IsRefused(PathOf(context, "/cornerWeightsKg"))) return;
        if (place.EndsWith("trackMm", StringComparison.Ordinal) && context.IsRefused(PathOf(context, place[..place.LastIndexOf('/')] + "/suspension"))) return;
        Add(context, place, FaultCodes.Required, $"{place[(place.LastIndexOf('/') + 1)..]} is missing; {(isLoad ? "the axle's load, or both its wheels' in cornerWeightsKg, is" : place.EndsWith("trackMm", StringComparison.Ordinal) ? "the track, or the suspension's points, are" : "it is")} needed here.");
    }

    private static void Add(ValidationContext<VehicleDocument> context, string place, string code, string message) =>
        context.AddFailure(new ValidationFailure(PathOf(context, place), message) { ErrorCode = code });

    private static string PathOf(ValidationContext<VehicleDocument> context, string place) =>
        string.Join('.', new[] { context.PropertyPath }.Concat(place.Split('/')).Where(step => step.Length > 0));

    /// <summary>What loads, tracks and springs are told by, without what a person writes as text: that may be unreadable, which is told already.</summary>
    private static VehicleDocument WithoutTexts(VehicleDocument car) => new()
    {
        FrontAxleLoadKg = car.FrontAxleLoadKg,
        RearAxleLoadKg = car.RearAxleLoadKg,
        CornerWeightsKg = car.CornerWeightsKg,
        Front = WithoutTexts(car.Front),
        Rear = WithoutTexts(car.Rear),
    };

    private static AxleDocument? WithoutTexts(AxleDocument? axle) => axle is null ? null : new AxleDocument
    {
        TrackMm = axle.TrackMm,
        UnsprungMassKg = axle.UnsprungMassKg,
        Suspension = axle.Suspension is MeasuredSuspensionDocument ? null : axle.Suspension,
        Spring = axle.Spring,
    };
}
