using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Json.Schema;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Host;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;

namespace SetupService.Api.Tests.Contract;

/// <summary>
/// The described schema of a request (JSON Schema 2020-12, as OpenAPI 3.1 uses it) takes what the service takes and
/// refuses what it refuses, on generated bodies.
/// </summary>
public sealed class SchemaAgreesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // What a schema cannot say, or a JSON library reads otherwise: doubled names, numbers beyond a double.
    private static readonly string[] BeyondSchemas = [FaultCodes.DuplicateMember, FaultCodes.NotFinite, FaultCodes.Syntax];

    private static readonly ContractReader<CheckRequest> Reader =
        new JsonContract(ContractJsonContext.Default, []).ReaderOf<CheckRequest>();

    private static readonly ContractSchema Schema =
        new SchemaBuilder(ContractJsonContext.Default.Options).Build(typeof(CheckRequest));

    [Fact]
    public async Task The_described_schema_and_the_reader_agree()
    {
        var schema = await SchemaOf(nameof(CheckRequest));
        var taken = 0;
        var refused = 0;
        Gen.Int.Sample(
            seed =>
            {
                var body = Encoding.UTF8.GetBytes(new ShapedBody(seed, faultShare: seed % 2 == 0 ? 0 : 0.01).Write(Schema));
                var faults = Reader.Faults(body);
                if (faults.Any(fault => BeyondSchemas.Contains(fault.Code)))
                    return;

                using var document = JsonDocument.Parse(body);
                var isValid = schema.Evaluate(document.RootElement).IsValid;
                Interlocked.Increment(ref isValid ? ref taken : ref refused);
                Assert.True(isValid == (faults.Count == 0), $"{Encoding.UTF8.GetString(body)}\n{string.Join('\n', faults)}");
            },
            iter: 500);

        Assert.True(taken > 20 && refused > 20, $"The bodies are one-sided: {taken} taken, {refused} refused.");
    }

    /// <summary>Refused are a member missing, a foreign one, a kind there is not, and the members of another kind.</summary>
    [Fact]
    public async Task Every_kind_of_suspension_is_taken_and_four_wrong_ones_of_each_are_refused()
    {
        var schema = await SchemaOf("SuspensionDocument");
        var reader = new JsonContract(ContractJsonContext.Default, []).ReaderOf<VehicleDocument>();
        var schemas = ((VariantSchema)new SchemaBuilder(ContractJsonContext.Default.Options).Build(typeof(SuspensionDocument))).Schemas;
        Assert.Equal(6, schemas.Count);
        foreach (var kind in schemas)
        {
            var sound = JsonNode.Parse(new ShapedBody(7, faultShare: 0).Write(kind))!.AsObject();

            // Of a measured one either form of the readings serves, which a rule between members holds.
            var own = kind.Members.SingleOrDefault(member => member.IsRequired && member.Name != "kind")?.Name;
            Assert.True(IsTaken(schema, reader, sound), sound.ToJsonString());

            var missing = sound.DeepClone().AsObject();
            missing.Remove(own ?? "kind");
            var foreign = sound.DeepClone().AsObject();
            foreign["camber"] = 1;
            var unknown = sound.DeepClone().AsObject();
            unknown["kind"] = "liveAxle";
            var other = sound.DeepClone().AsObject();
            other["kind"] = own == "points" ? "measured" : "twistBeam";
            Assert.All(new[] { missing, foreign, unknown, other }, wrong => Assert.False(IsTaken(schema, reader, wrong), wrong.ToJsonString()));
        }
    }

    /// <summary>Whether a suspension is taken; the schema and the reader must say the same.</summary>
    private static bool IsTaken(JsonSchema schema, ContractReader<VehicleDocument> reader, JsonObject suspension)
    {
        using var document = JsonDocument.Parse(suspension.ToJsonString());
        var isValid = schema.Evaluate(document.RootElement).IsValid;
        JsonObject vehicle = new() { ["front"] = new JsonObject { ["suspension"] = suspension.DeepClone() } };
        Assert.Equal(reader.Faults(Encoding.UTF8.GetBytes(vehicle.ToJsonString())).Count == 0, isValid);
        return isValid;
    }

    private async Task<JsonSchema> SchemaOf(string name)
    {
        var description = JsonNode.Parse(await fixture.Client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)))!;
        var definitions = DescribedSchemas.WithNulls(description["components"]!["schemas"]!).ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal);
        return DescribedSchemas.Alone($$"""{ "$schema": "https://json-schema.org/draft/2020-12/schema", "$ref": "#/$defs/{{name}}", "$defs": {{definitions}} }""");
    }
}
