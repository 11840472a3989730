using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>A request on tyres studied.</summary>
/// <param name="Request">The request.</param>
/// <param name="Study">The causes and the wear model.</param>
/// <param name="Car">The car of the wear model with what is assumed of it; null where there is none.</param>
/// <param name="NoModel">Why there is no wear model; null where there is one.</param>
/// <param name="Today">The day of the readings.</param>
internal sealed record DiagnosedCar(DiagnosisRequest Request, WearStudy Study, ResolvedHandlingCar? Car, string? NoModel, DateOnly Today)
{
    /// <summary>The state of each tyre, in the request's order.</summary>
    public TyreCondition[] Conditions { get; } = DiagnosisReading.Conditions(Request, Today);

    /// <summary>Studies a request.</summary>
    public static DiagnosedCar Of(DiagnosisRequest request, Vehicle? vehicle, DateOnly today)
    {
        var wear = DiagnosisReading.Case(request, vehicle);
        var why = vehicle is null ? "needs a vehicle with axle loads, tracks, wheelbase and springs" : Lacks(vehicle);
        var car = why is null && vehicle is not null ? HandlingCarBuilder.Build(vehicle) : null;
        if (why is null && car is null) why = "the suspension's points do not hold the wheel where it is stated";
        if (why is null && wear.Use.TrackLaps is 0) (car, why) = (null, "the tyres are stated to have seen no track: camber short of the cornering is a matter of the track");
        var study = WearStudy.Compute(wear, car?.Car);
        if (car is not null && study is { Front: null, Rear: null }) (car, why) = (null, "the car has no balance in such corners, or its wear model does not come to rest");
        return new(request, study, car, why, today);
    }

    private static string? Lacks(Vehicle vehicle)
    {
        var missing = HandlingCarBuilder.Missing(vehicle).ToList();
        if (vehicle.WheelbaseMm is null) missing.Add("/wheelbaseMm");
        if (missing.Count > 0) return "needs " + string.Join(", ", missing.Select(place => "/vehicle" + place));
        return LoadContradiction.Find(vehicle) is { Count: > 0 } contradictions ? contradictions[0].Message : null;
    }
}
