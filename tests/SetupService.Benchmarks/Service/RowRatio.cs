using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Headers;
using DuckDB.NET.Data;

namespace SetupService.Benchmarks.Service;

/// <summary>Rows a second of a CSV batch over HTTP against DuckDB doing bare arithmetic on the same file with one thread.</summary>
internal static class RowRatio
{
    private const int Count = 1_000_000;
    private const int Rounds = 5;

    public static async Task<int> RunAsync(Uri url)
    {
        string table = Path.GetTempFileName();
        string output = Path.GetTempFileName();
        await File.WriteAllLinesAsync(table, Catalogue.Rows(Count));
        await RateAsync(url, table, output);
        Duck(table, output);
        List<double> own = [];
        List<double> peer = [];
        for (int i = 0; i < Rounds; i++)
        {
            own.Add(await RateAsync(url, table, output));
            peer.Add(Duck(table, output));
        }

        Figures.Print("CSV over HTTP, rows/s", own);
        Figures.Print("DuckDB, rows/s", peer);
        Figures.Print("ratio", [.. own.Zip(peer, static (a, b) => a / b)], "N3");
        File.Delete(table);
        File.Delete(output);
        return 0;
    }

    private static async Task<double> RateAsync(Uri url, string table, string output)
    {
        using HttpClient client = new() { Timeout = Timeout.InfiniteTimeSpan };
        using StringContent car = new(Catalogue.Car, new MediaTypeHeaderValue("application/json"));
        using StreamContent candidates = new(File.OpenRead(table), 65_536) { Headers = { ContentType = new MediaTypeHeaderValue("text/csv") } };
        using MultipartFormDataContent form = new() { { car, "car" }, { candidates, "candidates" } };
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri(url, "/v1/fitment/batch")) { Content = form };
        Stopwatch watch = Stopwatch.StartNew();
        using HttpResponseMessage answer = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);
        answer.EnsureSuccessStatusCode();
        await using (FileStream file = File.Create(output))
            await answer.Content.CopyToAsync(file);
        double seconds = watch.Elapsed.TotalSeconds;
        string last = File.ReadLines(output).Last();
        if (!last.StartsWith(string.Create(CultureInfo.InvariantCulture, $"{Count + 1},part-{Count - 1},"), StringComparison.Ordinal))
            throw new InvalidOperationException(last);
        return Count / seconds;
    }

    private static double Duck(string table, string output)
    {
        using DuckDBConnection connection = new("DataSource=:memory:");
        connection.Open();
        using DuckDBCommand command = connection.CreateCommand();
        command.CommandText = "SET threads = 1";
        command.ExecuteNonQuery();

        // Section width, edges, gaps and diameter change in the plainest arithmetic, straight from file to file.
        command.CommandText = $"""
            COPY (
              SELECT id,
                     w + 0.4 * (rimWidthIn - 7.5) * 25.4 AS section,
                     14 - (section / 2 + offsetMm - 45 - 112.5) AS inboard,
                     18 - (section / 2 - offsetMm + 45 - 112.5) AS outboard,
                     432 + 2 * w * a / 100 - 634 AS diameter
              FROM (
                SELECT *, CAST(substr(marking, 1, 3) AS DOUBLE) AS w, CAST(substr(marking, 5, 2) AS DOUBLE) AS a
                FROM read_csv('{table}', header = true)
              )
            ) TO '{output}' (HEADER)
            """;
        Stopwatch watch = Stopwatch.StartNew();
        command.ExecuteNonQuery();
        return Count / watch.Elapsed.TotalSeconds;
    }
}
