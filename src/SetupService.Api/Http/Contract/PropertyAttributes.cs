using System.Text.Json.Serialization.Metadata;

namespace SetupService.Api.Http.Contract;

/// <summary>Finds the contract attributes of a JSON property.</summary>
internal static class PropertyAttributes
{
    public static TAttribute? Find<TAttribute>(this JsonPropertyInfo property)
        where TAttribute : Attribute
    {
        var found = property.AttributeProvider?.GetCustomAttributes(typeof(TAttribute), inherit: true) ?? [];
        return found.Length > 0 ? (TAttribute)found[0] : null;
    }
}
