using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Problems;

/// <summary>
/// A refusal as RFC 9457 writes it: always <c>application/problem+json</c>, whatever the caller accepts.
/// Clients tell kinds apart by <c>type</c> and by the codes in <c>errors</c>, never by the wording.
/// </summary>
public sealed record Problem : IResult
{
    /// <summary>The media type of every problem.</summary>
    public const string MediaType = "application/problem+json";

    /// <summary>The kind of problem: a path of this service that explains it.</summary>
    [Sample("/docs/problems/invalid-request")]
    public required string Type { get; init; }

    /// <summary>The kind in a few words; the same for every problem of the kind.</summary>
    [Sample("The request breaks the contract")]
    public required string Title { get; init; }

    /// <summary>The HTTP status.</summary>
    [Sample(400)]
    public required int Status { get; init; }

    /// <summary>What is wrong in this case, for a person.</summary>
    [Sample("1 fault in the request; errors lists it.")]
    public required string Detail { get; init; }

    /// <summary>The path that was called; left out where there is none.</summary>
    [Sample("/v1/fitment/check")]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Instance { get; init; }

    /// <summary>The id of this request: the same as in the header Request-Id and in the service's log.</summary>
    [Sample("0af7651916cd43dd8448eb211c80319c")]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? RequestId { get; init; }

    /// <summary>Every fault of the request, in the order of its text; empty where no one place is at fault.</summary>
    [JsonRequired]
    public IReadOnlyList<Fault> Errors { get; init; } = [];

    /// <summary>A problem of a kind, with the sentence for this case.</summary>
    public static Problem Create(ProblemType type, string? detail = null, IReadOnlyList<Fault>? errors = null)
    {
        ArgumentNullException.ThrowIfNull(type);
        return new Problem
        {
            Type = type.Uri,
            Title = type.Title,
            Status = type.Status,
            Detail = detail ?? type.Detail,
            Errors = errors ?? [],
        };
    }

    /// <summary>The 400 for a request with faults.</summary>
    public static Problem Invalid(Refusal refusal)
    {
        ArgumentNullException.ThrowIfNull(refusal);
        var detail = refusal.Count == 1
            ? "1 fault in the request: " + refusal[0].Message
            : $"{refusal.Count} faults in the request; errors lists them.";
        return Create(ProblemTypes.InvalidRequest, detail, refusal);
    }

    /// <summary>The 400 for a request with one fault.</summary>
    public static Problem Invalid(Fault fault) => Invalid(new Refusal(fault));

    /// <summary>The 422 for inputs that have no answer.</summary>
    public static Problem NotComputable(string detail, IReadOnlyList<Fault>? errors = null) =>
        Create(ProblemTypes.NotComputable, detail, errors);

    /// <inheritdoc />
    public Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var requestId = RequestIds.Put(httpContext);
        SecurityHeaders.Put(httpContext);
        var response = httpContext.Response;
        response.StatusCode = Status;
        response.ContentType = MediaType;
        response.Headers.CacheControl = "no-store";
        new RequestOutcome(Errors.Count).KeepFor(httpContext);
        ServiceMeter.CountRefusal(this);
        var sent = this with { RequestId = requestId };
        return JsonOutput.WriteAsync(response, sent, ProblemJsonContext.Default.Problem);
    }
}
