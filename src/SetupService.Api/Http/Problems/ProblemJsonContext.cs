using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Problems;

/// <summary>The JSON type of problems, which can be written whatever else the service knows.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, Converters = [typeof(AnswerNumberConverter)])]
[JsonSerializable(typeof(Problem))]
internal sealed partial class ProblemJsonContext : JsonSerializerContext;
