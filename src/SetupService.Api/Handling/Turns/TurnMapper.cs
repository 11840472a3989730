using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.Turns;

/// <summary>Reads what a call on a turn asks into domain values.</summary>
internal static class TurnMapper
{
    /// <summary><c>detail</c>: how much is worked out.</summary>
    public static EnumParameter Detail { get; } = new("detail", "How much is worked out: the turn itself, or also what each axle can hold and how far what was assumed moves the answer.", EnumNames<TurnDetail>.List, Default: "full");

    /// <summary>How much was asked for.</summary>
    public static TurnDetail DetailOf(QueryReader query) => query.Word<TurnDetail>(Detail) ?? TurnDetail.Full;

    /// <summary>Radius or speed, and which way.</summary>
    public static TurnPath Path(TurnRequest request) => request.CornerRadiusM is { } radiusM
        ? TurnPath.AtRadius(request.Turn, radiusM)
        : TurnPath.AtSpeed(request.Turn, request.SpeedKmh!.Value);
}

/// <summary>The car of a request on turns, ready to be asked.</summary>
/// <param name="Stated">The car as stated.</param>
/// <param name="Reading">The car with what is assumed of it.</param>
/// <param name="Path">Radius or speed, and which way.</param>
/// <param name="Run">Solves its turns.</param>
/// <param name="Scale">The scale of grip.</param>
/// <param name="SteeringRatio">Steering-wheel angle by road-wheel angle, or null.</param>
/// <param name="Units">The units of what is said about it.</param>
/// <param name="Budget">The work the request may take.</param>
internal sealed record CorneringEvaluation(Vehicle Stated, ResolvedHandlingCar Reading, TurnPath Path, CorneringRun Run, GripScale Scale, double? SteeringRatio, UnitSystem Units, WorkBudget Budget)
{
    /// <summary>Front axle's share of the roll stiffness, percent.</summary>
    public double RollStiffnessFrontPct { get; } = RollStiffness.FrontSharePct(Reading.Car);

    /// <summary>Both limits along the path, with what the inputs leave open.</summary>
    /// <param name="nearG">A lateral acceleration the search may begin at, g.</param>
    public LimitStudy Limits(double nearG) => Run.Limits(Reading, Scale is { HeldLateralG: { } held, StandsToG: null } ? held : Math.Max(nearG, LeastGuessG), Scale.HeldLateralG);

    private const double LeastGuessG = 0.5;

    /// <summary>The car of a request; null where its points hold no wheel.</summary>
    public static CorneringEvaluation? Create(TurnRequest request, Vehicle vehicle, UnitSystem units, WorkBudget budget, double? longitudinalG = null) =>
        Create(TurnMapper.Path(request).WithLongitudinal(longitudinalG ?? 0), request.HeldLateralG, vehicle, units, budget, (longitudinalG ?? 0, longitudinalG ?? 0));

    /// <summary>The car along a path; null where its points hold no wheel.</summary>
    /// <param name="path">The path.</param>
    /// <param name="heldLateralG">What it was measured to hold, g, neither braked nor driven; null = not known.</param>
    /// <param name="vehicle">The car as stated.</param>
    /// <param name="units">The units of what is said about it.</param>
    /// <param name="budget">The work the request may take.</param>
    /// <param name="longitudinalG">The least and the greatest longitudinal acceleration asked for, g.</param>
    public static CorneringEvaluation? Create(TurnPath path, double? heldLateralG, Vehicle vehicle, UnitSystem units, WorkBudget budget, (double From, double To) longitudinalG)
    {
        if (HandlingCarBuilder.Build(vehicle, units) is not { } stated) return null;

        // What a car was measured to hold it held unbraked. Where no scale is found the work is spent, or the points hold no wheel, and the turns themselves say so.
        var scale = GripScale.Find(stated.Car, path.WithLongitudinal(0), heldLateralG, budget) ?? GripScale.ByTyres;
        var reading = LongitudinalAssumptions.Add(scale.Apply(stated), vehicle, path, longitudinalG.From, longitudinalG.To);
        return CorneringRun.Create(reading.Car, path, budget) is { } run
            ? new CorneringEvaluation(vehicle, reading, path, run, scale, vehicle.SteeringRatio, units, budget)
            : null;
    }
}
