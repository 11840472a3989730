using System.Net.Http.Headers;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json;

namespace SetupService.Client;

/// <content>
/// Batches and catalogues. The service answers while it reads, and <see cref="HttpClient"/> reads over HTTP/1.1 only once it has sent everything: a long batch would
/// leave both waiting for each other. Lines therefore go in requests so small that the service's buffers hold each.
/// </content>
public sealed partial class SetupClient
{
    /// <summary>Largest table a call takes, bytes (512 KiB); a longer one is sent in pieces, each with the header.</summary>
    public const int TableBytes = 524_288;

    // Lines of one request together, bytes: the service takes up a megabyte before it has read any.
    private const int PieceBytes = 524_288;

    private static readonly MediaTypeHeaderValue Lines = new("application/x-ndjson");
    private static readonly MediaTypeHeaderValue Table = new("text/csv");

    /// <summary>Many candidates, as JSON lines, in as many requests as they take; any number of lines passes through little memory.</summary>
    /// <param name="lines">Cars (<see cref="BatchCarLine"/>), each for the candidates after it, and candidates (<see cref="BatchCandidateLine"/>).</param>
    /// <param name="detail">How much an answer line tells.</param>
    /// <param name="only">Verdicts wanted; null = all.</param>
    /// <param name="units">Units of texts.</param>
    /// <param name="cancellation">Ends the batch.</param>
    /// <returns>A line for each candidate and each bad line, in order. A summary ends the answers of each request.</returns>
    /// <exception cref="HttpRequestException">The answers of a request were cut off, or ended early by the service.</exception>
    public async IAsyncEnumerable<BatchAnswerLine> FitmentBatchAsync(
        IAsyncEnumerable<object> lines, FitmentBatchDetail? detail = null, IReadOnlyList<CheckStatus>? only = null, Units? units = null, [EnumeratorCancellation] CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var path = "v1/fitment/batch" + Query(("detail", detail), ("only", only), ("units", units));
        byte[]? car = null;
        var before = 0;
        LinePiece piece = new();
        await foreach (var line in lines.WithCancellation(cancellation).ConfigureAwait(false))
        {
            var bytes = Encode(line);
            if (piece.Length > 0 && piece.Length + bytes.Length > PieceBytes)
            {
                await foreach (var answer in AnswersAsync(path, piece, before, cancellation).ConfigureAwait(false))
                    yield return answer;
                before += piece.OwnLines;
                piece = new();

                // The car stays the same for the lines after it.
                if (car is not null && line is not BatchCarLine)
                    piece.Repeat(car);
            }

            piece.Add(bytes);
            if (line is BatchCarLine)
                car = bytes;
        }

        await foreach (var answer in AnswersAsync(path, piece, before, cancellation).ConfigureAwait(false))
            yield return answer;
    }

    /// <summary>Many candidates in one request, as a table of at most <see cref="TableBytes"/>.</summary>
    /// <param name="car">The car.</param>
    /// <param name="candidates">The table: a header of member names, then a candidate a row.</param>
    /// <param name="only">Verdicts wanted; null = all.</param>
    /// <param name="units">Units of texts.</param>
    /// <param name="cancellation">Ends the batch.</param>
    /// <returns>The table answered, a row a line, its header first.</returns>
    public IAsyncEnumerable<string> FitmentBatchCsvAsync(BatchCarLine car, string candidates, IReadOnlyList<CheckStatus>? only = null, Units? units = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(car);
        return ReadTextsAsync("v1/fitment/batch/csv" + Query(("only", only), ("units", units)), Form("car", Part(JsonSerializer.SerializeToUtf8Bytes(car, SerializerOptions), Json), candidates), cancellation);
    }

    /// <summary>A catalogue, as a table of at most <see cref="TableBytes"/>, against up to 1,000 cars.</summary>
    /// <param name="cars">The cars.</param>
    /// <param name="candidates">The candidates, a row each under a header of member names.</param>
    /// <param name="only">Verdicts wanted; null = all.</param>
    /// <param name="cancellation">Ends the catalogue.</param>
    /// <returns>A line for each pair wanted, in order of candidates, then cars; the last is the summary, without which the answer was cut off.</returns>
    public IAsyncEnumerable<CatalogueAnswerLine> FitmentCatalogueAsync(IEnumerable<CatalogueCarLine> cars, string candidates, IReadOnlyList<CheckStatus>? only = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(cars);
        byte[] lines = [.. cars.SelectMany(Encode)];
        return ReadLinesAsync<CatalogueAnswerLine>("v1/fitment/catalogue" + Query(("only", only)), Form("cars", Part(lines, Lines), candidates), cancellation);
    }

    private static byte[] Encode(object line) => [.. JsonSerializer.SerializeToUtf8Bytes(line, line.GetType(), SerializerOptions), (byte)'\n'];

    private static ByteArrayContent Part(byte[] bytes, MediaTypeHeaderValue type) => new(bytes) { Headers = { ContentType = type } };

    private static MultipartFormDataContent Form(string name, HttpContent cars, string candidates)
    {
        ArgumentNullException.ThrowIfNull(candidates);
        var table = Encoding.UTF8.GetBytes(candidates);
        if (table.Length > TableBytes)
            throw new ArgumentException($"The table has {table.Length} bytes; at most {TableBytes} go in one call. Send it in pieces, each with the header.", nameof(candidates));
        return new() { { cars, name }, { Part(table, Table), "candidates" } };
    }

    private async IAsyncEnumerable<BatchAnswerLine> AnswersAsync(string path, LinePiece piece, int before, [EnumeratorCancellation] CancellationToken cancellation)
    {
        var isEnded = false;
        await foreach (var answer in ReadLinesAsync<BatchAnswerLine>(path, Part(piece.ToArray(), Lines), cancellation).ConfigureAwait(false))
        {
            isEnded = answer.Summary is { IsComplete: true };
            if (answer.Line is { } line)
                answer.Line = line + before - piece.RepeatedLines;
            yield return answer;
        }

        if (!isEnded)
            throw new HttpRequestException("The answers of the batch are not complete; send the lines after the last one answered again.");
    }

    private async IAsyncEnumerable<T> ReadLinesAsync<T>(string path, HttpContent content, [EnumeratorCancellation] CancellationToken cancellation)
    {
        await foreach (var line in ReadTextsAsync(path, content, cancellation).ConfigureAwait(false))
            yield return JsonSerializer.Deserialize<T>(line, SerializerOptions)!;
    }

    private async IAsyncEnumerable<string> ReadTextsAsync(string path, HttpContent content, [EnumeratorCancellation] CancellationToken cancellation)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, path) { Content = content };
        using var response = await AskAsync(request, cancellation).ConfigureAwait(false);
        var stream = await response.Content.ReadAsStreamAsync(cancellation).ConfigureAwait(false);
        await using var _ = stream.ConfigureAwait(false);
        using StreamReader reader = new(stream, Encoding.UTF8);
        while (await reader.ReadLineAsync(cancellation).ConfigureAwait(false) is { } line)
            yield return line;
    }

    /// <summary>The lines of one request.</summary>
    private sealed class LinePiece
    {
        private readonly List<byte> _bytes = [];

        public int Length => _bytes.Count;

        public int OwnLines { get; private set; }

        public int RepeatedLines { get; private set; }

        public void Add(byte[] line)
        {
            _bytes.AddRange(line);
            OwnLines++;
        }

        /// <summary>The car of the request before, which the caller sent once.</summary>
        public void Repeat(byte[] car)
        {
            _bytes.AddRange(car);
            RepeatedLines++;
        }

        public byte[] ToArray() => [.. _bytes];
    }
}
