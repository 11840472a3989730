using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>The call that finds the static camber for the cornering a car does.</summary>
internal static class CamberTargetEndpoint
{
    // The most caster the contract knows, degrees.
    private const double MostCasterDeg = 20;

    public static void MapCamberTarget(this RouteGroupBuilder group)
    {
        group.MapPost("/camber-target", Find)
            .WithQuery(QueryParameters.Units)
            .WithExample("camber-target")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("camberTarget")
            .WithSummary("How much static camber should I run?")
            .WithDescription("For one lateral acceleration, a list of corners, or a histogram as CSV text: the static camber with which the outer tyre is flat on the road (or at the target), the one of most grip, what every camber between does to grip and braking, and the first step to take. Each with its interval; with sensitivities, other casters, and what it does on the straight.");
        group.MapPost("/camber-target/chart", Chart)
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("camber-target")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("camberTargetChart")
            .WithSummary("Grip and braking over static camber as a chart")
            .WithDescription("Takes the body of camber-target and draws grip in the bends and braking over static camber, with what is set, what is recommended, and how far it can be set.");
    }

    private static Results<Answer<CamberTargetAnswer>, Problem> Find(Body<CamberTargetRequest> body, QueryReader query, RequestWork work) =>
        TryFind(body, query.Units, work, out var found, out var problem) ? new Answer<CamberTargetAnswer>(found.Answer) : problem;

    private static Results<SvgAnswer, Problem> Chart(Body<CamberTargetRequest> body, QueryReader query, RequestWork work) =>
        TryFind(body, query.Units, work, out var found, out var problem) ? new SvgAnswer(CamberChart.Draw(body.Value!, found.Answer, found.SetRange, found.Reach, query.WidthPx)) : problem;

    private static bool TryFind(Body<CamberTargetRequest> body, UnitSystem units, RequestWork work, out Found found, [NotNullWhen(false)] out Problem? problem)
    {
        (found, problem) = (default, body.Problem!);
        if (body.Value is not { } request)
            return false;
        if (!VehicleMapper.Map(request.Vehicle).Under("vehicle").TryGet(out var vehicle, out var refusal))
        {
            problem = body.Refuse(refusal);
            return false;
        }

        if (HandlingCarBuilder.Build(vehicle, units) is not { } stated)
        {
            problem = HandlingProblems.NoCorner(vehicle);
            return false;
        }

        var corners = BendMixMapper.Map(request);
        var adjustable = vehicle.At(request.Axle).Adjustable;
        var demand = new CamberDemand
        {
            Axle = request.Axle,
            Corners = corners.Corners,
            TargetInclinationDeg = request.TargetInclinationDeg ?? 0,
            Reach = adjustable.Camber,
        };
        var budget = work.Budget;
        var hardest = demand.Hardest.Demand;
        var scale = GripScale.Find(stated.Car, TurnPath.AtRadius(hardest.Turn, hardest.RadiusM), request.HeldLateralG, budget) ?? GripScale.ByTyres;
        var reading = scale.Apply(stated);
        if (CamberTargetSearch.Solve(reading, demand, Casters(request, reading.Car, adjustable.Caster), budget, out var failure) is not { } result)
        {
            work.Cancellation.ThrowIfCancellationRequested();
            problem = NoCamber(request, reading.Car, failure!.Value, units);
        }
        else if (Math.Abs(result.StaticCamberDeg.Value) > CamberTargetSearch.LargestDeg)
        {
            problem = NoCamber(request, reading.Car, new(null, demand.Hardest.Demand), units);
        }
        else
        {
            var camber = HandlingInputs.For(request.Axle).Camber;
            var setRange = Uncertainty.Ninety(result.SetCamberDeg, reading.ErrorOf(camber));
            found = new(CamberTargetAnswers.Create(request, vehicle, reading, scale, corners, result, units), reading.AssumedFor(camber) is null ? setRange : null, demand.Reach);
            problem = null;
        }

        return problem is null;
    }

    /// <summary>The answer, and what its picture shows beside it.</summary>
    /// <param name="Answer">The answer.</param>
    /// <param name="SetRange">The camber set now with the gauge's error; null where nobody measured it.</param>
    /// <param name="Reach">How far camber can be set; null where nobody said.</param>
    private readonly record struct Found(CamberTargetAnswer Answer, Uncertainty? SetRange, AngleReach? Reach);

    /// <summary>The present caster and those asked for, or up to three degrees more as far as the range goes.</summary>
    private static List<double> Casters(CamberTargetRequest request, HandlingCar car, AngleReach? reach)
    {
        var now = HandlingInputs.For(request.Axle).Caster.Read(car);
        var list = new List<double> { now };
        if (request.CastersDeg is { } asked) list.AddRange(asked);
        else list.AddRange(new[] { now + 1, now + 2, now + 3 }.Where(one => one <= MostCasterDeg && reach?.Holds(one) != false));
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
