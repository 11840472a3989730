using Microsoft.OpenApi;

namespace SetupService.Api.Host.OpenApi;

/// <summary>
/// Makes of a described document the schema of a change to it, and of each part that requires something one of its own: the same
/// members, limits and sentences, nothing required, null everywhere. An object of several kinds becomes one object with the members
/// of all, as its reader takes it.
/// </summary>
internal sealed class PartialSchemas(OpenApiDocument document)
{
    private const string Ending = "Document";

    private IDictionary<string, IOpenApiSchema> Schemas => document.Components!.Schemas!;

    /// <summary>Describes a change to a document.</summary>
    /// <param name="change">The schema of the change, still empty.</param>
    /// <param name="whole">The name of the document's schema.</param>
    public void Fill(OpenApiSchema change, string whole) => Fill(change, Bare(whole), [whole]);

    /// <summary>Gives a schema the members of the named ones, all of them optional.</summary>
    private void Fill(OpenApiSchema partial, string owner, IReadOnlyList<string> wholes)
    {
        partial.Type = JsonSchemaType.Object;
        partial.AdditionalPropertiesAllowed = false;
        partial.Properties = new Dictionary<string, IOpenApiSchema>();
        foreach (var same in wholes.SelectMany(whole => Schemas[whole].Properties!).GroupBy(member => member.Key, StringComparer.Ordinal))
            partial.Properties.Add(same.Key, Member(owner, same.Key, [.. same.Select(member => member.Value)]));
    }

    private OpenApiSchema Member(string owner, string name, IOpenApiSchema[] kinds)
    {
        if (Array.TrueForAll(kinds, kind => kind.Enum is { Count: 1 }))
            return Teller(owner);

        string[] targets = [.. kinds.Select(TargetOf).OfType<string>().Distinct(StringComparer.Ordinal)];
        if (targets.Length == 0)
            return Optional((OpenApiSchema)kinds[0].CreateShallowCopy());
        var target = IsWhole(targets) ? targets[0] : PartOf(owner + char.ToUpperInvariant(name[0]) + name[1..], targets);
        return OrNull(new OpenApiSchemaReference(target, document) { Description = DescriptionOf(kinds[0]) });
    }

    /// <summary>The member that tells the kind.</summary>
    private OpenApiSchema Teller(string owner) => OrNull(new OpenApiSchemaReference(KindSchemas.WordsName(owner), document)
    {
        Description = "The kind; left out where it stays as it is. Another kind replaces the whole object.",
    });

    private static OpenApiSchema OrNull(IOpenApiSchema value) => new() { OneOf = [new OpenApiSchema { Type = JsonSchemaType.Null }, value] };

    private static OpenApiSchema Optional(OpenApiSchema value)
    {
        value.Type |= JsonSchemaType.Null;
        return value;
    }

    /// <summary>The name of the schema of a change to a part; made where it is not there yet.</summary>
    private string PartOf(string place, string[] wholes)
    {
        // Parts that differ by kind have no one name of their own; their place in the document names them.
        var owner = wholes.Length == 1 ? Bare(wholes[0]) : place;
        var name = owner + "Change";
        if (Schemas.ContainsKey(name))
            return name;

        var described = string.Join(' ', wholes.Select(whole => Schemas[whole].Description));
        OpenApiSchema part = new() { Description = $"{described} In a change no member is required." };
        Schemas.Add(name, part);
        Fill(part, owner, KindsOf(wholes[0]) is { Count: > 0 } kinds ? kinds : wholes);
        return name;
    }

    /// <summary>Whether a change to the part looks like the part: nothing in it is required. Elements of arrays stay whole.</summary>
    private bool IsWhole(string[] targets) =>
        targets.Length == 1 && Schemas[targets[0]] is { Required: null or { Count: 0 } } schema
        && (schema.Properties ?? new Dictionary<string, IOpenApiSchema>()).Values.Select(TargetOf).OfType<string>().All(inner => IsWhole([inner]));

    private List<string> KindsOf(string name) =>
        [.. (Schemas[name].AnyOf ?? []).OfType<OpenApiSchemaReference>().Select(kind => kind.Reference.Id!)];

    private static string? TargetOf(IOpenApiSchema value) => ReferenceOf(value)?.Reference.Id;

    private static string? DescriptionOf(IOpenApiSchema value) => ReferenceOf(value)?.Reference.Description;

    private static OpenApiSchemaReference? ReferenceOf(IOpenApiSchema value) =>
        value as OpenApiSchemaReference ?? value.OneOf?.OfType<OpenApiSchemaReference>().SingleOrDefault();

    private static string Bare(string name) => name.EndsWith(Ending, StringComparison.Ordinal) ? name[..^Ending.Length] : name;
}
