namespace SetupService.Api.Http.Problems;

/// <summary>Every kind of refusal this service sends.</summary>
public static class ProblemTypes
{
    /// <summary>400: malformed or out of contract.</summary>
    public static ProblemType InvalidRequest { get; } = new(
        "invalid-request", 400, "The request breaks the contract", "The request could not be read.");

    /// <summary>401: no key, or none that is known.</summary>
    public static ProblemType KeyNeeded { get; } = new(
        "key-needed", 401, "A key is needed", "The header Api-Key must carry the key of a client of this service.");

    /// <summary>404: nothing at this path.</summary>
    public static ProblemType NotFound { get; } = new(
        "not-found", 404, "Nothing here", "There is nothing at this path. The page /docs lists every call.");

    /// <summary>405: the path does not answer this verb.</summary>
    public static ProblemType MethodNotAllowed { get; } = new(
        "method-not-allowed", 405, "The path does not answer this method", "The header Allow names the methods this path answers.");

    /// <summary>406: no media type the caller accepts.</summary>
    public static ProblemType NotAcceptable { get; } = new(
        "not-acceptable", 406, "No acceptable form of the answer", "The call has no answer in a media type that Accept names.");

    /// <summary>408: the body did not arrive in time.</summary>
    public static ProblemType RequestTimeout { get; } = new(
        "request-timeout", 408, "The request took too long to arrive", "The body arrived too slowly. Send it again.");

    /// <summary>413: the body is too large.</summary>
    public static ProblemType TooLarge { get; } = new(
        "too-large", 413, "The body is too large", "The body has more bytes than the service reads at once.");

    /// <summary>415: the body is not of a media type the call reads.</summary>
    public static ProblemType UnsupportedMediaType { get; } = new(
        "unsupported-media-type", 415, "The body's media type is not read", "The call does not read a body of this Content-Type or Content-Encoding; most read application/json in UTF-8, not compressed.");

    /// <summary>422: well-formed, but it has no answer.</summary>
    public static ProblemType NotComputable { get; } = new(
        "not-computable", 422, "No answer exists for these inputs", "The request is well-formed, but what it describes has no solution.");

    /// <summary>422: well-formed, but dearer than one request may be.</summary>
    public static ProblemType WorkExceeded { get; } = new(
        "work-exceeded", 422, "The request takes more work than one may", "The request takes more work than the service does for one.");

    /// <summary>429: the caller's share is used up.</summary>
    public static ProblemType TooManyRequests { get; } = new(
        "too-many-requests", 429, "Too many requests", "The header Retry-After says in how many seconds to try again.");

    /// <summary>500: our mistake.</summary>
    public static ProblemType InternalError { get; } = new(
        "internal-error", 500, "The service failed", "The fault is the service's. Quote requestId when reporting it.");

    /// <summary>503: busy or shutting down.</summary>
    public static ProblemType Unavailable { get; } = new(
        "unavailable", 503, "The service is busy", "The header Retry-After says in how many seconds to try again.");

    /// <summary>All of them, by status.</summary>
    public static IReadOnlyList<ProblemType> All { get; } =
    [
        InvalidRequest, KeyNeeded, NotFound, MethodNotAllowed, NotAcceptable, RequestTimeout, TooLarge, UnsupportedMediaType,
        NotComputable, WorkExceeded, TooManyRequests, InternalError, Unavailable,
    ];

    /// <summary>The kind that goes with a status the framework set; other client faults are invalid requests.</summary>
    public static ProblemType ForStatus(int status) =>
        All.FirstOrDefault(type => type.Status == status) ?? (status < 500 ? InvalidRequest : InternalError);
}
