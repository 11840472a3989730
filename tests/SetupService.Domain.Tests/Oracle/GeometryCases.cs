using System.Text.Json;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>The cases of the second working of the suspension geometry. See README.md beside this file.</summary>
internal static class GeometryCases
{
    private static readonly JsonElement Root = Read();

    /// <summary>What the numbers of a corner's row are, in their order.</summary>
    public static IReadOnlyList<string> Columns { get; } = [.. Root.GetProperty("columns").EnumerateArray().Select(name => name.GetString()!)];

    public static IEnumerable<JsonElement> All(string part) => Root.GetProperty(part).EnumerateArray();

    public static JsonElement Named(string part, string name) => All(part).Single(one => Name(one) == name);

    public static TheoryData<string> Names(string part) => [.. All(part).Select(Name)];

    /// <summary>The request of a corner that an adjustment or a target names.</summary>
    public static JsonElement RequestOf(JsonElement one) => Named("corners", one.GetProperty("corner").GetString()!).GetProperty("request");

    public static bool Flag(JsonElement parent, string name) => OracleCar.Part(parent, name)?.GetBoolean() ?? false;

    /// <summary>A member that is a number, or null where it is null or not there.</summary>
    public static double? Number(JsonElement parent, string name) => OracleCar.Part(parent, name) is { } part ? Number(part) : null;

    public static double? Number(JsonElement element) => element.ValueKind == JsonValueKind.Null ? null : element.GetDouble();

    private static string Name(JsonElement one) => one.GetProperty("name").GetString()!;

    private static JsonElement Read()
    {
        using var file = File.OpenRead(Path.Combine(AppContext.BaseDirectory, "Oracle", "geometry_cases.json"));
        using var document = JsonDocument.Parse(file);
        return document.RootElement.Clone();
    }
}
