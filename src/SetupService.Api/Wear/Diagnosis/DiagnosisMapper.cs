using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>A diagnosis request together with what the study of it found.</summary>
/// <param name="Request">The request.</param>
/// <param name="Study">The causes and the wear model.</param>
/// <param name="Car">The car of the wear model with its assumptions; null without a wear model.</param>
/// <param name="NoModel">Why there is no wear model; null where there is one.</param>
/// <param name="Today">The day of the readings.</param>
internal sealed record DiagnosedCar(DiagnosisRequest Request, WearStudy Study, ResolvedHandlingCar? Car, ModelGap? NoModel, DateOnly Today)
{
    /// <summary>The state of each tyre, in the request's order.</summary>
    public TyreCondition[] Conditions { get; } = [.. Request.Tyres.Select(tyre => TyreReadingMapper.Condition(tyre, Today))];

    /// <summary>The car as stated; null where none was.</summary>
    public Vehicle? Stated { get; private init; }

    /// <summary>Studies a request: causes always, the wear model where the car is known well enough.</summary>
    public static DiagnosedCar From(DiagnosisRequest request, Vehicle? vehicle, DateOnly today, UnitSystem units, WorkBudget budget)
    {
        var wear = DiagnosisMapper.Case(request, vehicle);
        var why = vehicle is null ? new ModelGap("needs a vehicle with axle loads, tracks, wheelbase and springs", "/vehicle") : Missing(vehicle);
        var car = why is null && vehicle is not null ? HandlingCarBuilder.Build(vehicle, units) : null;
        if (why is null && car is null) why = new("the suspension's points do not hold the wheel where it is stated", "/vehicle");
        var study = WearStudy.Compute(wear, car?.Car, budget);
        if (study.IsWorkSpent) why = new("the work allowed for one request was spent before the wear model was learned");
        why ??= wear.Use.TrackLaps switch
        {
            null => new("how the car corners on a track shows in the treads only where laps were driven, and nobody told how many", "/use/trackLaps"),
            0 => new("the tyres are stated to have seen no track: camber short of the cornering is a matter of the track"),
            _ when study.Obstacle is { } obstacle => new(CorneringWords.Reason(obstacle, units), obstacle.Failure == CorneringFailure.TravelNotReached ? "/vehicle" : "/use/lateralG"),
            _ when study is { Front: null, Rear: null } => new("the wear model does not come to rest on these readings"),
            _ => null,
        };
        var told = why is null ? car : null;
        return new(request, study with { Car = told }, told, why, today) { Stated = vehicle };
    }

    private static ModelGap? Missing(Vehicle vehicle)
    {
        var missing = HandlingCarBuilder.Missing(vehicle).ToList();
        if (vehicle.WheelbaseMm is null) missing.Add("/wheelbaseMm");
        if (missing.Count > 0) return new("needs " + string.Join(", ", missing.Select(place => "/vehicle" + place)), [.. missing.Select(place => "/vehicle" + place)]);
        return LoadContradiction.Find(vehicle) is { Count: > 0 } contradictions ? new(contradictions[0].Message, "/vehicle") : null;
    }
}

/// <summary>Why there is no wear model.</summary>
/// <param name="Reason">As a clause.</param>
/// <param name="Needs">JSON Pointers of what would settle it; nothing that was given.</param>
internal sealed record ModelGap(string Reason, params string[] Needs);

/// <summary>Maps a diagnosis request to the case the domain studies.</summary>
internal static class DiagnosisMapper
{
    /// <summary>The case.</summary>
    public static WearCase Case(DiagnosisRequest request, Vehicle? vehicle) => new()
    {
        Vehicle = vehicle ?? new Vehicle(),
        Use = request.Use?.ToDomain() ?? default,
        Tyres = [.. request.Tyres.Select(TyreReadingMapper.Map)],
    };
}
