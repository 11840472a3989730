using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>How the contract spells the members of enums.</summary>
public static class EnumNames
{
    /// <summary>The word of a member: in camelCase; a grade or class in capitals (AA) as it is printed.</summary>
    /// <param name="name">The member's name.</param>
    public static string WordFor(string name) => name.All(char.IsAsciiLetterUpper) ? name : JsonNamingPolicy.CamelCase.ConvertName(name);
}

/// <summary>The words of a closed set: the members of an enum, spelled in camelCase as the contract writes them.</summary>
/// <typeparam name="T">The enum.</typeparam>
public static class EnumNames<T>
    where T : struct, Enum
{
    private static readonly T[] Values = Enum.GetValues<T>();
    private static readonly JsonEncodedText[] Encoded = Array.ConvertAll(All(), word => JsonEncodedText.Encode(word));

    /// <summary>Every word, in the order of declaration.</summary>
    public static IReadOnlyList<string> List { get; } = All();

    /// <summary>The word of <paramref name="value"/>, or null where it is no declared member.</summary>
    public static string? GetName(T value)
    {
        var index = Array.IndexOf(Values, value);
        return index < 0 ? null : List[index];
    }

    /// <summary>The member whose word is exactly <paramref name="word"/>.</summary>
    public static bool TryGet(string word, out T value)
    {
        for (var index = 0; index < List.Count; index++)
        {
            if (string.Equals(List[index], word, StringComparison.Ordinal))
            {
                value = Values[index];
                return true;
            }
        }

        value = default;
        return false;
    }

    /// <summary>The member whose word is the text the reader stands on; nothing is allocated.</summary>
    internal static bool TryGet(ref Utf8JsonReader reader, out T value)
    {
        for (var index = 0; index < Encoded.Length; index++)
        {
            if (reader.ValueTextEquals(Encoded[index].EncodedUtf8Bytes))
            {
                value = Values[index];
                return true;
            }
        }

        value = default;
        return false;
    }

    /// <summary>The word of <paramref name="value"/>, ready to be written.</summary>
    /// <exception cref="JsonException"><paramref name="value"/> is no declared member.</exception>
    internal static JsonEncodedText EncodedOf(T value)
    {
        var index = Array.IndexOf(Values, value);
        return index >= 0 ? Encoded[index] : throw new JsonException($"The value {value} has no word.");
    }

    private static string[] All() => Array.ConvertAll(Enum.GetNames<T>(), EnumNames.WordFor);
}

/// <summary>
/// Reads and writes an enum as one of its camelCase words and as nothing else: no number, no other case, no list.
/// </summary>
/// <typeparam name="T">The enum.</typeparam>
public sealed class EnumNameConverter<T> : JsonConverter<T>
    where T : struct, Enum
{
    /// <inheritdoc />
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.String && EnumNames<T>.TryGet(ref reader, out var value))
            return value;

        throw new JsonException();
    }

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WriteStringValue(EnumNames<T>.EncodedOf(value));
    }
}
