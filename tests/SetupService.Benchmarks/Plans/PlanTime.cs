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
    // Shares of the time the last round took: the searching, the evaluating, the choosing.
    private static readonly double[] HangUpAt = [0.01, 0.1, 0.3, 0.5, 0.7, 0.85, 0.9, 0.93, 0.96, 0.98];
    private static readonly Uri Plans = new("/v1/plans", UriKind.Relative);

    public static async Task<int> RunAsync()
    {
        await using var app = SetupServiceHost.Build(["--urls", "http://127.0.0.1:0"]);
        await app.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First()), Timeout = TimeSpan.FromMinutes(5) };
        var body = Body(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "plan.request.json"))).ToJsonString();
        var self = Process.GetCurrentProcess();
        var tookMs = 0.0;
        for (var round = 0; round < Rounds; round++)
        {
            var (began, workedS) = (Stopwatch.GetTimestamp(), WorkedS());
            using var answer = await client.PostAsync(Plans, Content());
            var text = await answer.Content.ReadAsStringAsync();
            tookMs = Stopwatch.GetElapsedTime(began).TotalMilliseconds;
            if (!answer.IsSuccessStatusCode) throw new InvalidOperationException(text);
            Console.WriteLine(FormattableString.Invariant($"plan of {JsonNode.Parse(text)!["searched"]!["packageCount"]} packages: {tookMs / 1000:0.00} s on {Environment.ProcessorCount} processors, {WorkedS() - workedS:0.00} s of processor time"));
        }

        // When the server is done with a request whose caller has gone tells when the work has stopped.
        long ended = 0;
        using var listener = new ActivityListener
        {
            ShouldListenTo = source => source.Name == "Microsoft.AspNetCore",
            Sample = (ref _) => ActivitySamplingResult.AllDataAndRecorded,
            ActivityStopped = _ => Volatile.Write(ref ended, Stopwatch.GetTimestamp()),
        };
        ActivitySource.AddActivityListener(listener);
        foreach (var share in HangUpAt)
        {
            var afterMs = (int)(share * tookMs);
            Volatile.Write(ref ended, 0);
            using var gone = new CancellationTokenSource();
            var call = client.PostAsync(Plans, Content(), gone.Token);
            await Task.Delay(afterMs);
            var left = Stopwatch.GetTimestamp();
            await gone.CancelAsync();
            try
            {
                using var never = await call;
                Console.WriteLine(FormattableString.Invariant($"answered before {afterMs} ms"));
            }
            catch (OperationCanceledException)
            {
                while (Volatile.Read(ref ended) == 0) await Task.Delay(1);
                Console.WriteLine(FormattableString.Invariant($"hung up after {afterMs} ms: the request is over {Stopwatch.GetElapsedTime(left, ended).TotalMilliseconds:0.0} ms later"));
            }
        }

        await app.StopAsync();
        return 0;

        double WorkedS()
        {
            self.Refresh();
            return self.TotalProcessorTime.TotalSeconds;
        }

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
