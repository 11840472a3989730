using System.Text.Json.Serialization;
using SetupService.Api.Host;
using SetupService.Api.Http;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>The JSON types of a service that changes cars, read as the real service reads its own.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    NumberHandling = JsonNumberHandling.Strict,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    AllowDuplicateProperties = false,
    AllowOutOfOrderMetadataProperties = true,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    MaxDepth = ServiceLimits.JsonDepth)]
[JsonSerializable(typeof(ChangeRequest))]
[JsonSerializable(typeof(HealthAnswer))]
internal sealed partial class ChangeJsonContext : JsonSerializerContext;
