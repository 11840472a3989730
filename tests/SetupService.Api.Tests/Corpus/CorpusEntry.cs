using System.Text.Json.Nodes;

namespace SetupService.Api.Tests.Corpus;

/// <summary>One recorded call: what is sent, and what was answered.</summary>
/// <param name="Id">Name of the entry: its file and its number in it.</param>
/// <param name="Method">The HTTP method.</param>
/// <param name="Path">The path with its query.</param>
/// <param name="ContentType">The media type of the body sent, or null without one; multipart/form-data sends an object's members as parts, an array as the lines of NDJSON.</param>
/// <param name="Accept">The Accept header, or null for none.</param>
/// <param name="Request">The body: JSON as it is, anything else as a string; null without one.</param>
/// <param name="Status">The HTTP status answered, or null where nothing was recorded yet.</param>
/// <param name="AnswerType">The media type answered, without its parameters, or null where nothing was recorded yet.</param>
/// <param name="Answer">The answer: JSON as it is, the lines of NDJSON as an array, anything else as a string.</param>
internal sealed record CorpusEntry(
    string Id, string Method, string Path, string? ContentType, string? Accept, JsonNode? Request, int? Status, string? AnswerType, JsonNode? Answer);
