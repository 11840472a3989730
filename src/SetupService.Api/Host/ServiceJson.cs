using System.Text.Json;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Host;

/// <summary>The JSON options the framework's own parts (the API description above all) see.</summary>
internal static class ServiceJson
{
    public static void Configure(JsonSerializerOptions options)
    {
        var contract = ContractJsonContext.Default.Options;
        options.TypeInfoResolverChain.Insert(0, ContractJsonContext.Default);
        options.TypeInfoResolverChain.Insert(1, ProblemJsonContext.Default);
        foreach (var converter in contract.Converters)
            options.Converters.Add(converter);
        options.PropertyNamingPolicy = contract.PropertyNamingPolicy;
        options.PropertyNameCaseInsensitive = contract.PropertyNameCaseInsensitive;
        options.NumberHandling = contract.NumberHandling;
        options.AllowOutOfOrderMetadataProperties = contract.AllowOutOfOrderMetadataProperties;
        options.RespectNullableAnnotations = contract.RespectNullableAnnotations;
        options.RespectRequiredConstructorParameters = contract.RespectRequiredConstructorParameters;
        options.MaxDepth = contract.MaxDepth;
    }
}
