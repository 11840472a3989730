using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Examples;

/// <summary>Every answer is valid against its schema in the API description: those of the examples and those of generated requests.</summary>
public sealed class AnswersKeepTheirSchemasTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly string[] Markings =
        ["225/45R17 94W XL", "235/45ZR17 (97Y) M+S 3PMSF", "205/55R16 91V", "195R15C 106/104R", "31x10.50R15LT", "245/40R18 FR QX", "45Q17", ""];

    private static readonly string[] Removable =
    [
        "/vehicle/front", "/vehicle/rear", "/vehicle/topSpeedKmh", "/vehicle/front/wheel", "/vehicle/front/tyre", "/vehicle/front/hub",
        "/vehicle/front/clearance", "/vehicle/front/clearance/inboardMm", "/vehicle/front/maximumAxleLoadKg", "/candidate/tyre/pressureKpa",
        "/candidate/wheel/boltCircle", "/candidate/wheel/offsetMm", "/camberChange", "/tolerances", "/vehicle",
    ];

    public static TheoryData<string> JsonAnswers() =>
        [.. ExampleCall.All.Where(call => call.Answer.EndsWith(".json", StringComparison.Ordinal)).Select(call => call.Answer)];

    [Theory]
    [MemberData(nameof(JsonAnswers))]
    public async Task The_answer_of_an_example_is_valid(string answer)
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        var call = ExampleCall.All.Single(one => one.Answer == answer);

        var sent = await call.SendAsync(fixture.Client);
        Assert.Null(schemas.FaultOf(call.Method.ToLowerInvariant(), call.Path.Split('?')[0], 200, sent));
        using var document = JsonDocument.Parse(sent);
        UnknownIds.Check(document.RootElement);
    }

    [Theory]
    [InlineData("fitment-comparison.request.json", "ComparisonRequest")]
    [InlineData("fitment-check.request.json", "CheckRequest")]
    [InlineData("fitment-drawing.request.json", "CheckRequest")]
    [InlineData("fitment-window.request.json", "WindowRequest")]
    [InlineData("fitment-batch.car.json", "BatchCarLine")]
    [InlineData("travel-sweep.request.json", "TravelSweepRequest")]
    [InlineData("geometry-drawing.request.json", "DrawingRequest")]
    [InlineData("adjustment.request.json", "AdjustmentRequest")]
    [InlineData("steering-axis.request.json", "SteeringAxisRequest")]
    [InlineData("steer-sweep.request.json", "SteerSweepRequest")]
    [InlineData("caster-from-readings.request.json", "CasterFromReadingsRequest")]
    [InlineData("alignment.request.json", "AlignmentRequest")]
    [InlineData("ride.request.json", "RideRequest")]
    [InlineData("camber-target.request.json", "CamberTargetRequest")]
    [InlineData("what-if.request.json", "WhatIfRequest")]
    [InlineData("wear-forecast.request.json", "ForecastRequest")]
    [InlineData("wear-before-after.request.json", "BeforeAfterRequest")]
    public async Task The_request_of_an_example_is_valid(string file, string schema)
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);

        Assert.Null(schemas.FaultOf(schema, await File.ReadAllTextAsync(ExampleCall.FileOf(file))));
    }

    [Theory]
    [InlineData("")]
    [InlineData("?detail=full")]
    public async Task Each_line_of_a_batch_is_valid(string query)
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        var sent = await File.ReadAllTextAsync(ExampleCall.FileOf("fitment-batch.request.ndjson"));
        using var response = await fixture.Client.PostAsync(Calls.Batch + query, sent, "application/x-ndjson");

        var lines = (await Calls.Text(response)).Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(5, lines.Length);
        Assert.All(lines, line => Assert.Null(schemas.FaultOf("BatchAnswerLine", line)));
    }

    [Fact]
    public async Task The_answer_of_any_request_is_valid_or_a_valid_refusal()
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        await Gen.Select(Gen.Int[0, Markings.Length - 1], Gen.Int[0, Removable.Length - 1], Gen.Double[2.5, 16.5], Gen.Double[-160, 160], Gen.Bool, Gen.Bool).SampleAsync(
            async (marking, removed, widthIn, offsetMm, isFront, removes) =>
            {
                var body = Requests.Check()
                    .With("/candidate/tyre/marking", Markings[marking]).With("/candidate/wheel/rimWidthIn", widthIn)
                    .With("/candidate/wheel/offsetMm", offsetMm).With("/axle", isFront ? "front" : "rear");
                var window = Requests.Window().With("/tyre/marking", Markings[marking]).With("/rimWidthsIn/0", widthIn);
                var comparison = Requests.Comparison().With("/candidate/tyre/marking", Markings[marking]).With("/candidate/wheel/rimWidthIn", widthIn);
                if (removes)
                    body.Without(Removable[removed]);
                Assert.Null(await Fault(schemas, Calls.Check, body));
                Assert.Null(await Fault(schemas, Calls.Window, window));
                Assert.Null(await Fault(schemas, Calls.Comparison, comparison));
            },
            iter: 150);
    }

    [Fact]
    public async Task The_schemas_can_refuse()
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        var answer = JsonNode.Parse(await File.ReadAllTextAsync(ExampleCall.FileOf("fitment-check.answer.json")))!.AsObject();

        Assert.NotNull(schemas.FaultOf("CheckAnswer", answer.DeepClone().AsObject().With("/verdict", "good").ToJsonString()));
        Assert.NotNull(schemas.FaultOf("CheckAnswer", answer.DeepClone().AsObject().With("/surplus", 1).ToJsonString()));
        Assert.NotNull(schemas.FaultOf("CheckAnswer", answer.DeepClone().AsObject().Without("/method").ToJsonString()));
        Assert.NotNull(schemas.FaultOf("CheckAnswer", answer.DeepClone().AsObject().With("/checks/0/nominalMm", "9").ToJsonString()));
    }

    private async Task<string?> Fault(DescribedSchemas schemas, string path, JsonObject body)
    {
        using var response = await fixture.Client.PostAsync(path, body.ToJsonString());
        return schemas.FaultOf("post", path, (int)response.StatusCode, await response.Content.ReadAsStringAsync());
    }
}
