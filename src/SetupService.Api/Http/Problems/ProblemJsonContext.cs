using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Problems;

/// <summary>The JSON type of problems, which can be written whatever else the service knows.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(Problem))]
internal sealed partial class ProblemJsonContext : JsonSerializerContext;
