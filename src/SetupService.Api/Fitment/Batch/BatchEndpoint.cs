using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;

namespace SetupService.Api.Fitment.Batch;

/// <summary>The call that checks many candidates in one request.</summary>
internal static class BatchEndpoint
{
    private static readonly WordParameter Detail = new(
        "detail", "How much an answer line tells; tables always tell compactly.", Words<BatchDetail>.List, Default: "compact");

    public static void MapFitmentBatch(this IEndpointRouteBuilder group)
    {
        // Made now and not by the first batch: a mistake in the lines shows at start, and the description knows them as requests.
        var contract = group.ServiceProvider.GetRequiredService<JsonContract>();
        contract.ReaderOf<BatchCarLine>();
        contract.ReaderOf<BatchCandidateLine>();
        group.MapPost("/batch", Start)
            .WithQuery(Detail, QueryParameters.Units)
            .WithMetadata(new AcceptsMetadata([NdjsonBatch.MediaType, CsvBatch.RequestMediaType], typeof(string)))
            .WithMediaTypes(NdjsonBatch.MediaType, CsvBatch.MediaType)
            .WithProblems(ProblemTypes.InvalidRequest, ProblemTypes.RequestTimeout, ProblemTypes.TooLarge, ProblemTypes.UnsupportedMediaType)
            .WithSchemas(typeof(BatchCarLine), typeof(BatchCandidateLine), typeof(BatchAnswerLine))
            .WithExample("fitment-batch")
            .WithName("fitmentBatch")
            .WithSummary("Many candidates in one request")
            .WithDescription("""
                Checks a stream of candidates of any length, in order, in flat memory.
                NDJSON: a line {"vehicle", "axle"} sets the car for the lines after it (schema BatchCarLine); a line {"id", "candidate"}
                gets one answer line (BatchCandidateLine, BatchAnswerLine), bad lines included; the last line is a summary, without which
                the answer was cut off. A body without a line is refused. A line may have 64 KiB, and the service waits 30 s for the next bytes.
                CSV: multipart/form-data with the part car (JSON) before the part candidates (text/csv with a header of the wheel's and
                tyre's member names in any order; the two masses are wheel.massKg and tyre.massKg); answered by one row a row,
                in blocks of some tens of KiB.
                Both sides stream: read answers while you write, or both ends wait for each other once their buffers are full.
                A batch changes nothing, so sending it again is safe.
                """);
    }

    private static IResult Start(HttpContext context, QueryReader query, JsonContract contract)
    {
        if (query.Problem is { } problem)
            return problem;
        if (BodyHeaders.IsEncoded(context.Request.Headers.ContentEncoding))
            return Problem.Of(ProblemTypes.UnsupportedMediaType, "The body has a Content-Encoding; send it as it is, not compressed.");

        var detail = query.Word<BatchDetail>(Detail) ?? BatchDetail.Compact;
        var settings = context.RequestServices.GetRequiredService<BatchSettings>();
        var isTyped = MediaTypeHeaderValue.TryParse(context.Request.ContentType, out var type);
        if (isTyped && type!.MediaType.Equals(NdjsonBatch.MediaType, StringComparison.OrdinalIgnoreCase))
            return AcceptCheck.Find(context, NdjsonBatch.MediaType) ?? (IResult)new NdjsonBatch(contract, settings, detail, query.Units);
        if (!isTyped || !type!.MediaType.Equals(CsvBatch.RequestMediaType, StringComparison.OrdinalIgnoreCase))
            return Problem.Of(ProblemTypes.UnsupportedMediaType, "A batch is application/x-ndjson, or multipart/form-data with the parts car and candidates.");

        var boundary = HeaderUtilities.RemoveQuotes(type.Boundary).ToString();
        if (boundary.Length is 0 or > CsvBatch.LongestBoundary)
            return Problem.Of(ProblemTypes.UnsupportedMediaType, "The Content-Type multipart/form-data names no boundary of 1 to 70 characters.");
        if (detail == BatchDetail.Full)
            return Problem.Invalid([Fault.Of("detail", FaultCodes.Inconsistent, "detail is \"full\", but the rows of a table tell compactly; send NDJSON for the full answer.")]);
        return AcceptCheck.Find(context, CsvBatch.MediaType) ?? (IResult)new CsvBatch(contract, settings, boundary);
    }
}
