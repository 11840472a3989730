using System.Text.Json;
using System.Text.RegularExpressions;
using SetupService.Api.Host;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Contract;

/// <summary>The API description: committed as it is served, and complete.</summary>
public sealed partial class OpenApiTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Pure numbers: ratios, indices and counts of the text itself; limits have their unit beside them.
    private static readonly string[] Dimensionless =
        ["trackLaps", "lapsLeft", "bestAfterLaps", "gainedLaps", "lapsToShow", "lapsPerSession", "plannedLaps", "plannedReadings", "plannedPower", "expectedRatio", "soughtRatio",
         "distinctReadings", "degreesOfFreedom", "probability", "amount", "treadwearGrade", "otherTreadwearGrade", "grade", "otherGrade",
          "lifeRatio", "place", "points", "merit", "lifeLaps", "treadLifeFactor", "weight", "expectedInformation",
          "motionRatio", "steeringRatio", "biasRatio", "minimumLoadIndex", "loadIndex", "loadIndexDual", "plyRating", "status", "line", "column", "minimum", "maximum",
         "springMotionRatio", "damperMotionRatio", "camberGainPerRoll", "link", "bump", "rebound", "mean", "frequencyRatio",
         "frontDampingRatio", "rearDampingRatio", "innerShoulderWearRatio", "dryBias", "noiseSteps", "alignment", "trackDaysPerYear", "casterSaving", "casterSavingInTightest",
         "ageYears", "secondsAfterLap", "kmLeft", "kmToShow"]; // years, and words that say their unit in front

    // Places that carry the unit of the member they stand in, or state it beside them.
    private static readonly string[] UnitStandsElsewhere =
        ["CornerWeightsDocument", "FaultLimits", "AssumptionResponse", "CheckItem", "UncertaintyResponse", "TravelRangeDocument", "RackRangeDocument", "RangeResponse",
         "SteerRangeDocument", "MovementRangeDocument", "ShimRangeDocument", "AngleRangeDocument", "PlausibleResponse", "MoveResponse",
         "InclinationContributionsResponse", "LateralRangeDocument", "LongitudinalRangeDocument", "SensitivityResponse", "DepthsDocument", "DepthsResponse",
         "OffsetRange", "DampingRatioRangeDocument", "CamberRangeDocument", "ToeRangeDocument", "CasterRangeDocument", "CamberRangeChange", "ToeRangeChange", "CasterRangeChange", "PermittedRimWidthResponse", "TreadTemperaturesDocument", "TemperatureWindowDocument", "PressuresDocument", "CriterionWeightsDocument"];

    /// <summary>Writes the file anew where it differs, so that a change of the contract is one commit away and seen in it.</summary>
    [Theory]
    [InlineData("json")]
    [InlineData("yaml")]
    public async Task The_committed_file_is_what_is_served(string form)
    {
        var served = Normalized(await fixture.Client.GetStringAsync(new Uri($"/openapi/v1.{form}", UriKind.Relative)));
        var path = ContractFile.Path($"openapi.{form}");
        var committed = File.Exists(path) ? Normalized(await File.ReadAllTextAsync(path)) : "";
        if (committed != served)
            await File.WriteAllTextAsync(path, served);

        Assert.True(committed == served, $"api/openapi.{form} was not what is served; it has been written anew. Commit it.");
    }

    // Half a megabyte at forty calls: schemas once, one short example a call.
    private const int BytesACall = 12_500;

    [Fact]
    public async Task The_description_is_short_enough_to_be_read()
    {
        var served = await fixture.Client.GetByteArrayAsync(new Uri("/openapi/v1.json", UriKind.Relative));

        using var document = JsonDocument.Parse(served);
        Assert.InRange(served.Length, 100_000, BytesACall * Operations(document).Count());
        Assert.All(
            Operations(document).SelectMany(call => call.Operation.GetProperty("responses").GetProperty("200").GetProperty("content").EnumerateObject()),
            media => Assert.False(media.Name.StartsWith("image/", StringComparison.Ordinal) && (media.Value.TryGetProperty("example", out _) || media.Value.TryGetProperty("examples", out _))));
    }

    [Fact]
    public async Task Refusals_parameters_and_headers_are_written_once()
    {
        using var document = await Served();
        var operations = Operations(document).ToArray();
        foreach ((var call, var operation) in operations)
        {
            foreach (var response in operation.GetProperty("responses").EnumerateObject().Where(response => response.Name != "200"))
                Assert.StartsWith("#/components/responses/", response.Value.GetProperty("$ref").GetString(), StringComparison.Ordinal);
            Assert.Equal("#/components/headers/RequestId", operation.GetProperty("responses").GetProperty("200").GetProperty("headers").GetProperty("Request-Id").GetProperty("$ref").GetString());
            if (operation.TryGetProperty("parameters", out var parameters))
                Assert.All(parameters.EnumerateArray(), parameter => Assert.True(parameter.TryGetProperty("$ref", out _), call));
        }

        var components = document.RootElement.GetProperty("components");
        Assert.InRange(components.GetProperty("responses").EnumerateObject().Count(), 5, 12);
        Assert.InRange(components.GetProperty("parameters").EnumerateObject().Count(), 5, 30);
        Assert.Equal("[{\"key\":[]},{}]", document.RootElement.GetProperty("security").GetRawText().Replace(" ", "", StringComparison.Ordinal).ReplaceLineEndings(""));
    }

    [Fact]
    public async Task Every_set_of_words_has_one_name_and_no_name_is_numbered()
    {
        using var document = await Served();
        var components = document.RootElement.GetProperty("components").GetProperty("schemas");
        var named = components.EnumerateObject().Count(schema => schema.Value.TryGetProperty("enum", out _));

        Assert.True(named > 20, $"Only {named} sets of words.");
        Assert.Equal(named, EnumsIn(document.RootElement));
        Assert.DoesNotContain(components.EnumerateObject(), schema => schema.Name.Any(char.IsAsciiDigit));
    }

    [Fact]
    public async Task What_may_be_left_out_is_a_bare_reference_and_what_may_be_null_is_either()
    {
        using var document = await Served();
        int bare = 0, either = 0;
        foreach ((var schema, var member, var value) in Members(document))
        {
            var isRequired = document.RootElement.GetProperty("components").GetProperty("schemas").GetProperty(schema)
                .TryGetProperty("required", out var required) && required.EnumerateArray().Any(name => name.GetString() == member);
            if (value.TryGetProperty("oneOf", out var kinds))
            {
                Assert.True(isRequired, $"{schema}.{member}");
                Assert.Equal(["$ref", "type"], kinds.EnumerateArray().Select(kind => Assert.Single(kind.EnumerateObject()).Name));
                either++;
            }
            else if (!isRequired && value.TryGetProperty("$ref", out _))
            {
                bare++;
            }
        }

        Assert.True(bare > 20 && either > 20, $"{bare} bare, {either} either.");
    }

    [Fact]
    public async Task Every_call_is_named_described_tagged_and_says_how_it_can_be_refused()
    {
        using var document = await Served();
        string[] tags = [.. document.RootElement.GetProperty("tags").EnumerateArray().Select(tag => tag.GetProperty("name").GetString()!)];
        List<string> names = [];
        foreach ((var call, var operation) in Operations(document))
        {
            names.Add(operation.GetProperty("operationId").GetString()!);
            Assert.True(operation.GetProperty("summary").GetString()!.Length > 5, call);
            Assert.True(operation.GetProperty("description").GetString()!.Length > 20, call);
            Assert.Contains(Assert.Single(operation.GetProperty("tags").EnumerateArray()).GetString(), tags);

            var responses = operation.GetProperty("responses");
            var takesJson = operation.TryGetProperty("requestBody", out var body) && body.GetProperty("content").TryGetProperty("application/json", out _);
            string[] owed = takesJson ? ["200", "400", "406", "413", "415", "500"] : ["200", "406", "500"];
            Assert.All(owed, status => Assert.True(responses.TryGetProperty(status, out _), $"{call} lacks {status}"));
            foreach (var response in responses.EnumerateObject().Where(response => response.Name[0] is '4' or '5'))
            {
                var media = Resolved(document, response.Value).GetProperty("content").GetProperty(Problem.MediaType);
                Assert.Equal("#/components/schemas/Problem", media.GetProperty("schema").GetProperty("$ref").GetString());
                Assert.Equal(response.Name, media.GetProperty("example").GetProperty("status").GetRawText());
            }
        }

        Assert.NotEmpty(names);
        Assert.Equal(names.Count, names.Distinct().Count());
    }

    [Fact]
    public async Task Every_member_is_described_and_every_value_of_a_request_has_an_example()
    {
        using var document = await Served();
        foreach ((var schema, var member, var value) in Members(document))
        {
            Assert.True(value.TryGetProperty("description", out _), $"{schema}.{member} has no description");
            if (IsNumber(value) || Types(value).Contains("string"))
                Assert.True(value.TryGetProperty("examples", out _), $"{schema}.{member} has no example");
        }
    }

    [Fact]
    public async Task Every_number_says_its_unit_by_its_name()
    {
        using var document = await Served();
        var silent = Members(document)
            .Where(member => IsNumber(member.Value) && !UnitStandsElsewhere.Contains(member.Schema))
            .Where(member => UnitOfName.Read(member.Member) is null && !Dimensionless.Contains(member.Member))
            .Select(member => $"{member.Schema}.{member.Member}");

        Assert.Empty(silent);
    }

    [Fact]
    public async Task Only_requests_are_closed_to_other_members_and_every_number_in_them_has_limits()
    {
        using var document = await Served();
        foreach (var schema in document.RootElement.GetProperty("components").GetProperty("schemas").EnumerateObject())
        {
            var isClosed = schema.Value.TryGetProperty("additionalProperties", out var more) && more.ValueKind == JsonValueKind.False;
            var isAnswer = schema.Name.EndsWith("Answer", StringComparison.Ordinal) || schema.Name is "Problem" or "Fault" or "FaultLimits";
            Assert.False(isClosed && isAnswer, schema.Name);
            if (!isClosed)
                continue;

            foreach (var member in schema.Value.GetProperty("properties").EnumerateObject().Where(member => IsNumber(member.Value)))
                Assert.True(member.Value.TryGetProperty("minimum", out _) && member.Value.TryGetProperty("maximum", out _), $"{schema.Name}.{member.Name}");
        }
    }

    [Fact]
    public async Task Each_kind_of_suspension_tells_its_kind()
    {
        using var document = await Served();
        var schemas = document.RootElement.GetProperty("components").GetProperty("schemas");
        var suspension = schemas.GetProperty("SuspensionDocument");
        var mapping = suspension.GetProperty("discriminator").GetProperty("mapping");

        Assert.Equal("kind", suspension.GetProperty("discriminator").GetProperty("propertyName").GetString());
        Assert.Equal(
            ["macPhersonStrut", "doubleWishbone", "fiveLink", "semiTrailingArm", "twistBeam", "measured"],
            mapping.EnumerateObject().Select(kind => kind.Name));
        foreach (var kind in mapping.EnumerateObject())
        {
            // The base and the kind's own members; the base alone has the member that tells the kind.
            var parts = schemas.GetProperty(kind.Value.GetString()!.Split('/')[^1]).GetProperty("allOf");
            Assert.Equal(2, parts.GetArrayLength());
            Assert.Equal("#/components/schemas/SuspensionDocument", parts[0].GetProperty("$ref").GetString());
            Assert.False(parts[1].GetProperty("properties").TryGetProperty("kind", out _));
        }

        Assert.False(suspension.TryGetProperty("anyOf", out _));
        Assert.Equal(["kind"], suspension.GetProperty("properties").EnumerateObject().Select(member => member.Name));
        Assert.Equal(
            mapping.EnumerateObject().Select(kind => kind.Name),
            schemas.GetProperty("SuspensionKind").GetProperty("enum").EnumerateArray().Select(word => word.GetString()));
    }

    [Fact]
    public async Task Paths_are_lower_case_with_hyphens_and_carry_the_version()
    {
        using var document = await Served();

        Assert.All(
            document.RootElement.GetProperty("paths").EnumerateObject().Select(path => path.Name),
            path => Assert.Matches(PathForm(), path));
    }

    [Fact]
    public void No_domain_object_is_written_as_it_is()
    {
        // Enums of the domain may lend their words; objects would bind the contract to the inside.
        var lent = typeof(ContractJsonContext).GetProperties()
            .Where(property => property.PropertyType.IsGenericType)
            .Select(property => property.PropertyType.GetGenericArguments()[0])
            .Where(type => type is { IsEnum: false, IsArray: false } && type.Namespace?.StartsWith("SetupService.Domain", StringComparison.Ordinal) == true)
            .Where(type => Nullable.GetUnderlyingType(type) is null)
            .Select(type => type.Name);

        Assert.Empty(lent);
    }

    private async Task<JsonDocument> Served() => JsonDocument.Parse(await fixture.Client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)));

    private static JsonElement Resolved(JsonDocument document, JsonElement part) => part.TryGetProperty("$ref", out var target)
        ? target.GetString()!.Split('/').Skip(1).Aggregate(document.RootElement, (place, name) => place.GetProperty(name))
        : part;

    /// <summary>How many schemas in the document are a set of words; examples are none.</summary>
    private static int EnumsIn(JsonElement place) => place.ValueKind switch
    {
        JsonValueKind.Object => (place.TryGetProperty("enum", out _) ? 1 : 0)
            + place.EnumerateObject().Where(member => member.Name is not ("examples" or "example")).Sum(member => EnumsIn(member.Value)),
        JsonValueKind.Array => place.EnumerateArray().Sum(EnumsIn),
        _ => 0,
    };

    private static IEnumerable<(string Call, JsonElement Operation)> Operations(JsonDocument document) =>
        from path in document.RootElement.GetProperty("paths").EnumerateObject()
        from operation in path.Value.EnumerateObject()
        select (operation.Name + " " + path.Name, operation.Value);

    private static IEnumerable<(string Schema, string Member, JsonElement Value)> Members(JsonDocument document) =>
        from schema in document.RootElement.GetProperty("components").GetProperty("schemas").EnumerateObject()
        let own = schema.Value.TryGetProperty("allOf", out var parts) ? parts[1] : schema.Value
        where own.TryGetProperty("properties", out _)
        from member in own.GetProperty("properties").EnumerateObject()
        select (schema.Name, member.Name, member.Value);

    private static bool IsNumber(JsonElement value) => Types(value).Any(type => type is "number" or "integer");

    private static string[] Types(JsonElement value)
    {
        if (!value.TryGetProperty("type", out var type))
            return [];
        return type.ValueKind == JsonValueKind.Array ? [.. type.EnumerateArray().Select(one => one.GetString()!)] : [type.GetString()!];
    }

    private static string Normalized(string text) => text.ReplaceLineEndings("\n").TrimEnd() + "\n";

    [GeneratedRegex("^(/v1/[a-z/-]+|/health/(live|ready)|/version|/docs/(problems|methods)/\\{name\\})$")]
    private static partial Regex PathForm();
}
