using System.IO.Compression;
using System.Text.Encodings.Web;
using System.Text.Json;
using SetupService.Api.Tests.Contract;

namespace SetupService.Api.Tests.Corpus;

/// <summary>The recorded calls of one operation: a gzip'd NDJSON file beside this source, an entry a line.</summary>
internal static class CorpusFile
{
    private const string Ending = ".ndjson.gz";

    private static readonly JsonSerializerOptions Web = new(JsonSerializerDefaults.Web) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The folder of the files, in the sources.</summary>
    public static string Folder { get; } = ContractFile.Path("../tests/SetupService.Api.Tests/Corpus");

    /// <summary>The recorded operations, by the names of their files.</summary>
    public static IReadOnlyList<string> Calls { get; } =
        [.. Directory.GetFiles(Folder, "*" + Ending).Select(file => System.IO.Path.GetFileName(file)[..^Ending.Length]).Order(StringComparer.Ordinal)];

    public static async Task<List<CorpusEntry>> ReadAsync(string call)
    {
        await using GZipStream text = new(File.OpenRead(PathOf(call)), CompressionMode.Decompress);
        using StreamReader lines = new(text);
        List<CorpusEntry> entries = [];
        while (await lines.ReadLineAsync() is { } line)
            entries.Add(JsonSerializer.Deserialize<CorpusEntry>(line, Web)!);
        return entries;
    }

    public static async Task WriteAsync(string call, IEnumerable<CorpusEntry> entries)
    {
        await using GZipStream text = new(File.Create(PathOf(call)), CompressionLevel.SmallestSize);
        await using StreamWriter lines = new(text) { NewLine = "\n" };
        foreach (var entry in entries)
            await lines.WriteLineAsync(JsonSerializer.Serialize(entry, Web));
    }

    private static string PathOf(string call) => System.IO.Path.Combine(Folder, call + Ending);
}
