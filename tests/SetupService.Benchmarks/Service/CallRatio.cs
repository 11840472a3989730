using System.Diagnostics;

namespace SetupService.Benchmarks.Service;

/// <summary>Requests a second of each peered call against its peer, turn by turn in one run.</summary>
internal static class CallRatio
{
    private const int Connections = 16;
    private const int Rounds = 9;
    private static readonly TimeSpan Round = TimeSpan.FromSeconds(3);

    public static async Task<int> RunAsync(Uri url, string pid)
    {
        foreach (var call in PeeredCall.All) await RunAsync(url, pid, call);
        return 0;
    }

    private static async Task RunAsync(Uri url, string pid, PeeredCall call)
    {
        var body = call.Body();
        await PrepareAsync(url, call, body);
        await RateAsync(url, call.Path, body);
        await RateAsync(url, call.PeerPath, body);
        ServerProcess server = new(pid);
        List<double> own = [];
        List<double> peer = [];
        List<double> ownCpu = [];
        List<double> peerCpu = [];
        for (var i = 0; i < Rounds; i++)
        {
            await MeasureAsync(call.Path, own, ownCpu);
            await MeasureAsync(call.PeerPath, peer, peerCpu);
        }

        Figures.Print($"POST {call.Path}, requests/s", own);
        Figures.Print("peer, requests/s", peer);
        Figures.Print("ratio of requests/s", [.. own.Zip(peer, static (a, b) => a / b)], "N3");
        Figures.Print($"POST {call.Path}, processor time a request, µs", ownCpu, "N1");
        Figures.Print("peer, processor time a request, µs", peerCpu, "N1");
        Figures.Print("ratio of processor time, peer / call", [.. peerCpu.Zip(ownCpu, static (a, b) => a / b)], "N3");

        async Task MeasureAsync(string path, List<double> rates, List<double> cpu)
        {
            var before = server.CpuSeconds();
            var rate = await RateAsync(url, path, body);
            rates.Add(rate);
            cpu.Add((server.CpuSeconds() - before) / (rate * Round.TotalSeconds) * 1e6);
        }
    }

    private static async Task PrepareAsync(Uri url, PeeredCall call, byte[] body)
    {
        using HttpClient client = new() { BaseAddress = url };
        using ByteArrayContent request = new(body) { Headers = { ContentType = new("application/json") } };
        using var answer = await client.PostAsync(new Uri(call.Path, UriKind.Relative), request);
        answer.EnsureSuccessStatusCode();
        using ByteArrayContent prepared = new(await answer.Content.ReadAsByteArrayAsync()) { Headers = { ContentType = new("application/json") } };
        using var done = await client.PostAsync(new Uri(call.PreparePath, UriKind.Relative), prepared);
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
