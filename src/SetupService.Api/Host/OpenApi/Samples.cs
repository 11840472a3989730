using System.Text.Json.Nodes;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Turns example values into JSON.</summary>
internal static class Samples
{
    public static JsonNode ToJson(object value) => value switch
    {
        double number => JsonValue.Create(number),
        int number => JsonValue.Create(number),
        bool flag => JsonValue.Create(flag),
        string text => JsonValue.Create(text),
        _ => throw new InvalidOperationException($"{value.GetType().Name} is no example value."),
    };
}
