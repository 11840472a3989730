using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using FluentValidation;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Documents;

/// <summary>
/// How this service reads requests and writes answers: the JSON types, the limits on them, and the rules that go
/// beyond one member's type and range. Immutable, safe for all threads, and usable without HTTP.
/// </summary>
public sealed class JsonContract
{
    private readonly JsonSerializerOptions _written;
    private readonly JsonSerializerOptions _strict;
    private readonly JsonSerializerOptions _lenient;
    private readonly JsonSerializerOptions _plain;
    private readonly Dictionary<Type, DocumentRules> _rules;
    private readonly Dictionary<Type, DocumentMapping> _mappings;
    private readonly ConcurrentDictionary<Type, ContractReader> _readers = new();
    private readonly SchemaBuilder _schemas;
    private readonly DocumentMerge _merge;
    private readonly Lock _building = new();

    /// <summary>Makes the contract of a set of JSON types.</summary>
    /// <param name="types">The types, with the options they are written with.</param>
    /// <param name="rules">The rules of request types, at most one a type.</param>
    /// <param name="mappings">How documents become values of the domain, at most one a type.</param>
    public JsonContract(JsonSerializerContext types, IReadOnlyList<DocumentRules> rules, params IReadOnlyList<DocumentMapping> mappings)
    {
        ArgumentNullException.ThrowIfNull(types);
        ArgumentNullException.ThrowIfNull(rules);
        _written = new JsonSerializerOptions(types.Options);
        _written.Converters.Add(new AnswerNumberConverter());
        _strict = new JsonSerializerOptions(types.Options)
        {
            TypeInfoResolver = ((IJsonTypeInfoResolver)types).WithAddedModifier(ContractModifiers.Enforce).WithAddedModifier(KeepFaults),
        };
        _lenient = new JsonSerializerOptions(types.Options)
        {
            TypeInfoResolver = ((IJsonTypeInfoResolver)types).WithAddedModifier(ContractModifiers.Relax),
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Skip,
            RespectNullableAnnotations = false,
        };
        _plain = new JsonSerializerOptions(types.Options) { DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull };
        _rules = rules.ToDictionary(static one => one.Document);
        _mappings = mappings.ToDictionary(static one => one.Document);
        _schemas = new SchemaBuilder(types.Options);
        _merge = new DocumentMerge(_plain, _strict);
    }

    /// <summary>The reader of a request type. A type that leaves part of the contract open, a number without limits say, throws when it first reads.</summary>
    public ContractReader<T> ReaderOf<T>()
        where T : class => (ContractReader<T>)_readers.GetOrAdd(typeof(T), static (_, contract) => new ContractReader<T>(contract), this);

    /// <summary>Makes now what the readers asked for so far read by.</summary>
    /// <exception cref="InvalidOperationException">A type leaves part of the contract open.</exception>
    internal void PrepareReaders()
    {
        foreach (var reader in _readers.Values)
            reader.Prepare();
    }

    /// <summary>The members a document of a request may have, with what is allowed in each.</summary>
    internal ObjectSchema SchemaOf<T>()
    {
        lock (_building)
        {
            return (ObjectSchema)_schemas.Build(typeof(T));
        }
    }

    /// <summary>The JSON type an answer is written with.</summary>
    public JsonTypeInfo<T> TypeOf<T>() => (JsonTypeInfo<T>)_written.GetTypeInfo(typeof(T));

    /// <summary>A document that stood at a place of the body, for making changes to it.</summary>
    public ChangedDocument<T> Changing<T>(T document, string pointer)
        where T : class =>
        new(ReaderOf<T>(), _merge, ChangeSchemaOf<T>(), document, written => JsonSerializer.SerializeToUtf8Bytes(written, (JsonTypeInfo<T>)_plain.GetTypeInfo(typeof(T))), pointer);

    /// <summary>The members a change to a document may have.</summary>
    internal ObjectSchema ChangeSchemaOf<T>()
    {
        lock (_building)
        {
            return _schemas.ChangeTo(typeof(T));
        }
    }

    /// <summary>Every type of change that stands in requests, with the document it changes.</summary>
    internal IReadOnlyDictionary<Type, Type> ChangeTypes()
    {
        PrepareReaders();
        lock (_building)
        {
            return new Dictionary<Type, Type>(_schemas.Changes);
        }
    }

    /// <summary>Whether objects of this type stand in requests, in which no other members are accepted.</summary>
    public bool IsRequestType(Type type)
    {
        PrepareReaders();
        lock (_building)
        {
            return _schemas.Types.Contains(type);
        }
    }

    internal JsonTypeInfo<T> StrictTypeOf<T>() => (JsonTypeInfo<T>)_strict.GetTypeInfo(typeof(T));

    internal JsonTypeInfo<T> LenientTypeOf<T>() => (JsonTypeInfo<T>)_lenient.GetTypeInfo(typeof(T));

    internal IValidator<T>? RulesOf<T>()
        where T : class => (_rules.GetValueOrDefault(typeof(T)) as DocumentRules<T>)?.Make();

    internal DocumentMapping<T>? MappingOf<T>()
        where T : class => _mappings.GetValueOrDefault(typeof(T)) as DocumentMapping<T>;

    private void KeepFaults(JsonTypeInfo info)
    {
        if (info.Kind != JsonTypeInfoKind.Object) return;
        foreach (var property in info.Properties)
        {
            if (property.Find<KeepsFaultsAttribute>() is { } kept) property.CustomConverter = kept.Create(SchemaOf, _lenient, property.Find<CountAttribute>()?.Maximum ?? int.MaxValue);
        }
    }

    private ContractSchema SchemaOf(Type type)
    {
        lock (_building)
        {
            return _schemas.Build(type);
        }
    }
}
