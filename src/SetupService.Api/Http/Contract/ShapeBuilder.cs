using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace SetupService.Api.Http.Contract;

/// <summary>
/// Reads the shapes of request documents from their JSON types and contract attributes, once, at start-up.
/// A document that leaves something open (a number without limits, a text without a length) is a mistake of ours
/// and stops the service there and then.
/// </summary>
internal sealed class ShapeBuilder(JsonSerializerOptions options)
{
    private readonly Dictionary<Type, ContractShape> _known = [];
    private readonly Dictionary<Type, Type> _changes = [];
    private readonly PartialShapes _partial = new();

    /// <summary>Every object type of the requests built so far.</summary>
    public IReadOnlyCollection<Type> Types => _known.Keys;

    /// <summary>Every type of change in the requests built so far, with the document it changes.</summary>
    public IReadOnlyDictionary<Type, Type> Changes => _changes;

    public ContractShape Build(Type type) => Build(type, property: null, unit: null);

    /// <summary>The shape of a change to a document.</summary>
    public ObjectShape ChangeTo(Type document) => (ObjectShape)_partial.Of(Build(document));

    private ContractShape Build(Type type, JsonPropertyInfo? property, string? unit)
    {
        var bare = Nullable.GetUnderlyingType(type) ?? type;
        if (bare == typeof(double) || bare == typeof(int))
        {
            var limits = Needed<LimitsAttribute>(property, "limits");
            return new NumberShape(limits.Minimum, limits.Maximum, bare == typeof(int), unit);
        }

        if (bare == typeof(string))
            return new TextShape(Needed<TextAttribute>(property, "a greatest length").MaximumLength);
        if (bare == typeof(bool))
            return new FlagShape();
        if (bare == typeof(LineId))
            return new NameShape(LineId.MaximumLength);
        if (bare.IsEnum)
            return new WordShape(Array.ConvertAll(Enum.GetNames(bare), JsonNamingPolicy.CamelCase.ConvertName));

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
            JsonTypeInfoKind.Object => ObjectOf(info, teller: null, kind: null, unit),
            _ => throw new InvalidOperationException($"{bare.Name} cannot stand in a request."),
        };
    }

    private ListShape ListOf(JsonTypeInfo info, JsonPropertyInfo? property, string? unit)
    {
        var count = Needed<CountAttribute>(property, "a count");
        return new ListShape(Build(info.ElementType!, property, unit), count.Minimum, count.Maximum);
    }

    private ContractShape VariantOf(Type type, JsonPolymorphismOptions variants)
    {
        if (_known.TryGetValue(type, out var known))
            return known;

        var teller = variants.TypeDiscriminatorPropertyName;
        VariantShape shape = new(type, teller);
        _known.Add(type, shape);
        string[] kinds = [.. variants.DerivedTypes.Select(variant => (string)variant.TypeDiscriminator!)];
        ObjectShape[] shapes =
        [
            .. variants.DerivedTypes.Select(variant =>
                (ObjectShape)ObjectOf(options.GetTypeInfo(variant.DerivedType), teller, (string)variant.TypeDiscriminator!, unit: null)),
        ];
        shape.Complete(kinds, shapes);
        return shape;
    }

    private ContractShape ObjectOf(JsonTypeInfo info, string? teller, string? kind, string? unit)
    {
        if (_known.TryGetValue(info.Type, out var known))
            return known;

        ObjectShape shape = new(info.Type);
        _known.Add(info.Type, shape);
        List<MemberShape> members = [];
        if (teller is not null)
            members.Add(new MemberShape(teller, isRequired: true, new WordShape([kind!])));
        foreach (var property in info.Properties)
            members.Add(MemberOf(property, unit));
        shape.Complete(members);
        return shape;
    }

    private MemberShape MemberOf(JsonPropertyInfo property, string? groupUnit)
    {
        var mayBeNull = property.PropertyType.IsValueType
            ? Nullable.GetUnderlyingType(property.PropertyType) is not null
            : property.IsSetNullable;
        // By its attribute: the lenient reader requires nothing, yet shapes a change as the strict one does.
        var isRequired = property.Find<JsonRequiredAttribute>() is not null;
        if (property.Set is null || isRequired == mayBeNull)
        {
            throw new InvalidOperationException(
                $"{property.DeclaringType.Name}.{property.Name} must be settable, and either required or nullable.");
        }

        var unit = UnitOfName.Read(property.Name) ?? groupUnit;
        return new MemberShape(property.Name, isRequired, Build(property.PropertyType, property, unit));
    }

    private static TAttribute Needed<TAttribute>(JsonPropertyInfo? property, string what)
        where TAttribute : Attribute =>
        property is null
            ? throw new InvalidOperationException($"A request is an object; it cannot itself need {what}.")
            : property.Find<TAttribute>()
                ?? throw new InvalidOperationException($"{property.DeclaringType.Name}.{property.Name} must state {what}.");
}
