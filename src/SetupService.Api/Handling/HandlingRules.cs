using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Vehicles;

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
        RuleFor(car => car.CornerWeightsKg!).SetValidator(new CornerWeightsRules()).When(car => car.CornerWeightsKg is not null);
        Include(new DriveRules());
        RuleFor(car => car.WheelbaseMm)
            .NotNull().When(_ => needsWheelbase)
            .WithErrorCode(FaultCodes.Required)
            .WithMessage("wheelbaseMm is missing; a turn cannot be computed without it.");

        // What the model lacks, and which masses contradict each other, the domain tells.
        RuleFor(car => car).Custom((car, context) =>
        {
            if (!VehicleMapper.Map(WithoutTexts(car)).TryGet(out var read, out _)) return;
            var missing = HandlingCarBuilder.Missing(read);
            foreach (var place in missing) AddMissing(context, place, car);
            if (missing.Count > 0) return;
            foreach (var one in LoadContradiction.Find(read)) Add(context, one.Place, FaultCodes.Inconsistent, one.Message);
        });
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

/// <summary>What of drive, air and bump stops means something only together.</summary>
public sealed class DriveRules : AbstractValidator<VehicleDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public DriveRules()
    {
        RuleFor(car => car.DrivenAxle).NotNull()
            .When((car, context) => (car.DriveShareFrontPct is not null || car.Differential is not null) && !context.IsRefused(context.PropertyChain.BuildPropertyPath(nameof(VehicleDocument.DrivenAxle))))
            .Says(FaultCodes.Required, "drivenAxle is missing; beside driveShareFrontPct or differential it is needed.");
        RuleFor(car => car.DriveShareFrontPct)
            .Must((car, share) => share == (car.DrivenAxle == DrivenAxle.Front ? 100 : 0))
            .When(car => car is { DriveShareFrontPct: not null, DrivenAxle: DrivenAxle.Front or DrivenAxle.Rear })
            .Says(FaultCodes.Inconsistent, "driveShareFrontPct belongs to a car whose drivenAxle is both; where one axle is driven it has all of it.");
        RuleFor(car => car.Differential!.BiasRatio).NotNull()
            .When((car, context) => car.Differential is { Kind: DifferentialKind.LimitedSlip } && !context.IsRefused(context.PropertyChain.BuildPropertyPath("Differential.BiasRatio")))
            .Says(FaultCodes.Required, "biasRatio is missing; a limited-slip differential is told by it.");
        RuleFor(car => car.Differential!.BiasRatio).Null()
            .When((car, context) => car.Differential is { Kind: not DifferentialKind.LimitedSlip } && !context.IsRefused(context.PropertyChain.BuildPropertyPath("Differential.Kind")))
            .Says(FaultCodes.Inconsistent, "biasRatio belongs to a limitedSlip differential.");
        RuleFor(car => car.Aero!.FrontDownforceN).NotNull()
            .When((car, context) => car.Aero is { RearDownforceN: not null } && !context.IsRefused(context.PropertyChain.BuildPropertyPath("Aero.FrontDownforceN")))
            .Says(FaultCodes.Required, "frontDownforceN is missing; beside rearDownforceN it is needed: one axle's alone would tip the balance.");
        RuleFor(car => car.Aero!.RearDownforceN).NotNull()
            .When((car, context) => car.Aero is { FrontDownforceN: not null } && !context.IsRefused(context.PropertyChain.BuildPropertyPath("Aero.RearDownforceN")))
            .Says(FaultCodes.Required, "rearDownforceN is missing; beside frontDownforceN it is needed: one axle's alone would tip the balance.");
        RuleFor(car => car.Front!.BumpStop!.ForceCurve).Must(Rises).When(car => car.Front?.BumpStop?.ForceCurve is not null).Says(FaultCodes.Inconsistent, NotRising);
        RuleFor(car => car.Rear!.BumpStop!.ForceCurve).Must(Rises).When(car => car.Rear?.BumpStop?.ForceCurve is not null).Says(FaultCodes.Inconsistent, NotRising);
    }

    private const string NotRising = "compressionMm and forceN must both rise from point to point of forceCurve.";

    private static bool Rises(StopForceDocument?[]? curve)
    {
        StopForceDocument?[] points = [.. (curve ?? []).Where(point => point is { CompressionMm: > 0, ForceN: > 0 })];
        return points.Zip(points.Skip(1)).All(pair => pair.Second!.CompressionMm > pair.First!.CompressionMm && pair.Second.ForceN > pair.First.ForceN);
    }
}

/// <summary>The scales of an axle tell its load only together.</summary>
public sealed class CornerWeightsRules : AbstractValidator<CornerWeightsDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public CornerWeightsRules()
    {
        RuleFor(scales => scales.FrontLeft).NotNull().When(scales => scales.FrontRight is not null).WithErrorCode(FaultCodes.Required).WithMessage(Missing("front", "Left", "Right"));
        RuleFor(scales => scales.FrontRight).NotNull().When(scales => scales.FrontLeft is not null).WithErrorCode(FaultCodes.Required).WithMessage(Missing("front", "Right", "Left"));
        RuleFor(scales => scales.RearLeft).NotNull().When(scales => scales.RearRight is not null).WithErrorCode(FaultCodes.Required).WithMessage(Missing("rear", "Left", "Right"));
        RuleFor(scales => scales.RearRight).NotNull().When(scales => scales.RearLeft is not null).WithErrorCode(FaultCodes.Required).WithMessage(Missing("rear", "Right", "Left"));
    }

    private static string Missing(string axle, string missing, string given) =>
        $"{axle}{missing} is missing; beside {axle}{given} it is needed, or neither: the scales of an axle tell its load together.";
}
