using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.OpenApi;
using SetupService.Api.Host;
using SetupService.Api.Host.OpenApi;
using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>A change as the API description tells it: of a service whose one call takes a car and changes to it.</summary>
public sealed class DescribedChangeTests : IAsyncLifetime
{
    private static readonly string[] Parts =
    [
        "VehicleChange", "AxleChange", "TyreChange", "SuspensionChange", "SuspensionPointsChange", "PointChange", "AeroChange", "DifferentialChange",
        "AdjustableChange", "CamberRangeChange", "CasterRangeChange", "ToeRangeChange",
    ];

    private JsonObject _schemas = [];

    public async Task InitializeAsync()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Services.AddSingleton(ChangeReading.ChangeContract);
        builder.Services.AddSingleton(new CapSettings());
        builder.Services.ConfigureHttpJsonOptions(static http =>
        {
            http.SerializerOptions.TypeInfoResolverChain.Insert(0, ChangeJsonContext.OfService);
            ServiceJson.Configure(http.SerializerOptions);
        });
        builder.Services.AddGeneratedDescription();
        await using var app = builder.Build();
        app.MapPost("/v1/changes", Take).WithTags("Service");
        await app.StartAsync();
        var document = await app.Services.GetRequiredKeyedService<IOpenApiDocumentProvider>(ApiDescription.DocumentName).GetOpenApiDocumentAsync();
        _schemas = JsonNode.Parse(await document.SerializeAsJsonAsync(OpenApiSpecVersion.OpenApi3_1))!["components"]!["schemas"]!.AsObject();
    }

    public Task DisposeAsync() => Task.CompletedTask;

    [Fact]
    public void Every_part_that_requires_something_has_a_change_of_its_own_that_requires_nothing()
    {
        Assert.Equal(Parts.Order(StringComparer.Ordinal), _schemas.Select(schema => schema.Key).Where(name => name.EndsWith("Change", StringComparison.Ordinal) && name != nameof(NamedChange)));
        foreach (var part in Parts)
        {
            Assert.Null(_schemas[part]!["required"]);
            Assert.Equal("object", (string?)_schemas[part]!["type"]);
            Assert.False((bool)_schemas[part]!["additionalProperties"]!);
            Assert.NotEmpty((string)_schemas[part]!["description"]!);
        }
    }

    [Theory]
    [InlineData(nameof(VehicleDocument), "VehicleChange")]
    [InlineData(nameof(AxleDocument), "AxleChange")]
    [InlineData("TyreDocument", "TyreChange")]
    [InlineData(nameof(PointDocument), "PointChange")]
    public void A_change_has_the_members_limits_and_sentences_of_what_it_changes(string whole, string change)
    {
        var members = _schemas[whole]!["properties"]!.AsObject();
        var changed = _schemas[change]!["properties"]!.AsObject();

        Assert.Equal(members.Select(member => member.Key), changed.Select(member => member.Key));
        foreach ((var name, var member) in members)
        {
            foreach (var word in new[] { "description", "minimum", "maximum", "maxLength", "minItems", "maxItems", "examples" })
                Assert.True(JsonNode.DeepEquals(member![word], changed[name]![word]), $"{change}.{name}: {word}");
        }
    }

    [Fact]
    public void A_change_to_a_suspension_has_the_members_of_every_kind()
    {
        var suspension = _schemas["SuspensionChange"]!["properties"]!;

        Assert.Equal(["kind", "points", "readings", "table", "steerReadings", "topMountReadings", "gaugeErrorDeg"], suspension.AsObject().Select(member => member.Key));
        Assert.Equal("#/components/schemas/SuspensionKind", (string?)suspension["kind"]!["$ref"]);
        Assert.Equal(6, _schemas["SuspensionKind"]!["enum"]!.AsArray().Count);
        Assert.NotNull(_schemas["SuspensionPointsChange"]!["properties"]!["strutTop"]);
        Assert.NotNull(_schemas["SuspensionPointsChange"]!["properties"]!["beamShearCentre"]);
    }

    [Fact]
    public void Every_reference_leads_to_a_schema() =>
        Assert.All(
            System.Text.RegularExpressions.Regex.Matches(_schemas.ToJsonString(), "#/components/schemas/([A-Za-z]+)").Select(match => match.Groups[1].Value),
            name => Assert.True(_schemas.ContainsKey(name), name));

    [Fact]
    public void The_described_schema_and_the_reader_agree()
    {
        var definitions = DescribedSchemas.WithNulls(_schemas).ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal);
        var schema = DescribedSchemas.Alone(
            $$"""{ "$schema": "https://json-schema.org/draft/2020-12/schema", "$ref": "#/$defs/VehicleChange", "$defs": {{definitions}} }""");
        var members = ChangeReading.ChangeContract.ChangeSchemaOf<VehicleDocument>();
        var reader = new JsonContract(ChangeJsonContext.OfService, []).ReaderOf<ChangeRequest>();
        int taken = 0, refused = 0;
        Gen.Int.Sample(
            seed =>
            {
                var change = new ShapedBody(seed, seed % 2 == 0 ? 0 : 0.01).Write(members);
                var faults = reader.Faults(Encoding.UTF8.GetBytes($$"""{ "vehicle": {}, "change": {{change}} }"""));
                if (change == "null" || faults.Any(fault => fault.Code is FaultCodes.DuplicateMember or FaultCodes.NotFinite or FaultCodes.Syntax))
                    return; // What a schema cannot say, or the request around the change takes.

                using var document = JsonDocument.Parse(change);
                var isValid = schema.Evaluate(document.RootElement).IsValid;
                Interlocked.Increment(ref isValid ? ref taken : ref refused);
                Assert.True(isValid == (faults.Count == 0), $"{change}\n{string.Join('\n', faults)}");
            },
            iter: 300);
        Assert.True(taken > 20 && refused > 20, $"The changes are one-sided: {taken} taken, {refused} refused.");
    }

    private static Results<Answer<HealthAnswer>, Problem> Take(Body<ChangeRequest> body) => body.Problem!;
}
