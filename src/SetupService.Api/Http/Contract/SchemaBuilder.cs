using System.ComponentModel.DataAnnotations;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace SetupService.Api.Http.Contract;

/// <summary>
/// Reads the schemas of request documents from their JSON types and contract attributes, each once, when it is first wanted.
/// A document that leaves something open (a number without limits, a text without a length) is a mistake of ours
/// and throws; a test asks for all of them.
/// </summary>
internal sealed class SchemaBuilder(JsonSerializerOptions options)
{
    private readonly Dictionary<Type, ContractSchema> _known = [];
    private readonly Dictionary<Type, Type> _changes = [];
    private readonly PartialSchemaBuilder _partial = new();

    /// <summary>Every object type of the requests built so far.</summary>
    public IReadOnlyCollection<Type> Types => _known.Keys;

    /// <summary>Every type of change in the requests built so far, with the document it changes.</summary>
    public IReadOnlyDictionary<Type, Type> Changes => _changes;

    public ContractSchema Build(Type type) => Build(type, property: null, unit: null);

    /// <summary>The schema of a change to a document.</summary>
    public ObjectSchema ChangeTo(Type document) => (ObjectSchema)_partial.Build(Build(document));

    private ContractSchema Build(Type type, JsonPropertyInfo? property, string? unit)
    {
        var bare = Nullable.GetUnderlyingType(type) ?? type;
        if (bare == typeof(double) || bare == typeof(int))
        {
            var range = NumberRange.From(Needed<RangeAttribute>(property, "a range"));
            return new NumberSchema(range.Minimum, range.Maximum, bare == typeof(int), unit);
        }

        if (bare == typeof(string))
            return new StringSchema(Needed<StringLengthAttribute>(property, "a greatest length").MaximumLength);
        if (bare == typeof(bool))
            return new BooleanSchema();
        if (bare == typeof(LineId))
            return new LineIdSchema(LineId.MaximumLength);
        if (bare.IsEnum)
            return new EnumSchema(Array.ConvertAll(Enum.GetNames(bare), EnumNames.WordFor));

        var info = options.GetTypeInfo(bare);
        if (info.Converter is IDocumentChangeConverter change)
        {
            _changes[bare] = change.DocumentType;
            return ChangeTo(change.DocumentType);
        }

        return info.Kind switch
        {
            JsonTypeInfoKind.Enumerable => ListOf(info, property, unit),
            JsonTypeInfoKind.Object when info.PolymorphismOptions is { } variants => VariantOf(bare, variants),
            JsonTypeInfoKind.Object => ObjectOf(info, discriminator: null, kind: null, unit),
            _ => throw new InvalidOperationException($"{bare.Name} cannot stand in a request."),
        };
    }

    private ArraySchema ListOf(JsonTypeInfo info, JsonPropertyInfo? property, string? unit)
    {
        var count = Needed<CountAttribute>(property, "a count");
        return new ArraySchema(Build(info.ElementType!, property, unit), count.Minimum, count.Maximum);
    }

    private ContractSchema VariantOf(Type type, JsonPolymorphismOptions variants)
    {
        if (_known.TryGetValue(type, out var known))
            return known;

        var discriminator = variants.TypeDiscriminatorPropertyName;
        VariantSchema schema = new(type, discriminator);
        _known.Add(type, schema);
        string[] kinds = [.. variants.DerivedTypes.Select(variant => (string)variant.TypeDiscriminator!)];
        ObjectSchema[] schemas =
        [
            .. variants.DerivedTypes.Select(variant =>
                (ObjectSchema)ObjectOf(options.GetTypeInfo(variant.DerivedType), discriminator, (string)variant.TypeDiscriminator!, unit: null)),
        ];
        schema.Complete(kinds, schemas);
        return schema;
    }

    private ContractSchema ObjectOf(JsonTypeInfo info, string? discriminator, string? kind, string? unit)
    {
        if (_known.TryGetValue(info.Type, out var known))
            return known;

        ObjectSchema schema = new(info.Type);
        _known.Add(info.Type, schema);
        List<MemberSchema> members = [];
        if (discriminator is not null)
            members.Add(new MemberSchema(discriminator, isRequired: true, new EnumSchema([kind!])));
        foreach (var property in info.Properties)
            members.Add(MemberOf(property, unit));
        schema.Complete(members);
        return schema;
    }

    private MemberSchema MemberOf(JsonPropertyInfo property, string? groupUnit)
    {
        var mayBeNull = property.PropertyType.IsValueType
            ? Nullable.GetUnderlyingType(property.PropertyType) is not null
            : property.IsSetNullable;
        // By its attribute: the lenient reader requires nothing, yet schemas a change as the strict one does.
        var isRequired = property.Find<JsonRequiredAttribute>() is not null;
        if (property.Set is null || isRequired == mayBeNull)
        {
            throw new InvalidOperationException(
                $"{property.DeclaringType.Name}.{property.Name} must be settable, and either required or nullable.");
        }

        var unit = UnitOfName.Read(property.Name) ?? groupUnit;
        return new MemberSchema(property.Name, isRequired, Build(property.PropertyType, property, unit));
    }

    private static TAttribute Needed<TAttribute>(JsonPropertyInfo? property, string what)
        where TAttribute : Attribute =>
        property is null
            ? throw new InvalidOperationException($"A request is an object; it cannot itself need {what}.")
            : property.Find<TAttribute>()
                ?? throw new InvalidOperationException($"{property.DeclaringType.Name}.{property.Name} must state {what}.");
}

/// <summary>Tells which document a change is made to.</summary>
internal interface IDocumentChangeConverter
{
    /// <summary>The type of the document.</summary>
    Type DocumentType { get; }
}
