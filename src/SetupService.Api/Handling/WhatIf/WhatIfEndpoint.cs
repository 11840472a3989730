using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Api.Vehicles;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Handling.WhatIf;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>The call that compares changes of a car.</summary>
internal static class WhatIfEndpoint
{
    private static readonly WhatIfRules Rules = new();

    public static void MapWhatIf(this RouteGroupBuilder group)
    {
        group.MapPost("/what-if", Compare)
            .WithQuery(QueryParameters.Units)
            .WithExample("what-if")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("whatIf")
            .WithSummary("What would each of these changes do, alone and together?")
            .WithDescription("A car in a steady turn and up to 24 changes (values set by a partial vehicle, RFC 7396 without null; parts taken off; spring seats trimmed to keep the ride height): what each axle can hold and which gives up first, roll, inclination, travel left, ride frequency and what else moves, each change alone and all together, in words, figures and a table. A change that cannot be answered says why in its own place.");
        group.MapPost("/what-if/chart", Chart)
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("what-if")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("whatIfChart")
            .WithSummary("What each change does, as a picture")
            .WithDescription("Takes the body of what-if and draws a block for each change with what a person buys by first: what both axles can hold and their margin, lean of the outer tyres, travel left, ride frequency and roll, better and worse told apart. The other figures are in what-if.");
    }

    private static Results<Answer<WhatIfAnswer>, Problem> Compare(
        Body<WhatIfRequest> body, JsonContract contract, QueryReader query, RequestWork work) =>
        TryCompare(body, contract, query, work, out var answer, out var problem) ? new Answer<WhatIfAnswer>(answer) : problem;

    private static Results<SvgAnswer, Problem> Chart(
        Body<WhatIfRequest> body, JsonContract contract, QueryReader query, RequestWork work) =>
        TryCompare(body, contract, query, work, out var answer, out var problem)
            ? new SvgAnswer(WhatIfChart.Draw(body.Value!, answer, query.Units, query.WidthPx))
            : problem;

    private static bool TryCompare(
        Body<WhatIfRequest> body,
        JsonContract contract,
        QueryReader query,
        RequestWork work,
        [NotNullWhen(true)] out WhatIfAnswer? answer,
        [NotNullWhen(false)] out Problem? problem)
    {
        answer = null;
        problem = body.Problem ?? Compute(body, body.Value!, contract, query, work, out answer);
        return answer is not null;
    }

    private static Problem? Compute(
        Body<WhatIfRequest> body, WhatIfRequest request, JsonContract contract, QueryReader query, RequestWork work, out WhatIfAnswer? answer)
    {
        answer = null;
        if (!VehicleMapper.Map(request.Vehicle).Under("vehicle").TryGet(out var vehicle, out var refusal))
            return body.Refuse(refusal);
        var budget = work.Budget;
        if (StandingCar.AsGiven(vehicle, query.Units) is not { } car || CorneringEvaluation.Create(request, vehicle, query.Units, budget) is not { } turned)
            return HandlingProblems.NoCorner(vehicle);
        if (turned.Run.At(request.LateralG, out var obstacle) is not { } turn)
            return TurnProblems.NoEquilibrium(request, turned, obstacle!.Value);

        var study = WhatIfStudy.Compute(car, turned.Path, request.LateralG, turned.Scale, budget);
        var states = new WhatIfStates(car, request.Vehicle, study, contract.Changing(request.Vehicle, "/vehicle"), query.Units);
        var alone = new List<WhatIfState>(request.Changes.Length);
        for (var i = 0; i < request.Changes.Length; i++)
        {
            work.Cancellation.ThrowIfCancellationRequested();
            alone.Add(states.Alone(request.Changes[i], i));
        }

        WhatIfState? together = null;
        for (var i = 0; i < request.Changes.Length && alone.TrueForAll(one => one.Problem is null) && together?.Problem is null; i++)
        {
            work.Cancellation.ThrowIfCancellationRequested();
            together = states.Together(request.Changes[i], i, i == request.Changes.Length - 1);
        }

        answer = WhatIfAnswers.Create(request, turned, turn, car, study.Given, alone, together, query.Units);
        return null;
    }
}
