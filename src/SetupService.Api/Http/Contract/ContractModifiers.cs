using System.ComponentModel.DataAnnotations;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace SetupService.Api.Http.Contract;

/// <summary>
/// Puts the contract attributes to work inside the serialiser, so that one pass over the bytes binds a body and
/// checks it: numbers by a converter of their own, texts and arrays as they are set.
/// </summary>
internal static class ContractModifiers
{
    /// <summary>For the strict reading of requests.</summary>
    public static void Enforce(JsonTypeInfo info)
    {
        if (info.Kind != JsonTypeInfoKind.Object)
            return;

        foreach (var property in info.Properties)
        {
            LimitNumbers(property);
            LimitTexts(property);
            LimitCounts(property);
        }
    }

    /// <summary>For binding what is left of a request whose faults have been taken out: nothing is required.</summary>
    public static void Relax(JsonTypeInfo info)
    {
        if (info.Kind != JsonTypeInfoKind.Object)
            return;

        foreach (var property in info.Properties)
            property.IsRequired = false;
    }

    private static void LimitNumbers(JsonPropertyInfo property)
    {
        if (property.Find<RangeAttribute>() is not { } attribute)
            return;

        var range = NumberRange.From(attribute);

        property.CustomConverter = property.PropertyType switch
        {
            Type type when type == typeof(double) => new RangedNumberConverter(range),
            Type type when type == typeof(double?) => new RangedOptionalNumberConverter(range),
            Type type when type == typeof(int) => new RangedWholeNumberConverter(range),
            Type type when type == typeof(int?) => new RangedOptionalWholeNumberConverter(range),
            Type type when type == typeof(double[]) => new RangedNumbersConverter(range),
            _ => throw new InvalidOperationException($"{property.Name}: ranges hold for double, int and double[]."),
        };
    }

    private static void LimitTexts(JsonPropertyInfo property)
    {
        if (property.Find<StringLengthAttribute>() is not { } text)
            return;

        var maximum = text.MaximumLength;
        Watch(property, value => value switch
        {
            string one => one.Length <= maximum,
            string[] many => Array.TrueForAll(many, one => one is not null && one.Length <= maximum),
            _ => true,
        });
    }

    private static void LimitCounts(JsonPropertyInfo property)
    {
        if (property.Find<CountAttribute>() is not { } count)
            return;

        Watch(property, value => value is not Array array || Holds(array, count));
    }

    private static bool Holds(Array array, CountAttribute count) =>
        array.Length >= count.Minimum && array.Length <= count.Maximum
        && (array is not object?[] objects || Array.TrueForAll(objects, one => one is not null));

    private static void Watch(JsonPropertyInfo property, Predicate<object?> holds)
    {
        var set = property.Set
            ?? throw new InvalidOperationException($"{property.Name} must be settable.");
        property.Set = (target, value) =>
        {
            if (!holds(value))
                throw new JsonException();
            set(target, value);
        };
    }
}
