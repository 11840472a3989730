using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Fitment.Batch;

/// <summary>The parts of a form as they arrive, in the order they are sent.</summary>
internal sealed class FormParts(string boundary, Stream body, BatchFlow flow)
{
    /// <summary>The media type of a form.</summary>
    public const string MediaType = "multipart/form-data";

    /// <summary>Longest boundary a message may have (RFC 2046, section 5.1.1).</summary>
    public const int LongestBoundary = 70;

    private const int BufferBytes = 65_536;

    private readonly MultipartReader _reader = new(boundary, body, BufferBytes);

    /// <summary>The next part; null after the last.</summary>
    public async Task<MultipartSection?> NextAsync()
    {
        MultipartSection? part = null;

        // What stands between two parts is little, and not counted.
        await flow.WaitAsync(async token =>
        {
            part = await _reader.ReadNextSectionAsync(token).ConfigureAwait(false);
            return 0;
        }).ConfigureAwait(false);
        return part;
    }

    /// <summary>A part's name; null where there is no part, or it has none.</summary>
    public static string? NameOf(MultipartSection? part) =>
        ContentDispositionHeaderValue.TryParse(part?.ContentDisposition, out var disposition)
            ? HeaderUtilities.RemoveQuotes(disposition.Name).ToString()
            : null;

    /// <summary>The refusal of a form without a part where it must be.</summary>
    public static Problem Missing(string pointer, string message) => Problem.Invalid(Fault.At(pointer, FaultCodes.Required, message));

    /// <summary>The refusal of a part behind the last that is read.</summary>
    public static Problem Surplus(MultipartSection part, string first)
    {
        var name = NameOf(part) ?? "";
        return Problem.Invalid(Fault.At(
            new PointerPath().Then(name),
            FaultCodes.UnknownMember,
            $"A part {TokenText.Quote(name)} comes after the candidates; {first} and candidates are read, and nothing after them."));
    }

    /// <summary>The refusal of a body that is no form. No further request is taken off the connection.</summary>
    public static Problem Malformed(HttpContext context)
    {
        BrokenBody.EndConnection(context);
        return Problem.Invalid(Fault.At(
            "", FaultCodes.Syntax, "The body is not multipart/form-data with the boundary its Content-Type names, or its chunks (Transfer-Encoding) are malformed."));
    }

    /// <summary>True when the parts, or the message they come in, could not be read; false where the caller went away.</summary>
    public static bool IsMalformed(Exception exception, HttpContext context) =>
        exception is IOException or InvalidDataException && !HangUps.IsTold(exception, context);
}
