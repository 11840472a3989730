using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json.Serialization.Metadata;

namespace SetupService.Api.Http.Contract;

/// <summary>How many elements an array of a request may have, both ends included.</summary>
/// <param name="minimum">The fewest elements accepted.</param>
/// <param name="maximum">The most elements accepted.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class CountAttribute(int minimum, int maximum) : Attribute
{
    /// <summary>The fewest elements accepted.</summary>
    public int Minimum { get; } = minimum;

    /// <summary>The most elements accepted.</summary>
    public int Maximum { get; } = maximum;
}

/// <summary>An example value, shown in the API description. A word is given as its text.</summary>
/// <param name="value">A number, a text or a truth value.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class SampleAttribute(object value) : Attribute
{
    /// <summary>The example value.</summary>
    public object Value { get; } = value;
}

/// <summary>Finds the contract attributes of a JSON property.</summary>
internal static class PropertyAttributes
{
    // The native build takes kilobytes to look at the attributes of a property: it is asked once.
    private static readonly ConditionalWeakTable<ICustomAttributeProvider, object[]> Known = [];

    public static TAttribute? Find<TAttribute>(this JsonPropertyInfo property)
        where TAttribute : Attribute
    {
        if (property.AttributeProvider is not { } provider)
            return null;
        foreach (var attribute in Known.GetValue(provider, static one => one.GetCustomAttributes(inherit: false)))
        {
            if (attribute is TAttribute found)
                return found;
        }

        return null;
    }
}
