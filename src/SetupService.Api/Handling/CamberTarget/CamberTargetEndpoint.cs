using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>The call that finds the static camber for the cornering a car does.</summary>
internal static class CamberTargetEndpoint
{
    // The most caster the contract knows, degrees.
    private const double MostCasterDeg = 20;

    public static void MapCamberTarget(this RouteGroupBuilder group) =>
        group.MapPost("/camber-target", Find)
            .WithQuery(QueryParameters.Units)
            .WithExample("camber-target")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("camberTarget")
            .WithSummary("How much static camber does this cornering need?")
            .WithDescription("The static camber with which the outer wheel's inclination to the road, weighted by load times slip, averages the target: for one lateral acceleration, a list of corners, or a histogram as CSV text. With its interval, its sensitivities, other casters, and what it does on the straight.");

    private static Results<Answer<CamberTargetAnswer>, Problem> Find(Body<CamberTargetRequest> body, QueryReader query, CancellationToken cancellation)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!VehicleMapper.Map(request.Vehicle).Under("vehicle").TryGet(out var vehicle, out var refusal))
            return body.Refuse(refusal);
        if (HandlingCarBuilder.Build(vehicle, query.Units) is not { } stated)
            return HandlingProblems.NoCorner(vehicle);

        var corners = BendMixMapper.Map(request);
        var demand = new CamberDemand
        {
            Axle = request.Axle,
            Corners = corners.Corners,
            TargetInclinationDeg = request.TargetInclinationDeg ?? 0,
            Adjustable = request.Adjustable?.CamberDeg is { } range ? (range.From, range.To) : null,
        };
        var budget = WorkBudget.Generous(cancellation);
        var hardest = demand.Hardest.Demand;
        var scale = GripScale.Find(stated.Car, TurnPath.AtRadius(hardest.Turn, hardest.RadiusM), request.HeldLateralG, budget) ?? GripScale.ByTyres;
        var reading = scale.Apply(stated);
        if (CamberTargetSearch.Solve(reading, demand, Casters(request, reading.Car), budget, out var failure) is not { } result)
        {
            cancellation.ThrowIfCancellationRequested();
            return NoCamber(request, reading.Car, failure!.Value, query.Units);
        }

        return Math.Abs(result.StaticCamberDeg.Value) > CamberTargetSearch.LargestDeg
            ? NoCamber(request, reading.Car, new(null, demand.Hardest.Demand), query.Units)
            : new Answer<CamberTargetAnswer>(CamberTargetAnswers.Create(request, vehicle, reading, scale, corners, result, query.Units));
    }

    /// <summary>The present caster and those asked for, or up to three degrees more as far as the range goes.</summary>
    private static List<double> Casters(CamberTargetRequest request, HandlingCar car)
    {
        var now = HandlingInputs.For(request.Axle).Caster.Read(car);
        var list = new List<double> { now };
        if (request.CastersDeg is { } asked) list.AddRange(asked);
        else list.AddRange(new[] { now + 1, now + 2, now + 3 }.Where(one => one <= MostCasterDeg && (request.Adjustable?.CasterDeg is not { } range || (one >= range.From && one <= range.To))));
        return list;
    }

    private static Problem NoCamber(CamberTargetRequest request, HandlingCar car, in CamberTargetFailure failure, UnitSystem units)
    {
        var place = request.LateralG is not null ? "/lateralG" : request.Corners is not null ? "/corners" : "/histogramCsv";
        if (failure.Reason is not { } reason)
            return Refused(place, FormattableString.Invariant($"no static camber within ±{CamberTargetSearch.LargestDeg}° gives the outer wheel this mean inclination."), null);
        var corner = failure.Corner;
        if (reason == CorneringFailure.TravelNotReached)
            return Refused(place, Prose.Write(units, $"at {corner.LateralG:n} g and {corner.RadiusM:m} radius a wheel would travel or steer further than its suspension, or its readings, reach."), null);
        if (reason == CorneringFailure.WorkSpent)
            return Refused(place, "the work allowed for one request was spent before the camber was found; ask for fewer corners.", null);
        var limitG = CorneringSolver.Create(car, corner.Turn) is { } solver ? RollOver.LimitG(solver, corner.RadiusM, corner.LateralG) : 0;
        return Refused(
            place,
            Prose.Write(units, $"at {corner.LateralG:n} g and {corner.RadiusM:m} radius the car would roll over; up to {limitG:n} g it stays upright."),
            new FaultLimits { Minimum = 0, Maximum = limitG, Unit = "g" });
    }

    private static Problem Refused(string place, string reason, FaultLimits? limits) =>
        Problem.NotComputable($"No static camber is found: {reason}", [Fault.At(place, FaultCodes.Unreachable, reason, limits)]);
}
