using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Http.Headers;

namespace SetupService.Benchmarks.Service;

/// <summary>Lines a second of an NDJSON batch over HTTP against a program that only reads and writes the lines; and the server's memory.</summary>
internal static class LineRatio
{
    private const int Few = 200_000;
    private const int Many = 2_000_000;
    private const int Rounds = 5;

    public static async Task<int> RunAsync(Uri url, string pid)
    {
        string few = Write(Few);
        string many = Write(Many);
        string output = Path.GetTempFileName();
        await RateAsync(url, few, Few, output);
        List<double> own = [];
        List<double> peer = [];
        for (int i = 0; i < Rounds; i++)
        {
            own.Add(await RateAsync(url, few, Few, output));
            peer.Add(Peer(few, output));
        }

        Figures.Print("NDJSON over HTTP, lines/s", own);
        Figures.Print("peer, lines/s", peer);
        Figures.Print("ratio", [.. own.Zip(peer, static (a, b) => a / b)], "N3");

        long afterFew = ResidentKib(pid);
        double rate = await RateAsync(url, many, Many, output);
        long afterMany = ResidentKib(pid);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"resident memory after {Few:N0} lines {afterFew / 1024.0:F1} MiB, after {Many:N0} lines {afterMany / 1024.0:F1} MiB, peak {PeakKib(pid) / 1024.0:F1} MiB ({rate:N0} lines/s)"));
        Array.ForEach([few, many, output], File.Delete);
        return 0;
    }

    private static string Write(int count)
    {
        string path = Path.GetTempFileName();
        File.WriteAllLines(path, Catalogue.Lines(count).Prepend(Catalogue.Car));
        return path;
    }

    private static async Task<double> RateAsync(Uri url, string input, int lines, string output)
    {
        using HttpClient client = new() { Timeout = Timeout.InfiniteTimeSpan };
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri(url, "/v1/fitment/batch"))
        {
            Content = new StreamContent(File.OpenRead(input), 65_536) { Headers = { ContentType = new MediaTypeHeaderValue("application/x-ndjson") } },
        };
        Stopwatch watch = Stopwatch.StartNew();
        using HttpResponseMessage answer = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);
        await using (FileStream file = File.Create(output))
            await answer.Content.CopyToAsync(file);
        double seconds = watch.Elapsed.TotalSeconds;
        string last = File.ReadLines(output).Last();
        string expected = string.Create(CultureInfo.InvariantCulture, $"\"lines\":{lines},\"succeeded\":{lines},");
        if (answer.StatusCode != HttpStatusCode.OK || !last.Contains(expected, StringComparison.Ordinal))
            throw new InvalidOperationException(last);
        return lines / seconds;
    }

    /// <summary>The peer in a process of its own, as the service is.</summary>
    private static double Peer(string input, string output)
    {
        string candidates = Path.GetTempFileName();
        File.WriteAllLines(candidates, File.ReadLines(input).Skip(1));
        using Process process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, ["read-and-write-lines", candidates, output]) { RedirectStandardOutput = true })!;
        string rate = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        File.Delete(candidates);
        return double.Parse(rate, CultureInfo.InvariantCulture);
    }

    private static long ResidentKib(string pid) => Status(pid, "VmRSS:");

    private static long PeakKib(string pid) => Status(pid, "VmHWM:");

    private static long Status(string pid, string name)
    {
        string line = File.ReadLines($"/proc/{pid}/status").Single(line => line.StartsWith(name, StringComparison.Ordinal));
        return long.Parse(line[name.Length..].Replace("kB", "", StringComparison.Ordinal).Trim(), CultureInfo.InvariantCulture);
    }
}
