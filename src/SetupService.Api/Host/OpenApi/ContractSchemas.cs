using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;

namespace SetupService.Api.Host.OpenApi;

/// <summary>
/// Says in the API description what the contract attributes say to the readers: limits, lengths, counts, words,
/// examples, units, and that a request has no other members.
/// </summary>
internal sealed class ContractSchemas(JsonContract contract) : IOpenApiSchemaTransformer
{
    public Task TransformAsync(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancellationToken)
    {
        var type = Nullable.GetUnderlyingType(context.JsonTypeInfo.Type) ?? context.JsonTypeInfo.Type;
        if (type.IsEnum)
            DescribeWords(schema, type);
        else if (type == typeof(LineId))
            DescribeId(schema);
        else if (context.JsonTypeInfo.ElementType is { IsEnum: true } element && schema.Items is null)
            DescribeWords((OpenApiSchema)(schema.Items = new OpenApiSchema()), element);
        if (context.JsonPropertyInfo is { } property)
            DescribeMember(schema, property);
        if (contract.IsRequestType(type) && context.JsonTypeInfo.PolymorphismOptions is null)
            schema.AdditionalPropertiesAllowed = false;
        if (context.JsonTypeInfo.PolymorphismOptions is { } variants && schema.AnyOf is { Count: > 0 } kinds)
            DescribeKinds(kinds, variants.TypeDiscriminatorPropertyName);


        // Every number is a double unless it says otherwise.
        if (schema.Format == "double")
            schema.Format = null;
        return Task.CompletedTask;
    }

    private static void DescribeWords(OpenApiSchema schema, Type type)
    {
        schema.Type = JsonSchemaType.String;
        schema.Enum = [.. Enum.GetNames(type).Select(name => (JsonNode)EnumNames.WordFor(name))];
        (schema.Metadata ??= new Dictionary<string, object>())[PlainReferences.SetName] = type.Name;
    }

    private static void DescribeId(OpenApiSchema schema)
    {
        schema.Type = JsonSchemaType.String | JsonSchemaType.Integer | JsonSchemaType.Null;
        schema.MaxLength = LineId.MaximumLength;
    }

    private static void DescribeMember(OpenApiSchema schema, JsonPropertyInfo property)
    {
        if (property.Find<CountAttribute>() is { } count)
        {
            schema.MinItems = count.Minimum;
            schema.MaxItems = count.Maximum;
        }

        // The framework puts the limits of an array's elements on the array itself.
        var value = schema.Items as OpenApiSchema ?? schema;
        if (value != schema)
            (schema.Minimum, schema.Maximum, schema.MinLength, schema.MaxLength) = (null, null, null, null);
        if (property.Find<RangeAttribute>() is { } attribute)
        {
            var range = NumberRange.From(attribute);
            value.Minimum = range.Minimum.ToString(CultureInfo.InvariantCulture);
            value.Maximum = range.Maximum.ToString(CultureInfo.InvariantCulture);
        }

        if (property.Find<StringLengthAttribute>() is { } text)
            (value.MinLength, value.MaxLength) = (null, text.MaximumLength);
        if (property.Find<SampleAttribute>() is { } sample)
            value.Examples = [Samples.ToJson(sample.Value)];
        var isNumber = value.Type is { } kinds && (kinds & (JsonSchemaType.Number | JsonSchemaType.Integer)) != 0;
        if (isNumber && UnitOfName.Read(property.Name) is { } unit)
            schema.Description = $"{schema.Description} Unit: {unit}.".TrimStart();
    }

    // Each kind is an object that must tell its kind, or generated clients cannot narrow.
    private static void DescribeKinds(IList<IOpenApiSchema> kinds, string teller)
    {
        foreach (var kind in kinds.OfType<OpenApiSchema>())
        {
            kind.Type = JsonSchemaType.Object;
            kind.Required ??= new HashSet<string>();
            kind.Required.Add(teller);
            kind.AdditionalPropertiesAllowed = false;
        }
    }
}
