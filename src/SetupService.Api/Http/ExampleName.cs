namespace SetupService.Api.Http;

/// <summary>Names the example files of a call: <c>NAME.request.json</c> and <c>NAME.answer.json</c> in api/examples.</summary>
/// <param name="Name">The first part of the file names.</param>
public sealed record ExampleName(string Name);
