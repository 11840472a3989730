using System.Diagnostics;
using System.Globalization;
using System.Text;
using DuckDB.NET.Data;

namespace SetupService.Benchmarks.Service;

/// <summary>Rows a second of a CSV batch over HTTP against DuckDB doing bare arithmetic on the same file with one thread.</summary>
internal static class RowRatio
{
    private const int Count = 1_000_000;
    private const int Rounds = 5;

    public static async Task<int> RunAsync(Uri url)
    {
        var table = Path.GetTempFileName();
        var output = Path.GetTempFileName();
        await File.WriteAllLinesAsync(table, Catalogue.Rows(Count));
        var bytes = await File.ReadAllBytesAsync(table);
        await RateAsync(url, bytes);
        Duck(table, output);
        List<double> own = [];
        List<double> peer = [];
        for (var i = 0; i < Rounds; i++)
        {
            own.Add(await RateAsync(url, bytes));
            peer.Add(Duck(table, output));
        }

        Figures.Print("CSV over HTTP, rows/s", own);
        Figures.Print("DuckDB, rows/s", peer);
        Figures.Print("ratio", [.. own.Zip(peer, static (a, b) => a / b)], "N3");
        File.Delete(table);
        File.Delete(output);
        return 0;
    }

    private static async Task<double> RateAsync(Uri url, byte[] table)
    {
        const string boundary = "--a-boundary\r\nContent-Disposition: form-data; name=";
        var head = Encoding.UTF8.GetBytes(
            $"{boundary}car\r\nContent-Type: application/json\r\n\r\n{Catalogue.Car}\r\n{boundary}candidates\r\nContent-Type: text/csv\r\n\r\n");
        var foot = Encoding.UTF8.GetBytes("\r\n--a-boundary--\r\n");
        (var seconds, var tail) = await StreamClient.PostAsync(
            url, "/v1/fitment/batch/csv", "multipart/form-data; boundary=a-boundary", head, table, foot);
        var expected = string.Create(CultureInfo.InvariantCulture, $"\n{Count + 1},part-{Count - 1},");
        return tail.Contains(expected, StringComparison.Ordinal) ? Count / seconds : throw new InvalidOperationException(tail);
    }

    private static double Duck(string table, string output)
    {
        using DuckDBConnection connection = new("DataSource=:memory:");
        connection.Open();
        using var command = connection.CreateCommand();
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
        var watch = Stopwatch.StartNew();
        command.ExecuteNonQuery();
        return Count / watch.Elapsed.TotalSeconds;
    }
}
