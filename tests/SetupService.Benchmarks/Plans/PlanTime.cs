using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using SetupService.Api.Host;

namespace SetupService.Benchmarks.Plans;

/// <summary>A plan of nearly two thousand packages of a car with points at both ends, by a stopwatch over HTTP, and how soon it stops when its caller hangs up.</summary>
internal static class PlanTime
{
    private const int Rounds = 3;
    private const int HangUpAfterMs = 400;

    public static async Task<int> RunAsync()
    {
        await using var app = SetupServiceHost.Build(["--urls", "http://127.0.0.1:0"]);
        await app.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First()), Timeout = TimeSpan.FromMinutes(5) };
        var body = Body(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "plan.request.json"))).ToJsonString();
        for (var round = 0; round < Rounds; round++)
        {
            var began = Stopwatch.GetTimestamp();
            using var answer = await client.PostAsync(new Uri("/v1/plans", UriKind.Relative), Content());
            var text = await answer.Content.ReadAsStringAsync();
            if (!answer.IsSuccessStatusCode) throw new InvalidOperationException(text);
            Console.WriteLine(FormattableString.Invariant($"plan of {JsonNode.Parse(text)!["searched"]!["packageCount"]} packages: {Stopwatch.GetElapsedTime(began).TotalSeconds:0.00} s on {Environment.ProcessorCount} processors"));
        }

        // What the process still takes of the processors after the caller has gone tells when the work has stopped.
        using var gone = new CancellationTokenSource(HangUpAfterMs);
        try
        {
            using var never = await client.PostAsync(new Uri("/v1/plans", UriKind.Relative), Content(), gone.Token);
        }
        catch (OperationCanceledException)
        {
            var self = Process.GetCurrentProcess();
            await Task.Delay(50);
            self.Refresh();
            var before = self.TotalProcessorTime;
            await Task.Delay(500);
            self.Refresh();
            Console.WriteLine(FormattableString.Invariant($"from 50 ms after the hang-up on it takes {(self.TotalProcessorTime - before).TotalMilliseconds:0} ms of processor time in 500 ms"));
        }

        await app.StopAsync();
        return 0;

        StringContent Content() => new(body, Encoding.UTF8, "application/json");
    }

    /// <summary>The demo's request with points at both ends and eleven parts free of each other, less what its budget leaves out: 1,981 packages.</summary>
    private static JsonObject Body(string example)
    {
        var body = JsonNode.Parse(example)!.AsObject();
        body["vehicle"]!["front"]!["suspension"] = JsonNode.Parse("""
            {"kind":"macPhersonStrut","points":{"lowerArmFront":{"xMm":15,"yMm":380,"zMm":190},"lowerArmRear":{"xMm":-310,"yMm":390,"zMm":195},"lowerBallJoint":{"xMm":5,"yMm":720,"zMm":175},
             "strutTop":{"xMm":-35,"yMm":565,"zMm":840},"strutLower":{"xMm":-5,"yMm":630,"zMm":400},"tieRodInner":{"xMm":-150,"yMm":330,"zMm":235},"tieRodOuter":{"xMm":-140,"yMm":695,"zMm":225},"wheelCentre":{"xMm":0,"yMm":750,"zMm":305}}}
            """);
        body["vehicle"]!["front"]!["spring"]!.AsObject().Remove("motionRatio");
        body["vehicle"]!["rear"]!["suspension"] = JsonNode.Parse("""
            {"kind":"doubleWishbone","points":{"lowerArmFront":{"xMm":150,"yMm":390,"zMm":190},"lowerArmRear":{"xMm":-180,"yMm":400,"zMm":180},"lowerBallJoint":{"xMm":10,"yMm":715,"zMm":180},
             "upperArmFront":{"xMm":90,"yMm":480,"zMm":455},"upperArmRear":{"xMm":-130,"yMm":490,"zMm":440},"upperBallJoint":{"xMm":-18,"yMm":690,"zMm":480},"tieRodInner":{"xMm":-125,"yMm":370,"zMm":208},
             "tieRodOuter":{"xMm":-130,"yMm":695,"zMm":205},"wheelCentre":{"xMm":0,"yMm":750,"zMm":310}}}
            """);
        body["vehicle"]!["rear"]!["rollCentreHeightMm"] = null;
        string[] changes =
        [
            """{"front":{"spring":{"rateNPerMm":30}}}""", """{"rear":{"spring":{"rateNPerMm":50}}}""", """{"front":{"antiRollBar":{"rollRateNmPerDeg":360}}}""", """{"rear":{"antiRollBar":{"rollRateNmPerDeg":140}}}""",
            """{"front":{"damper":{"bumpNsPerM":1800}}}""", """{"rear":{"damper":{"bumpNsPerM":1900}}}""", """{"front":{"rideHeightChangeMm":-8}}""", """{"rear":{"rideHeightChangeMm":-8}}""",
            """{"front":{"adjustable":{"camberDeg":{"from":-3.2}}}}""", """{"front":{"compliance":{"camberDegPerKn":0.09}}}""", """{"rear":{"compliance":{"camberDegPerKn":0.09}}}""",
        ];
        body["parts"] = new JsonArray([.. changes.Select((change, i) => new JsonObject
        {
            ["id"] = FormattableString.Invariant($"part-{i}"),
            ["kind"] = "arm",
            ["price"] = JsonNode.Parse("""{"amount":100,"currency":"EUR"}"""),
            ["change"] = new JsonObject { ["vehicle"] = JsonNode.Parse(change), ["keepRideHeight"] = change.Contains("spring", StringComparison.Ordinal) },
        })]);
        body["limits"] = JsonNode.Parse("""{"budget":{"amount":800,"currency":"EUR"}}""");
        body.Remove("labourPerHour");
        return body;
    }
}
