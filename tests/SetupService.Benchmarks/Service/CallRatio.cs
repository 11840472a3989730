using System.Diagnostics;

namespace SetupService.Benchmarks.Service;

/// <summary>Requests a second of the check against its peer, turn by turn in one run.</summary>
internal static class CallRatio
{
    private const int Connections = 16;
    private const int Rounds = 9;
    private static readonly TimeSpan Round = TimeSpan.FromSeconds(3);

    public static async Task<int> RunAsync(Uri url, string pid)
    {
        var body = await File.ReadAllBytesAsync(Path.Combine(AppContext.BaseDirectory, "fitment-check.request.json"));
        await PrepareAsync(url, body);
        await RateAsync(url, "/v1/fitment/check", body);
        await RateAsync(url, PeerHost.PeerPath, body);
        ServerProcess server = new(pid);
        List<double> own = [];
        List<double> peer = [];
        List<double> ownCpu = [];
        List<double> peerCpu = [];
        for (var i = 0; i < Rounds; i++)
        {
            await MeasureAsync("/v1/fitment/check", own, ownCpu);
            await MeasureAsync(PeerHost.PeerPath, peer, peerCpu);
        }

        Figures.Print("POST /v1/fitment/check, requests/s", own);
        Figures.Print("peer, requests/s", peer);
        Figures.Print("ratio of requests/s", [.. own.Zip(peer, static (a, b) => a / b)], "N3");
        Figures.Print("POST /v1/fitment/check, processor time a request, µs", ownCpu, "N1");
        Figures.Print("peer, processor time a request, µs", peerCpu, "N1");
        Figures.Print("ratio of processor time, peer / check", [.. peerCpu.Zip(ownCpu, static (a, b) => a / b)], "N3");
        return 0;

        async Task MeasureAsync(string path, List<double> rates, List<double> cpu)
        {
            var before = server.CpuSeconds();
            var rate = await RateAsync(url, path, body);
            rates.Add(rate);
            cpu.Add((server.CpuSeconds() - before) / (rate * Round.TotalSeconds) * 1e6);
        }
    }

    private static async Task PrepareAsync(Uri url, byte[] body)
    {
        using HttpClient client = new() { BaseAddress = url };
        using ByteArrayContent request = new(body) { Headers = { ContentType = new("application/json") } };
        using var answer = await client.PostAsync(new Uri("/v1/fitment/check", UriKind.Relative), request);
        using ByteArrayContent prepared = new(await answer.Content.ReadAsByteArrayAsync()) { Headers = { ContentType = new("application/json") } };
        using var done = await client.PostAsync(new Uri("/peer/prepare", UriKind.Relative), prepared);
        done.EnsureSuccessStatusCode();
    }

    private static async Task<double> RateAsync(Uri url, string path, byte[] body)
    {
        using CancellationTokenSource time = new(Round);
        KeepAliveClient[] clients = [.. Enumerable.Range(0, Connections).Select(_ => new KeepAliveClient(url, path, body))];
        var watch = Stopwatch.StartNew();
        var answered = await Task.WhenAll(clients.Select(client => client.RunAsync(time.Token)));
        var rate = answered.Sum() / watch.Elapsed.TotalSeconds;
        Array.ForEach(clients, client => client.Dispose());
        return rate;
    }
}
