using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Plans;

/// <summary>Tyres ranked over HTTP: places, fit, cost, and every fault of a list at once.</summary>
public sealed class TyreRankingCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Path = "/v1/tyres/ranking";

    [Fact]
    public async Task What_may_not_carry_the_car_has_no_place_and_says_why()
    {
        var answer = await Answer(Example());
        var light = answer.GetProperty("tyres").EnumerateArray().Single(tyre => tyre.GetProperty("id").GetString() == "Light E");

        Assert.Equal(JsonValueKind.Null, light.GetProperty("place").ValueKind);
        Assert.Equal("fail", light.GetProperty("fit").GetProperty("verdict").GetString());
        Assert.Contains("loadCapacity", light.GetProperty("fit").GetProperty("decidedBy").EnumerateArray().Select(one => one.GetString()));
        Assert.Contains("1 tyre is not ranked", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Light E", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_verdict_of_each_is_the_single_check_of_it()
    {
        var request = Example();
        var answer = await Answer(request);
        foreach (var tyre in request["tyres"]!.AsArray())
        {
            var check = new JsonObject
            {
                ["axle"] = "front",
                ["vehicle"] = request["vehicle"]!.DeepClone(),
                ["candidate"] = new JsonObject { ["wheel"] = request["vehicle"]!["front"]!["wheel"]!.DeepClone(), ["tyre"] = tyre!["tyre"]!.DeepClone() },
            };
            using var response = await fixture.Client.PostAsync(Calls.Check, check.ToJsonString());
            var single = Calls.Parse(await response.Content.ReadAsStringAsync());
            var fit = answer.GetProperty("tyres").EnumerateArray().Single(one => one.GetProperty("id").GetString() == tyre["id"]!.GetValue<string>()).GetProperty("fit");

            Assert.Equal(single.GetProperty("verdict").GetString(), fit.GetProperty("verdict").GetString());
            Assert.Equal(single.GetProperty("summary").GetString(), fit.GetProperty("summary").GetString());
        }
    }

    [Fact]
    public async Task Without_a_car_all_are_ranked_and_fit_is_unknown()
    {
        var request = Example();
        request.Remove("vehicle");
        request.Remove("axle");
        var answer = await Answer(request);

        Assert.Equal([1, 2, 3, 4, 5], answer.GetProperty("tyres").EnumerateArray().Select(tyre => tyre.GetProperty("place").GetInt32()));
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "fit");
    }

    [Fact]
    public async Task Where_none_fits_nothing_is_ranked()
    {
        var request = Example();
        request["vehicle"]!["front"]!["maximumAxleLoadKg"] = 2500;
        var answer = await Answer(request);

        Assert.All(answer.GetProperty("tyres").EnumerateArray(), tyre => Assert.Equal(JsonValueKind.Null, tyre.GetProperty("place").ValueKind));
        Assert.StartsWith("None of these tyres fits", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        UnknownIds.Check(answer);
    }

    [Theory]
    [InlineData("/use/dailyPct", "60", "/use", "inconsistent")]
    [InlineData("/tyres/1/id", "\"Summer A\"", "/tyres/1", "inconsistent")]
    [InlineData("/tyres/1/price/currency", "\"GBP\"", "/tyres/1", "inconsistent")]
    [InlineData("/tyres/1/price/currency", "\"gbp\"", "/tyres/1/price/currency", "unreadable")]
    [InlineData("/tyres/1/price/amount", "0", "/tyres/1/price/amount", "outOfRange")]
    [InlineData("/tyres/1/tyre/marking", "\"round\"", "/tyres/1/tyre/marking", "unreadable")]
    [InlineData("/tyres/1/wetGripClass", "\"F\"", "/tyres/1/wetGripClass", "unknownWord")]
    [InlineData("/tyres/1/tractionGrade", "\"aa\"", "/tyres/1/tractionGrade", "unknownWord")]
    [InlineData("/weights", "{}", "/weights", "inconsistent")]
    [InlineData("/weights", "{\"noise\":-1}", "/weights/noise", "outOfRange")]
    [InlineData("/tyres", "[]", "/tyres", "tooFew")]
    public async Task A_fault_is_told_at_its_place(string place, string value, string told, string code)
    {
        var request = Example();
        var steps = place[1..].Split('/');
        JsonNode at = request;
        foreach (var step in steps[..^1]) at = at is JsonArray list ? list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]! : at[step]!;
        at[steps[^1]] = JsonNode.Parse(value);
        using var response = await fixture.Client.PostAsync(Path, request.ToJsonString());
        var problem = Calls.Parse(await response.Content.ReadAsStringAsync());

        Assert.Equal(400, (int)response.StatusCode);
        Assert.Contains(problem.GetProperty("errors").EnumerateArray(), one => one.GetProperty("pointer").GetString() == told && one.GetProperty("code").GetString() == code);
    }

    [Fact]
    public async Task A_car_without_a_wheel_asks_for_one()
    {
        var request = Example();
        request["vehicle"]!["front"]!.AsObject().Remove("wheel");
        using var response = await fixture.Client.PostAsync(Path, request.ToJsonString());
        var problem = Calls.Parse(await response.Content.ReadAsStringAsync());

        Assert.Equal(400, (int)response.StatusCode);
        Assert.Equal("/wheel", problem.GetProperty("errors")[0].GetProperty("pointer").GetString());
    }

    private static JsonObject Example() => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("tyre-ranking.request.json")))!.AsObject();

    private async Task<JsonElement> Answer(JsonObject request)
    {
        using var response = await fixture.Client.PostAsync(Path, request.ToJsonString());
        var text = await response.Content.ReadAsStringAsync();
        Assert.True((int)response.StatusCode == 200, text);
        return Calls.Parse(text);
    }
}
