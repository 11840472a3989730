using System.Diagnostics;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using SetupService.Api.Host;
using SetupService.Api.Plans.Ranking;
using SetupService.Domain.Answers;

namespace SetupService.Benchmarks.Plans;

/// <summary>A ranking of as many tyres as one request may hold, by a stopwatch: from the mapped request to the answer's members, and whole over HTTP.</summary>
internal static class RankingTime
{
    private const int WarmUps = 200;
    private const int Rounds = 300;

    public static async Task<int> RunAsync()
    {
        var body = Body(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "tyre-ranking.request.json"))).ToJsonString();
        var request = JsonSerializer.Deserialize(body, ContractJsonContext.Default.TyreRankingRequest)!;
        Print("ranked and told", await Measure(() =>
        {
            _ = TyreRankingMapper.Map(request).TryGet(out var tyres, out var refusal) ? TyreRankingAnswers.Create(request, tyres, UnitSystem.Metric) : throw new InvalidOperationException(refusal[0].Message);
            return Task.CompletedTask;
        }));

        await using var app = SetupServiceHost.Build(["--urls", "http://127.0.0.1:0"]);
        await app.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First()) };
        Print("whole over HTTP", await Measure(async () =>
        {
            using var content = new StringContent(body, Encoding.UTF8, "application/json");
            using var answer = await client.PostAsync(new Uri("/v1/tyres/ranking", UriKind.Relative), content);
            if (!answer.IsSuccessStatusCode) throw new InvalidOperationException(await answer.Content.ReadAsStringAsync());
        }));
        await app.StopAsync();
        return 0;
    }

    private static async Task<double[]> Measure(Func<Task> call)
    {
        for (var i = 0; i < WarmUps; i++) await call();
        var times = new double[Rounds];
        for (var i = 0; i < Rounds; i++)
        {
            var began = Stopwatch.GetTimestamp();
            await call();
            times[i] = Stopwatch.GetElapsedTime(began).TotalMilliseconds;
        }

        Array.Sort(times);
        return times;
    }

    private static void Print(string what, double[] times) =>
        Console.WriteLine(FormattableString.Invariant($"{TyreRankingRequest.MostTyres} tyres {what}: least {times[0]:0.00} ms, median {times[Rounds / 2]:0.00} ms, nine in ten below {times[Rounds * 9 / 10]:0.00} ms"));

    /// <summary>The example's tyres over and over, their grades and prices varied, on the example's car.</summary>
    private static JsonObject Body(string example)
    {
        var body = JsonNode.Parse(example)!.AsObject();
        JsonNode[] offered = [.. body["tyres"]!.AsArray().Select(one => one!)];
        body["tyres"] = new JsonArray([.. Enumerable.Range(0, TyreRankingRequest.MostTyres).Select(i =>
        {
            var tyre = offered[i % offered.Length].DeepClone();
            tyre["id"] = FormattableString.Invariant($"tyre {i}");
            if (tyre["treadwearGrade"] is not null) tyre["treadwearGrade"] = 100 + (20 * (i % 25));
            if (tyre["price"] is not null) tyre["price"]!["amount"] = 80 + (i % 97);
            return tyre;
        })]);
        return body;
    }
}
