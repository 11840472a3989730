using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Cars;
using SetupService.Domain.Fitment.Words;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.CarCheck;

/// <summary>The call that checks both axles of a car together.</summary>
internal static class CarCheckEndpoint
{
    public static void MapCarCheck(this RouteGroupBuilder group) =>
        group.MapPost("/car-check", Check)
            .WithQuery(QueryParameters.Units, CheckEndpoint.Detail)
            .WithExample("fitment-car-check")
            .WithName("fitmentCarCheck")
            .WithSummary("Do these wheels and tyres fit the whole car?")
            .WithDescription("Checks the front and rear together: one verdict, one summary for a customer, what decided it at which axle, and the full check of each. A set all round is not held against the old tyres of the other axle.");

    private static Results<Answer<CarCheckAnswer>, Problem> Check(Body<CarCheckRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        return CheckedCar.Evaluate(request).TryGet(out var car, out var refusal)
            ? new Answer<CarCheckAnswer>(car.ToAnswer(query.Units, CheckEndpoint.DetailOf(query)) with { Next = CheckEndpoint.DetailOf(query) == CheckDetail.Full ? NextCalls.AfterCarCheck : null })
            : body.Refuse(refusal);
    }
}

/// <summary>A request for a check of a whole car, mapped and evaluated.</summary>
internal sealed class CheckedCar
{
    private readonly CheckedFitting? _front;
    private readonly CheckedFitting? _rear;

    private CheckedCar(CheckedFitting? front, CheckedFitting? rear) => (_front, _rear) = (front, rear);

    private IEnumerable<(CarAxle Axle, CheckedFitting Fitting)> Axles
    {
        get
        {
            if (_front is not null) yield return (CarAxle.Front, _front);
            if (_rear is not null) yield return (CarAxle.Rear, _rear);
        }
    }

    /// <summary>Evaluates a request; refused with every fault of its parts, or where it names no wheel and tyre at all.</summary>
    public static MapResult<CheckedCar> Evaluate(CarCheckRequest request)
    {
        if (!CarCheckMapper.Map(request).TryGet(out var inputs, out var refusal))
            return refusal;

        var sheet = new CarSheet();
        sheet.Evaluate(new FitmentCar(inputs.Vehicle, axle: null, FitmentMapper.Settings(request.Tolerances, request.Required, change: null)), new CarCandidate(inputs.Front, inputs.Rear));
        return From(sheet);
    }

    /// <summary>A car as it stands on a sheet.</summary>
    public static CheckedCar From(CarSheet sheet) => new(
        sheet.Front is { } front ? new CheckedFitting(front) : null, sheet.Rear is { } rear ? new CheckedFitting(rear) : null);

    public CarCheckAnswer ToAnswer(UnitSystem units, CheckDetail detail)
    {
        var verdict = Axles.Select(one => one.Fitting.Sheet.Verdict).MaxBy(Gravity);
        var deciding = Axles.Where(one => one.Fitting.Sheet.Verdict == verdict).ToList();
        return new CarCheckAnswer
        {
            Summary = CarSummaryWords.Write([.. Axles.Select(one => (one.Axle, one.Fitting.Car, one.Fitting.Candidate, one.Fitting.Sheet))], verdict, units),
            Verdict = verdict,
            DecidedBy = [.. deciding.SelectMany(one => one.Fitting.Sheet.DecidedBy.ToArray().Select(id => new AxleCheckResponse { Axle = one.Axle, Id = id }))],
            Needs = [.. deciding.Concat(Axles).SelectMany(one => one.Fitting.Needs(Member(one.Axle))).Distinct()],
            Front = _front?.ToAnswer(units, detail, Member(CarAxle.Front)),
            Rear = _rear?.ToAnswer(units, detail, Member(CarAxle.Rear)),
            Car = new BetweenAxlesResponse { Checks = [Axles.First().Fitting.ToItem(CheckId.AxleDiameterMatch, units)] },
            Method = "fitment-check",
            Edition = Edition.Current,
        };
    }

    private static string Member(CarAxle axle) => axle == CarAxle.Front ? "/front" : "/rear";

    private static int Gravity(CheckStatus status) => status switch
    {
        CheckStatus.Fail => 3,
        CheckStatus.Unknown => 2,
        CheckStatus.Caution => 1,
        _ => 0,
    };
}

/// <summary>Maps the request of a check of a whole car to domain values.</summary>
internal static class CarCheckMapper
{
    /// <summary>The car and what is put on each axle; refused with every fault of its parts, or where it names no wheel and tyre at all.</summary>
    public static MapResult<(Vehicle Vehicle, Fitting? Front, Fitting? Rear)> Map(CarCheckRequest request)
    {
        Refusal? refusal = null;
        var vehicle = VehicleMapper.MapForFitment(request.Vehicle).Take("vehicle", ref refusal);
        var front = request.Front is null ? (Fitting?)null : FitmentMapper.Map(request.Front).Take("front", ref refusal);
        var rear = request.Rear is null ? (Fitting?)null : FitmentMapper.Map(request.Rear).Take("rear", ref refusal);
        if (front is null && rear is null && refusal is null)
            refusal = new(Fault.At("/front", FaultCodes.Required, "front is missing: give the wheel and tyre for the front, the rear or both."));
        if (refusal is not null)
            return refusal;
        return (vehicle!, front, rear);
    }
}
