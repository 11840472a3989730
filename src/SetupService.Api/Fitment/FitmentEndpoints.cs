using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>The calls that tell whether wheels and tyres fit.</summary>
internal static class FitmentEndpoints
{
    public static void MapFitment(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/v1/fitment").WithTags("Fitment");
        group.MapPost("/comparison", Compare)
            .WithExample("fitment-comparison")
            .WithName("fitmentComparison")
            .WithSummary("What changes with another wheel and tyre?")
            .WithDescription("Compares two fittings on one hub: edges, track, scrub radius, diameter, gearing, mass and true speed. Nominal figures.");
        group.MapPost("/check", Check)
            .WithQuery(QueryParameters.Units)
            .WithExample("fitment-check")
            .WithName("fitmentCheck")
            .WithSummary("Does this wheel and tyre fit this axle, and carry it?")
            .WithDescription("Checks a candidate against one axle of a car: clearances with their tolerances, load and speed, hub, brakes, rolling circumference and arch cover. What was not measured is unknown, never guessed.");
        group.MapPost("/window", Window)
            .WithExample("fitment-window")
            .WithName("fitmentWindow")
            .WithSummary("Which offsets fit at each rim width?")
            .WithDescription("For each rim width the range of offsets at which no clearance check fails, and what limits each end.");
        group.MapPost("/drawing", Draw)
            .WithQuery(QueryParameters.Units)
            .WithExample("fitment-drawing")
            .WithName("fitmentDrawing")
            .WithSummary("The corner as a picture")
            .WithDescription("The left corner seen from behind as SVG in millimetres, the current and the candidate wheel over each other, gaps dimensioned. Takes the body of the check.");
        group.MapFitmentBatch();
    }

    private static Results<Answer<ComparisonAnswer>, Problem> Compare(Body<ComparisonRequest> body)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!FitmentMapper.Map(request).TryGet(out var fittings, out var refusal))
            return body.Refuse(refusal);

        var indicatedKmh = request.IndicatedKmh ?? Comparison.DefaultIndicatedKmh;
        return new Answer<ComparisonAnswer>(
            ComparisonAnswer.Of(Comparison.Between(fittings.Current, fittings.Candidate, request.SteeringAxisInclinationDeg, indicatedKmh)));
    }

    private static Results<Answer<CheckAnswer>, Problem> Check(Body<CheckRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        return CheckedFitting.Evaluate(request).TryGet(out var done, out var refusal)
            ? new Answer<CheckAnswer>(done.ToAnswer(query.Units))
            : body.Refuse(refusal);
    }

    private static Results<Answer<WindowAnswer>, Problem> Window(Body<WindowRequest> body)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!FitmentMapper.Map(request).TryGet(out var inputs, out var refusal))
            return body.Refuse(refusal);
        var car = AxleUnderCheck.Prepare(inputs.Vehicle, request.Axle, FitmentMapper.Settings(request.Tolerances, required: null, request.CamberChange));
        return new Answer<WindowAnswer>(WindowAnswers.Of(car, inputs.Tyre, request.RimWidthsIn));
    }

    private static Results<SvgAnswer, Problem> Draw(Body<CheckRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        return CheckedFitting.Evaluate(request).TryGet(out var done, out var refusal)
            ? new SvgAnswer(CornerDrawing.Draw(done.Car, done.Candidate, done.Sheet, query.Units))
            : body.Refuse(refusal);
    }
}
