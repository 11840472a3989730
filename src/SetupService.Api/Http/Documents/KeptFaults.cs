using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Documents;

/// <summary>An element of a request that is answered by itself: its faults stay with it, and the elements beside it are answered.</summary>
public interface IKeepsFaults
{
    /// <summary>What is wrong with it, each fault's pointer within it; null where nothing is.</summary>
    IReadOnlyList<Fault>? Faults { get; set; }
}

/// <summary>Marks an array whose elements keep their faults.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal abstract class KeepsFaultsAttribute : Attribute
{
    /// <summary>Reads the array.</summary>
    /// <param name="schemas">The schema of a type of request.</param>
    /// <param name="lenient">Reads what is sound of an element with faults.</param>
    /// <param name="most">Most elements; no more are read.</param>
    public abstract JsonConverter Create(Func<Type, ContractSchema> schemas, JsonSerializerOptions lenient, int most);
}

/// <summary>Marks an array whose elements keep their faults.</summary>
/// <typeparam name="T">An element.</typeparam>
internal sealed class KeepsFaultsAttribute<T> : KeepsFaultsAttribute
    where T : class, IKeepsFaults, new()
{
    public override JsonConverter Create(Func<Type, ContractSchema> schemas, JsonSerializerOptions lenient, int most) => new FaultKeepingConverter<T>(schemas, lenient, most);
}

/// <summary>Reads an array element by element; one with faults is what is sound of it, with the faults beside.</summary>
/// <typeparam name="T">An element.</typeparam>
/// <param name="schemas">The schema of a type of request.</param>
/// <param name="lenient">Reads what is sound of an element with faults.</param>
/// <param name="most">Most elements; no more are read.</param>
internal sealed class FaultKeepingConverter<T>(Func<Type, ContractSchema> schemas, JsonSerializerOptions lenient, int most) : JsonConverter<T[]>
    where T : class, IKeepsFaults, new()
{
    private ContractSchema? _schema;

    public override T[] Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartArray) throw new JsonException();
        _schema ??= schemas(typeof(T));
        var list = new List<T>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (list.Count == most) throw new JsonException();
            var sent = JsonElement.ParseValue(ref reader);
            FaultList faults = new();
            var sound = FaultFinder.Walk(JsonMarshal.GetRawUtf8Value(sent), _schema, faults);
            var read = sound is { } plain && JsonSerializer.Deserialize(plain.Span, (faults.Count > 0 ? lenient : options).GetTypeInfo(typeof(T))) is T element ? element : new T();
            if (faults.Count > 0) read.Faults = faults.ToList();
            list.Add(read);
        }

        return [.. list];
    }

    public override void Write(Utf8JsonWriter writer, T[] value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}
