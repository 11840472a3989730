using System.Text.Json;
using System.Text.Json.Serialization;
using SetupService.Api.Host;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>The JSON types of a service that changes cars, read as the real service reads its own.</summary>
[JsonSerializable(typeof(ChangeRequest))]
[JsonSerializable(typeof(HealthAnswer))]
internal sealed partial class ChangeJsonContext : JsonSerializerContext
{
    /// <summary>With the service's own options, its enums' names among them.</summary>
    public static ChangeJsonContext OfService { get; } = new(new JsonSerializerOptions(ContractJsonContext.Default.Options));
}
