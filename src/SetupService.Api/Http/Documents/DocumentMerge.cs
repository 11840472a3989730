using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace SetupService.Api.Http.Documents;

/// <summary>
/// Merges changes into documents as they are bound, as <see cref="JsonMerge"/> does into their texts: an object that a change names members of is copied with those set, everything
/// else is the same object in both documents. Safe for all threads.
/// </summary>
/// <param name="plain">The document's types without limits, which what is bound has kept.</param>
/// <param name="strict">Reads what the change names.</param>
internal sealed class DocumentMerge(JsonSerializerOptions plain, JsonSerializerOptions strict)
{
    private readonly ConcurrentDictionary<Type, BoundType?> _types = new();

    /// <summary>
    /// The document as changed; null where only its text tells: a change within an object of several kinds, or one that may leave an object without what it needs.
    /// </summary>
    /// <param name="document">The document, which keeps its contract. It is left as it is.</param>
    /// <param name="change">The members named, which keep types and limits.</param>
    public T? Apply<T>(T document, JsonElement change)
        where T : class
    {
        try
        {
            return (T?)Merge(typeof(T), document, change);
        }
        catch (Exception refusal) when (refusal is JsonException or NotSupportedException or InvalidOperationException)
        {
            // The reader of the merged text refuses it too, and says why.
            return null;
        }
    }

    private object? Merge(Type type, object document, JsonElement change)
    {
        if (_types.GetOrAdd(type, static (of, merge) => merge.Bind(of), this) is not { } bound) return null;
        var merged = bound.Create();
        foreach (var member in bound.Members)
        {
            if (member.Get(document) is { } value) member.Set(merged, value);
        }

        foreach (var named in change.EnumerateObject())
        {
            if (bound.Find(named) is not { } member) return null;
            var isWithin = member.IsObject && named.Value.ValueKind == JsonValueKind.Object && member.Get(document) is not null;
            var value = isWithin ? Merge(member.Info.Type, member.Get(document)!, named.Value) : JsonSerializer.Deserialize(named.Value, member.Info);
            if (value is null) return null;
            member.Set(merged, value);
        }

        return merged;
    }

    private BoundType? Bind(Type type)
    {
        var info = plain.GetTypeInfo(type);
        if (info.CreateObject is not { } create || info.PolymorphismOptions is not null) return null;
        var members = new BoundMember[info.Properties.Count];
        for (var i = 0; i < members.Length; i++)
        {
            var property = info.Properties[i];
            if (property is not { Get: { } get, Set: { } set }) return null;
            var of = strict.GetTypeInfo(property.PropertyType);
            members[i] = new(System.Text.Encoding.UTF8.GetBytes(property.Name), of, of.Kind == JsonTypeInfoKind.Object, get, set);
        }

        return new(create, members);
    }

    private sealed record BoundType(Func<object> Create, BoundMember[] Members)
    {
        public BoundMember? Find(in JsonProperty named)
        {
            foreach (var member in Members)
            {
                if (named.NameEquals(member.NameUtf8)) return member;
            }

            return null;
        }
    }

    private sealed record BoundMember(byte[] NameUtf8, JsonTypeInfo Info, bool IsObject, Func<object, object?> Get, Action<object, object?> Set);
}
