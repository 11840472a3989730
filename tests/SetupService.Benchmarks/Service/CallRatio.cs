using System.Diagnostics;

namespace SetupService.Benchmarks.Service;

/// <summary>
/// Requests a second of each peered call against its peer, turn by turn in one run. Where the native build runs too it answers the same requests in the same turns; its peer is that of the
/// service by JIT.
/// </summary>
internal static class CallRatio
{
    private const int Connections = 16;
    private const int Rounds = 9;
    private static readonly TimeSpan Round = TimeSpan.FromSeconds(3);

    // Long enough for the last tier of the JIT on a busy machine.
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(8);

    /// <summary>Measures.</summary>
    /// <param name="url">The service by JIT, with its peers.</param>
    /// <param name="pid">Its process.</param>
    /// <param name="native">The native build and its process; null = none.</param>
    /// <param name="only">The peers' names of the calls to measure; empty = all.</param>
    public static async Task<int> RunAsync(Uri url, string pid, (Uri Url, string Pid)? native, IReadOnlyList<string> only)
    {
        foreach (var call in PeeredCall.All.Where(call => only is [] || only.Contains(call.Peer))) await RunAsync(url, pid, native, call);
        return 0;
    }

    private static async Task RunAsync(Uri url, string pid, (Uri Url, string Pid)? native, PeeredCall call)
    {
        var body = call.Body();
        await PrepareAsync(url, call, body);
        List<Measured> all = [new($"POST {call.Path}", url, call.Path, new(pid)), new("peer", url, call.PeerPath, new(pid))];
        if (native is { } built) all.Add(new($"native POST {call.Path}", built.Url, call.Path, new(built.Pid)));
        foreach (var one in all) await RateAsync(one.Url, one.Path, body, WarmUp);
        for (var i = 0; i < Rounds; i++)
        {
            foreach (var one in all)
            {
                var before = one.Server.CpuSeconds();
                var rate = await RateAsync(one.Url, one.Path, body, Round);
                one.Rates.Add(rate);
                one.Cpu.Add((one.Server.CpuSeconds() - before) / (rate * Round.TotalSeconds) * 1e6);
            }
        }

        var peer = all[1];
        foreach (var one in all)
        {
            Figures.Print($"{one.Name}, requests/s", one.Rates);
            Figures.Print($"{one.Name}, processor time a request, µs", one.Cpu, "N1");
            if (one == peer) continue;
            Figures.Print($"{one.Name}, ratio of requests/s", [.. one.Rates.Zip(peer.Rates, static (a, b) => a / b)], "N3");
            Figures.Print($"{one.Name}, ratio of processor time, peer / call", [.. peer.Cpu.Zip(one.Cpu, static (a, b) => a / b)], "N3");
        }
    }

    private sealed record Measured(string Name, Uri Url, string Path, ServerProcess Server)
    {
        public List<double> Rates { get; } = [];

        public List<double> Cpu { get; } = [];
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

    private static async Task<double> RateAsync(Uri url, string path, byte[] body, TimeSpan length)
    {
        using CancellationTokenSource time = new(length);
        KeepAliveClient[] clients = [.. Enumerable.Range(0, Connections).Select(_ => new KeepAliveClient(url, path, body))];
        var watch = Stopwatch.StartNew();
        var answered = await Task.WhenAll(clients.Select(client => client.RunAsync(time.Token)));
        var rate = answered.Sum() / watch.Elapsed.TotalSeconds;
        Array.ForEach(clients, client => client.Dispose());
        return rate;
    }
}
