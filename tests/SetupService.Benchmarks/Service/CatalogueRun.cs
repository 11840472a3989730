using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace SetupService.Benchmarks.Service;

/// <summary>The nightly job over HTTP: 50,000 candidates against 20 cars in one request, what passes or is a caution sent back; and the server's memory over ten times as many.</summary>
internal static class CatalogueRun
{
    private const int Cars = 20;
    private const int Few = 50_000;
    private const int Many = 500_000;
    private const int Rounds = 5;
    private const int Circles = 17;

    public static async Task<int> RunAsync(Uri url, string pid)
    {
        ServerProcess server = new(pid);
        await TimeAsync(url, Few, Circles);
        await MeasureAsync(url, server, Circles, "a seventeenth of the wheels on each hub");
        await MeasureAsync(url, server, 1, "every wheel on every hub");
        var afterFew = server.ResidentMib();
        var (seconds, _, _) = await TimeAsync(url, Many, Circles);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"resident memory after {Few:N0} candidates {afterFew:F1} MiB, after {Many:N0} {server.ResidentMib():F1} MiB, peak {server.PeakMib():F1} MiB ({seconds:F2} s)"));
        return 0;
    }

    private static async Task MeasureAsync(Uri url, ServerProcess server, int circles, string what)
    {
        List<double> seconds = [], cpu = [];
        var kept = 0L;
        for (var i = 0; i < Rounds; i++)
        {
            var before = server.CpuSeconds();
            (var time, kept, _) = await TimeAsync(url, Few, circles);
            seconds.Add(time);
            cpu.Add(server.CpuSeconds() - before);
        }

        Figures.Print($"{Few:N0} candidates x {Cars} cars over HTTP, {what}, {kept:N0} pairs kept, s", seconds, "N2");
        Figures.Print("the server's processor time, s", cpu, "N2");
    }

    private static async Task<(double Seconds, long Kept, string Tail)> TimeAsync(Uri url, int candidates, int circles)
    {
        const string boundary = "--a-boundary\r\nContent-Disposition: form-data; name=";
        var head = Encoding.UTF8.GetBytes(
            $"{boundary}cars\r\nContent-Type: application/x-ndjson\r\n\r\n{CarLines(circles)}\r\n{boundary}candidates\r\nContent-Type: application/x-ndjson\r\n\r\n");
        var lines = Encoding.UTF8.GetBytes(string.Join('\n', Catalogue.Lines(candidates).Select((line, i) => line.Replace("5x108", Circle(i % circles), StringComparison.Ordinal))));
        var foot = Encoding.UTF8.GetBytes("\r\n--a-boundary--\r\n");
        (var seconds, var tail) = await StreamClient.PostAsync(
            url, "/v1/fitment/catalogue?only=pass,caution", "multipart/form-data; boundary=a-boundary", head, lines, foot);
        var summary = tail.IndexOf("{\"summary\"", StringComparison.Ordinal) is var at and >= 0
            ? JsonNode.Parse(tail[at..(tail.IndexOf("}}", at, StringComparison.Ordinal) + 2)])!["summary"]!
            : throw new InvalidOperationException(tail);
        return (long)summary["answeredCount"]! == (long)candidates * Cars
            ? (seconds, (long)summary["verdicts"]!["passCount"]! + (long)summary["verdicts"]!["cautionCount"]!, tail)
            : throw new InvalidOperationException(tail);
    }

    private static string CarLines(int circles) => string.Concat(Enumerable.Range(0, Cars).Select(i =>
    {
        var car = JsonNode.Parse(Catalogue.Car)!.AsObject();
        car["id"] = i;
        car["vehicle"]!["front"]!["hub"]!["boltCircle"] = Circle(i % circles);
        car["vehicle"]!["front"]!["wheel"]!["boltCircle"] = Circle(i % circles);
        return car.ToJsonString() + "\n";
    }));

    private static string Circle(int number) => string.Create(CultureInfo.InvariantCulture, $"5x{108 + number}");
}
