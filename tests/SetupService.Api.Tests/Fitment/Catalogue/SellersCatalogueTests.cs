using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment.Catalogue;

/// <summary>The made-up catalogue of a seller against the cars of the demos: thousands of lines, each pair with the verdict of the single check.</summary>
public sealed class SellersCatalogueTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly string[] Table = File.ReadAllLines(ExampleCall.FileOf("further/catalogue.csv"));

    private static readonly (string Id, JsonObject Vehicle)[] Cars =
    [
        ("tarn", Vehicle("plan.request.json")), ("fell", Vehicle("further/plan-rear-driven.request.json")), ("rill", Vehicle("further/plan-jack-and-ruler.request.json")),
    ];

    [Fact]
    public async Task Every_line_is_judged_on_every_car_as_by_the_single_check()
    {
        Assert.True(Table.Length > 2000);
        var cars = string.Concat(Cars.Select(car => new JsonObject { ["id"] = car.Id, ["axle"] = "front", ["vehicle"] = car.Vehicle.DeepClone() }.ToJsonString() + "\n"));

        var lines = await fixture.Client.CatalogueOf(cars, string.Join('\n', Table), type: "text/csv");

        var summary = lines[^1].GetProperty("summary");
        Assert.Equal(Cars.Length * (Table.Length - 1), summary.GetProperty("answeredCount").GetInt32());
        Assert.Equal(0, summary.GetProperty("refusedCount").GetInt32());
        Assert.Equal(lines.Length - 1, summary.GetProperty("answeredCount").GetInt32());
        Assert.All((string[])["pass", "fail", "unknown"], verdict => Assert.Contains(lines[..^1], line => line.GetProperty("verdict").GetString() == verdict));

        // What fits the car whose gaps and hub are known, and every 500th pair.
        var judged = lines[..^1].Where((line, i) => i % 500 == 0 || (line.GetProperty("car").GetString() == "fell" && line.GetProperty("verdict").GetString() is "pass" or "caution")).Take(40).ToArray();
        Assert.Contains(judged, line => line.GetProperty("verdict").GetString() == "pass");
        foreach (var line in judged) await IsTheSingleCheck(line);
    }

    private async Task IsTheSingleCheck(JsonElement line)
    {
        var cells = Table[line.GetProperty("line").GetInt32() - 1].Split(',');
        var single = await fixture.Client.AnswerOf(Calls.Check, new JsonObject
        {
            ["axle"] = "front",
            ["vehicle"] = Cars.Single(car => car.Id == line.GetProperty("car").GetString()).Vehicle.DeepClone(),
            ["candidate"] = new JsonObject { ["wheel"] = new JsonObject { ["marking"] = cells[1] }, ["tyre"] = new JsonObject { ["marking"] = cells[2] } },
        });
        Assert.Equal(cells[0], line.GetProperty("candidate").GetString());
        Assert.Equal(single.GetProperty("verdict").GetString(), line.GetProperty("verdict").GetString());

        // What fails on the first look is not looked at further.
        if (line.GetProperty("verdict").GetString() == "fail") Assert.Subset(single.GetProperty("decidedBy").Strings().ToHashSet(), line.GetProperty("decidedBy").Strings().ToHashSet());
        else Assert.Equal(single.GetProperty("decidedBy").Strings(), line.GetProperty("decidedBy").Strings());
    }

    private static JsonObject Vehicle(string file) => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf(file)))!["vehicle"]!.AsObject();
}
