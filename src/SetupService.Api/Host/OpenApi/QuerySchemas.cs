using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Queries;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Describes declared query parameters.</summary>
internal static class QuerySchemas
{
    public static OpenApiParameter Describe(QueryParameter parameter) => new()
    {
        Name = parameter.Name,
        In = ParameterLocation.Query,
        Description = UnitOfName.Read(parameter.Name) is { } unit && parameter is NumberParameter
            ? $"{parameter.Description} Unit: {unit}."
            : parameter.Description,
        Required = parameter.IsRequired,
        Schema = SchemaOf(parameter),
        Explode = parameter is not WordsParameter,
        Example = SampleOf(parameter),
    };

    private static OpenApiSchema SchemaOf(QueryParameter parameter) => parameter switch
    {
        TextParameter text => new OpenApiSchema { Type = JsonSchemaType.String, MinLength = 1, MaxLength = text.MaximumLength },
        NumberParameter number => new OpenApiSchema
        {
            Type = number.IsWhole ? JsonSchemaType.Integer : JsonSchemaType.Number,
            Minimum = number.Minimum.ToString(CultureInfo.InvariantCulture),
            Maximum = number.Maximum.ToString(CultureInfo.InvariantCulture),
        },
        EnumParameter word => new OpenApiSchema
        {
            Type = JsonSchemaType.String,
            Enum = [.. word.Words.Select(one => (JsonNode)one)],
            Default = word.Default is null ? null : JsonValue.Create(word.Default),
        },
        WordsParameter words => new OpenApiSchema
        {
            Type = JsonSchemaType.Array,
            MinItems = 1,
            Items = new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. words.Words.Select(one => (JsonNode)one)] },
        },
        _ => throw new InvalidOperationException($"{parameter.Name} is of no known kind."),
    };

    // A signature shown would be false, and sent with every call tried out from the description.
    private static JsonNode? SampleOf(QueryParameter parameter) => parameter switch
    {
        _ when parameter == SignedAddress.Expires || parameter == SignedAddress.Signature => null,
        TextParameter text => JsonValue.Create(text.Sample),
        NumberParameter number => JsonValue.Create(number.Sample),
        EnumParameter word => JsonValue.Create(word.Default ?? word.Words[0]),
        WordsParameter words => new JsonArray(JsonValue.Create(words.Words[0])),
        _ => null,
    };
}
