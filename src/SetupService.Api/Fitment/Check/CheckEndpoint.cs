using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;

namespace SetupService.Api.Fitment.Check;

/// <summary>The call that checks a fitting against an axle, and the one that draws it.</summary>
internal static class CheckEndpoint
{
    /// <summary><c>detail</c>: how much of the answer is sent.</summary>
    public static EnumParameter Detail { get; } = new("detail", "How much the answer tells: the verdict and what decided it, every check as well, or all of it.", EnumNames<CheckDetail>.List, Default: "full");

    /// <summary>How much of the answer was asked for.</summary>
    public static CheckDetail DetailOf(QueryReader query) => query.Word<CheckDetail>(Detail) ?? CheckDetail.Full;

    public static void MapCheck(this RouteGroupBuilder group)
    {
        group.MapPost("/check", Check)
            .WithQuery(QueryParameters.Units, Detail)
            .WithExample("fitment-check")
            .WithName("fitmentCheck")
            .WithSummary("Does this wheel and tyre fit this axle, and carry it?")
            .WithDescription("Checks a candidate against one axle of a car: clearances with their tolerances, load and speed, hub, brakes, rolling circumference and arch cover. What was not measured is unknown, never guessed. The least for a verdict: both markings of now and then with bolt circle and centre bore, the axle's greatest load, the top speed, the hub's spigot, and the gap where the new pair takes more room; needs lists what is left.");
        group.MapPost("/drawing", Draw)
            .WithQuery(QueryParameters.Units)
            .WithExample("fitment-drawing")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("fitmentDrawing")
            .WithSummary("The corner as a picture")
            .WithDescription("The left corner seen from behind as SVG in millimetres, the current and the candidate wheel over each other, gaps dimensioned. Takes the body of the check.");
    }

    private static Results<Answer<CheckAnswer>, Problem> Check(Body<CheckRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!CheckedFitting.Evaluate(request).TryGet(out var done, out var refusal))
            return body.Refuse(refusal);
        ServiceMeter.CountVerdicts(EnumNames<CheckStatus>.GetName(done.Sheet.Verdict)!, 1);
        return new Answer<CheckAnswer>(done.ToAnswer(query.Units, DetailOf(query)) with { Next = DetailOf(query) == CheckDetail.Full ? NextCalls.AfterCheck : null });
    }

    private static Results<SvgAnswer, Problem> Draw(Body<CheckRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!CheckedFitting.Evaluate(request).TryGet(out var done, out var refusal))
            return body.Refuse(refusal);
        return done.Candidate.Tyre.Marking.HasDimensions
            ? new SvgAnswer(CornerDrawing.Draw(done.Car, done.Candidate, done.Sheet, query.Units))
            : SizeProblems.NotKnown(("/candidate", done.Candidate.Tyre));
    }
}
