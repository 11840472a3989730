using System.Text.Json;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Drawings;

/// <summary>A chart has a path of its own beside the call that computes it, and each operation answers one media type.</summary>
public sealed class ChartCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Svg = "image/svg+xml";

    public static TheoryData<string, string> Charts() => new()
    {
        { "/v1/geometry/travel-sweep", "travel-sweep.request.json" },
        { "/v1/geometry/steer-sweep", "steer-sweep.request.json" },
        { "/v1/handling/cornering-sweep", "cornering-sweep.request.json" },
        { "/v1/handling/envelope", "envelope.request.json" },
        { "/v1/handling/ride", "ride.request.json" },
        { "/v1/handling/what-if", "what-if.request.json" },
        { "/v1/wear/diagnosis", "wear-diagnosis.request.json" },
        { "/v1/wear/forecast", "wear-forecast.request.json" },
    };

    [Theory]
    [MemberData(nameof(Charts))]
    public async Task The_body_of_the_call_gives_its_chart(string path, string example)
    {
        var body = await File.ReadAllTextAsync(ExampleCall.FileOf(example));
        using var response = await fixture.Client.PostAsync(path + "/chart", body, accept: Svg);

        Harmlessness.Holds(new SvgPicture(await Calls.Text(response)));
        Assert.Equal(Svg, response.Content.Headers.ContentType!.MediaType);
    }

    [Theory]
    [MemberData(nameof(Charts))]
    public async Task Each_form_refuses_an_accept_that_names_only_the_other(string path, string example)
    {
        var body = await File.ReadAllTextAsync(ExampleCall.FileOf(example));
        using var chart = await fixture.Client.PostAsync(path + "/chart", body, accept: "application/json");
        using var answer = await fixture.Client.PostAsync(path, body, accept: Svg);

        await Problems.Read(chart, ProblemTypes.NotAcceptable);
        await Problems.Read(answer, ProblemTypes.NotAcceptable);
    }

    [Theory]
    [MemberData(nameof(Charts))]
    public async Task A_chart_has_the_faults_of_its_call(string path, string example)
    {
        Assert.NotEmpty(example);
        using var chart = await fixture.Client.PostAsync(path + "/chart", "{}");
        using var answer = await fixture.Client.PostAsync(path, "{}");

        var faults = (await Problems.Read(answer, ProblemTypes.InvalidRequest)).FaultsOf();
        Assert.NotEmpty(faults);
        Assert.Equal(faults, (await Problems.Read(chart, ProblemTypes.InvalidRequest)).FaultsOf());
    }

    [Fact]
    public async Task Every_operation_reads_and_answers_one_media_type()
    {
        using var document = JsonDocument.Parse(await fixture.Client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)));
        var operations = document.RootElement.GetProperty("paths").EnumerateObject()
            .SelectMany(path => path.Value.EnumerateObject(), (path, operation) => (Name: $"{operation.Name} {path.Name}", operation.Value)).ToArray();

        Assert.Contains(operations, operation => operation.Name == "post /v1/fitment/batch/csv");
        Assert.All(operations, operation =>
        {
            Assert.True(Count(operation.Value.GetProperty("responses").GetProperty("200")) == 1, operation.Name);
            Assert.True(!operation.Value.TryGetProperty("requestBody", out var body) || Count(body) == 1, operation.Name);
        });
    }

    private static int Count(JsonElement message) => message.GetProperty("content").EnumerateObject().Count();
}
