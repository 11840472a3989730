using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using SetupService.Api.Host;
using SetupService.Api.Http.Contract;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Examples;

/// <summary>Null means "left out" in every request, whichever member it stands at, but in <c>adjustable</c>, where it says "not at all".</summary>
public sealed class NullMembersTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string NullSaysNone = "adjustable";

    private static readonly SchemaBuilder Schemas = new(ContractJsonContext.Default.Options);

    /// <summary>The examples whose requests name every member there is.</summary>
    private static readonly string[] Whole = ["steering-axis.answer.json", "caster-from-readings.answer.json", "steer-sweep.answer.json"];

    public static TheoryData<string> Answers() =>
        [.. ExampleCall.All.Where(call => call.Request?.EndsWith(".request.json", StringComparison.Ordinal) == true && call.Answer.EndsWith(".json", StringComparison.Ordinal)).Select(call => call.Answer)];

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task Null_at_every_optional_member_left_out_changes_no_answer(string answer)
    {
        var (call, example) = await Example(answer);
        var sent = example.DeepClone();
        var added = AddNulls(sent, SchemaOf(call));

        Assert.True(added > 0 || Whole.Contains(answer), $"{answer}: no member of the example's request is left out.");
        Assert.Equal(await Sent(call, example), await Sent(call, sent));
    }

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task Null_in_place_of_an_optional_member_answers_as_without_it(string answer)
    {
        var (call, example) = await Example(answer);
        foreach (var (parent, name) in Optional(example, SchemaOf(call)).ToList())
        {
            var kept = parent[name];
            parent.Remove(name);
            var without = await Sent(call, example);
            parent[name] = null;
            Assert.Equal((name, without), (name, await Sent(call, example)));
            parent[name] = kept;
        }
    }

    private static async Task<(ExampleCall Call, JsonNode Example)> Example(string answer)
    {
        var call = ExampleCall.All.Single(call => call.Answer == answer);
        return (call, JsonNode.Parse(await File.ReadAllTextAsync(ExampleCall.FileOf(call.Request!)))!);
    }

    private ContractSchema SchemaOf(ExampleCall call)
    {
        var endpoint = fixture.Service.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Single(endpoint => endpoint.RoutePattern.RawText == call.Path);
        return Schemas.Build(endpoint.Metadata.GetRequiredMetadata<AcceptsMetadata>().RequestType!);
    }

    private static int AddNulls(JsonNode? node, ContractSchema schema)
    {
        if (schema is ArraySchema list && node is JsonArray elements)
            return elements.Sum(element => AddNulls(element, list.Element));
        if (node is not JsonObject document || ObjectOf(document, schema) is not { } known)
            return 0;

        var added = 0;
        foreach (var member in known.Members.Where(member => member.Name != NullSaysNone))
        {
            if (document.TryGetPropertyValue(member.Name, out var value))
            {
                added += AddNulls(value, member.Schema);
            }
            else if (!member.IsRequired)
            {
                document[member.Name] = null;
                added++;
            }
        }

        return added;
    }

    private static IEnumerable<(JsonObject Parent, string Name)> Optional(JsonNode? node, ContractSchema schema)
    {
        if (schema is ArraySchema list && node is JsonArray elements)
            return elements.SelectMany(element => Optional(element, list.Element));
        return node is JsonObject document && ObjectOf(document, schema) is { } known
            ? known.Members.Where(member => member.Name != NullSaysNone && document.ContainsKey(member.Name)).SelectMany(member =>
                Optional(document[member.Name], member.Schema).Concat(member.IsRequired ? [] : [(document, member.Name)]))
            : [];
    }

    private static ObjectSchema? ObjectOf(JsonObject document, ContractSchema schema) => schema switch
    {
        ObjectSchema known => known,
        VariantSchema variant when document[variant.Discriminator] is { } kind => variant.Schemas[variant.Kinds.ToList().IndexOf((string)kind!)],
        _ => null,
    };

    /// <summary>Status and body, without what is the request's own.</summary>
    private async Task<string> Sent(ExampleCall call, JsonNode body)
    {
        using StringContent content = new(body.ToJsonString(), Encoding.UTF8, "application/json");
        using var response = await fixture.Client.PostAsync(new Uri(call.Path, UriKind.Relative), content);
        var answer = JsonNode.Parse(await response.Content.ReadAsStringAsync())!.AsObject();
        answer.Remove("requestId");
        Assert.True((int)response.StatusCode < 500, $"{call.Path}: {answer}");
        return $"{(int)response.StatusCode} {answer.ToJsonString()}";
    }
}
