using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;

namespace SetupService.Api.Fitment.Batch;

/// <summary>The calls that check many candidates in one request: a stream of JSON lines, or a table.</summary>
internal static class BatchEndpoint
{
    private static readonly EnumParameter Detail = new("detail", "How much an answer line tells: the verdict and what decided it, or the answer of the single call in that detail as well.", EnumNames<CheckDetail>.List, Default: "verdict");

    private static readonly ProblemType[] Refusals =
        [ProblemTypes.InvalidRequest, ProblemTypes.RequestTimeout, ProblemTypes.TooLarge, ProblemTypes.UnsupportedMediaType];

    public static void MapFitmentBatch(this IEndpointRouteBuilder group)
    {
        // Named at start, not by the first batch, so that the description lists the lines as requests.
        var contract = group.ServiceProvider.GetRequiredService<JsonContract>();
        contract.ReaderOf<BatchCarLine>();
        contract.ReaderOf<BatchCandidateLine>();
        var caps = group.ServiceProvider.GetRequiredService<CapSettings>();
        group.MapPost("/batch", StartLines)
            .WithStreamPlace()
            .WithQuery(Detail, VerdictFilter.Parameter, QueryParameters.Units)
            .WithMetadata(new AcceptsMetadata([NdjsonBatch.MediaType], typeof(string)))
            .WithMediaTypes(NdjsonBatch.MediaType)
            .WithProblems(Refusals)
            .WithSchemas(typeof(BatchCarLine), typeof(BatchCandidateLine), typeof(BatchAnswerLine))
            .WithExample("fitment-batch")
            .WithName("fitmentBatch")
            .WithSummary("Many candidates in one request, as JSON lines")
            .WithDescription($$"""
                Checks a stream of candidates of any length, in order, in constant memory. A line {"vehicle", "axle"} sets the car for the
                lines after it (schema BatchCarLine); a line {"id", "candidate"}, or {"id", "front", "rear"} for the whole car, gets one answer
                line (BatchCandidateLine, BatchAnswerLine), bad lines included. The last line is a summary; without it the answer was cut off. A body without a line is refused.
                {{caps.OfLine}} The service waits for the next bytes, 30 s unless set otherwise.
                Both sides stream: read answers while you write, or both ends wait for each other once their buffers are full.
                A batch changes nothing, so sending it again is safe.
                """);
        group.MapPost("/batch/csv", StartTable)
            .WithStreamPlace()
            .WithQuery(VerdictFilter.Parameter, QueryParameters.Units)
            .WithMetadata(new AcceptsMetadata([FormParts.MediaType], typeof(string)))
            .WithMediaTypes(CsvBatch.MediaType)
            .WithProblems(Refusals)
            .WithSchemas(typeof(BatchCarLine))
            .WithExample("fitment-batch")
            .WithName("fitmentBatchCsv")
            .WithSummary("Many candidates in one request, as a table")
            .WithDescription($$"""
                Checks a table of candidates of any length, a row a line, in the same order. Send multipart/form-data with
                the part car (JSON of vehicle and axle) before the part candidates (text/csv with a header of the wheel's and tyre's
                member names in any order; the two masses are wheel.massKg and tyre.massKg, the markings wheelMarking and tyreMarking). Commas,
                semicolons or tabs stand between columns, as the header has them; where no comma does, numbers may have a decimal comma. Columns of your own
                are passed through, unless their name is near a known one; rows without a filled cell are left out. The answer is text/csv with the same
                separator and decimal mark, sent in blocks of some tens of KiB; its column reasons says what decided a row that is no pass. {{caps.OfLine}} The service waits for the next bytes, 30 s unless set otherwise.
                Both sides stream: read answers while you write. A batch changes nothing, so sending it again is safe.
                """);
    }

    private static IResult StartLines(HttpContext context, QueryReader query, JsonContract contract)
    {
        if ((query.Problem ?? EncodedBody(context)) is { } problem)
            return problem;
        return TypeOf(context, NdjsonBatch.MediaType) is null
            ? Problem.Create(ProblemTypes.UnsupportedMediaType, "The body's Content-Type is not application/x-ndjson. A table goes to /v1/fitment/batch/csv.")
            : new NdjsonBatch(contract, query.Word<CheckDetail>(Detail) ?? CheckDetail.Verdict, VerdictFilter.From(query), query.Units);
    }

    private static IResult StartTable(HttpContext context, QueryReader query, JsonContract contract)
    {
        if ((query.Problem ?? FindFormProblem(context, "car and candidates")) is { } problem)
            return problem;
        return new CsvBatch(contract, BoundaryOf(context)!, VerdictFilter.From(query), query.Units);
    }

    /// <summary>Why a body is not read as a form; null where it is.</summary>
    internal static Problem? FindFormProblem(HttpContext context, string parts)
    {
        if (EncodedBody(context) is { } encoded)
            return encoded;
        if (TypeOf(context, FormParts.MediaType) is null)
            return Problem.Create(ProblemTypes.UnsupportedMediaType, $"The body's Content-Type is not multipart/form-data with the parts {parts}. JSON lines go to /v1/fitment/batch.");
        return BoundaryOf(context) is null
            ? Problem.Create(ProblemTypes.UnsupportedMediaType, "The Content-Type multipart/form-data names no boundary of 1 to 70 characters.")
            : null;
    }

    /// <summary>What stands between the parts of a form; null where its Content-Type does not say.</summary>
    internal static string? BoundaryOf(HttpContext context) =>
        HeaderUtilities.RemoveQuotes(TypeOf(context, FormParts.MediaType)?.Boundary ?? default).ToString() is { Length: > 0 and <= FormParts.LongestBoundary } boundary ? boundary : null;

    private static Problem? EncodedBody(HttpContext context) =>
        BodyHeaders.IsEncoded(context.Request.Headers.ContentEncoding)
            ? Problem.Create(ProblemTypes.UnsupportedMediaType, "The body has a Content-Encoding; send it as it is, not compressed.")
            : null;

    /// <summary>The body's Content-Type where it is the one media type the call reads; null where it is another or none.</summary>
    private static MediaTypeHeaderValue? TypeOf(HttpContext context, string mediaType) =>
        MediaTypeHeaderValue.TryParse(context.Request.ContentType, out var type) && type.MediaType.Equals(mediaType, StringComparison.OrdinalIgnoreCase)
            ? type
            : null;
}
