using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace SetupService.Api.Host.OpenApi;

/// <summary>
/// Describes an object of several kinds so that both a generator and a validator can read it: the base has the member that tells
/// the kind and a discriminator, each kind is the base and its own members. The base is closed again by asking for the members of
/// the kind told, and for no others; generators pass over that part.
/// </summary>
internal sealed class KindSchemas : IOpenApiDocumentTransformer
{
    private const string Ending = "Document";

    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        var schemas = document.Components?.Schemas ?? new Dictionary<string, IOpenApiSchema>();
        foreach ((var name, var schema) in schemas.ToArray())
        {
            if (schema is OpenApiSchema { AnyOf.Count: > 0, Discriminator.Mapping: not null } open)
                Close(document, name, open);
        }

        return Task.CompletedTask;
    }

    /// <summary>The name of the set of words that tell the kinds of a schema.</summary>
    public static string WordsName(string schema) =>
        (schema.EndsWith(Ending, StringComparison.Ordinal) ? schema[..^Ending.Length] : schema) + "Kind";

    private static void Close(OpenApiDocument document, string name, OpenApiSchema open)
    {
        var schemas = document.Components!.Schemas!;
        var teller = open.Discriminator!.PropertyName!;
        var told = open.Discriminator.Mapping!.Select(pair => (Word: pair.Key, Schema: pair.Value.Reference.Id!)).ToArray();
        Dictionary<string, OpenApiSchemaReference> mapping = [];
        Stack<(string Word, OpenApiSchema Members)> kinds = new();
        foreach ((var word, var glued) in told)
        {
            // The framework names a kind by its base and its own type.
            var own = glued.StartsWith(name, StringComparison.Ordinal) ? glued[name.Length..] : glued;
            var whole = (OpenApiSchema)schemas[glued];
            schemas.Remove(glued);
            var members = Own(whole, teller);
            schemas.Add(own, new OpenApiSchema { Description = whole.Description, AllOf = [new OpenApiSchemaReference(name, document), members] });
            mapping.Add(word, new OpenApiSchemaReference(own, document));
            kinds.Push((word, members));
        }

        schemas.TryAdd(WordsName(name), Words(told.Select(kind => kind.Word)));
        schemas[name] = new OpenApiSchema
        {
            Type = JsonSchemaType.Object,
            Description = open.Description,
            Required = new HashSet<string> { teller },
            Properties = new Dictionary<string, IOpenApiSchema>
            {
                [teller] = new OpenApiSchemaReference(WordsName(name), document) { Description = "Which kind it is." },
            },
            Discriminator = new OpenApiDiscriminator { PropertyName = teller, Mapping = mapping },
            UnevaluatedProperties = false,
        };
        Demand((OpenApiSchema)schemas[name], teller, kinds);
    }

    private static OpenApiSchema Words(IEnumerable<string> words) => new()
    {
        Type = JsonSchemaType.String,
        Enum = [.. words.Select(word => (JsonNode)word)],
        Description = "The kinds.",
    };

    /// <summary>What a kind has beside the member that tells it.</summary>
    private static OpenApiSchema Own(OpenApiSchema kind, string teller) => new()
    {
        Type = JsonSchemaType.Object,
        Required = new HashSet<string>(kind.Required!.Where(member => member != teller)),
        Properties = kind.Properties!.Where(member => member.Key != teller).ToDictionary(member => member.Key, member => member.Value),
    };

    /// <summary>If the first kind is told, its members; else if the second, and so on; the last needs no question.</summary>
    private static void Demand(OpenApiSchema closed, string teller, Stack<(string Word, OpenApiSchema Members)> kinds)
    {
        IOpenApiSchema otherwise = Bare(kinds.Pop().Members);
        while (kinds.TryPop(out var kind))
        {
            var question = kinds.Count == 0 ? closed : new OpenApiSchema();
            question.If = new OpenApiSchema
            {
                Properties = new Dictionary<string, IOpenApiSchema> { [teller] = new OpenApiSchema { Const = kind.Word } },
            };
            question.Then = Bare(kind.Members);
            question.Else = otherwise;
            otherwise = question;
        }
    }

    /// <summary>The members as they are checked, without the words that explain them.</summary>
    private static OpenApiSchema Bare(OpenApiSchema members) => new()
    {
        Required = members.Required,
        Properties = members.Properties!.ToDictionary(member => member.Key, member => Bare(member.Value)),
    };

    private static IOpenApiSchema Bare(IOpenApiSchema member)
    {
        var copy = member.CreateShallowCopy();
        copy.Description = null;
        return copy;
    }
}
