using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Handling;

/// <summary>Ride, camber target and what-if with anything anywhere: an answer that keeps its schema, or a reason.</summary>
public sealed class OtherCallsNeverFailTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly string[] Hostile =
        ["null", "true", "\"\"", "[]", "{}", "[[[[]]]]", "-0", "1e999", "-1e308", "5e-324", "0", "2", "150", "1900", "-15", "\"left\"", "{\"xMm\":0}", "1,\"kind\":\"measured\""];

    [Theory]
    [InlineData("/v1/handling/ride", "ride.request.json")]
    [InlineData("/v1/handling/camber-target", "camber-target.request.json")]
    [InlineData("/v1/handling/what-if", "what-if.request.json")]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason(string path, string example)
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        var text = await File.ReadAllTextAsync(ExampleCall.FileOf(example));
        await Gen.Select(Gen.Int[0, 10_000], Gen.OneOf(Hostile), Gen.Bool).SampleAsync(
            async (place, raw, removes) =>
            {
                var body = JsonNode.Parse(text)!.AsObject();
                var places = BodyPlaces.Of(body).ToArray();
                var chosen = places[place % places.Length];
                var sent = removes && BodyPlaces.IsMember(chosen) ? body.Without(chosen).ToJsonString() : body.WithRaw(chosen, raw);
                using var response = await fixture.Client.PostAsync(path, sent);
                var answer = await response.Content.ReadAsStringAsync();
                var status = (int)response.StatusCode;
                Assert.True(status is 200 or 400 or 422, $"{status} for {sent}: {answer}");
                Assert.Null(schemas.FaultOf("post", path, status, answer));
                Assert.DoesNotContain("NaN", answer, StringComparison.Ordinal);
                Assert.DoesNotContain("Infinity", answer, StringComparison.Ordinal);
                if (status != 200)
                    Assert.NotEmpty((await Problems.Read(response, ProblemTypes.OfStatus(status))).GetProperty("errors").EnumerateArray());
            },
            iter: 250);
    }
}
