using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace SetupService.Benchmarks.Service;

/// <summary>Lines a second of an NDJSON batch over HTTP against a program that only reads and writes the lines; and the server's memory.</summary>
internal static class LineRatio
{
    private const int Few = 200_000;
    private const int Many = 2_000_000;
    private const int Rounds = 5;

    public static async Task<int> RunAsync(Uri url, string pid)
    {
        ServerProcess server = new(pid);
        var few = Body(Few);
        var candidates = Path.GetTempFileName();
        var output = Path.GetTempFileName();
        await File.WriteAllLinesAsync(candidates, Catalogue.Lines(Few));
        await RateAsync(url, few, Few);
        List<double> own = [];
        List<double> peer = [];
        for (var i = 0; i < Rounds; i++)
        {
            own.Add(await RateAsync(url, few, Few));
            peer.Add(Peer(candidates, output));
        }

        Figures.Print("NDJSON over HTTP, lines/s", own);
        Figures.Print("peer, lines/s", peer);
        Figures.Print("ratio", [.. own.Zip(peer, static (a, b) => a / b)], "N3");

        var afterFew = server.ResidentMib();
        var rate = await RateAsync(url, Body(Many), Many);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"resident memory after {Few:N0} lines {afterFew:F1} MiB, after {Many:N0} lines {server.ResidentMib():F1} MiB, peak {server.PeakMib():F1} MiB ({rate:N0} lines/s)"));
        Array.ForEach([candidates, output], File.Delete);
        return 0;
    }

    private static byte[] Body(int count) => Encoding.UTF8.GetBytes(string.Join('\n', Catalogue.Lines(count).Prepend(Catalogue.Car)) + "\n");

    private static async Task<double> RateAsync(Uri url, byte[] body, int lines)
    {
        (var seconds, var tail) = await StreamClient.PostAsync(url, "/v1/fitment/batch", "application/x-ndjson", body);
        var expected = string.Create(CultureInfo.InvariantCulture, $"\"lineCount\":{lines},\"answeredCount\":{lines},");
        return tail.Contains(expected, StringComparison.Ordinal) ? lines / seconds : throw new InvalidOperationException(tail);
    }

    /// <summary>The peer in a process of its own, as the service is.</summary>
    private static double Peer(string candidates, string output)
    {
        using var process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, ["read-and-write-lines", candidates, output]) { RedirectStandardOutput = true })!;
        var rate = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return double.Parse(rate, CultureInfo.InvariantCulture);
    }
}
