using System.ComponentModel.DataAnnotations;
using System.Globalization;

namespace SetupService.Api.Http;

/// <summary>The largest that is read of a caller at once. Each bounds memory; what is larger is refused and told the cap.</summary>
public sealed class CapSettings
{
    /// <summary>
    /// Most connections at once at each address listened at; a further one is closed. At most half of the files the process may have open, less some for its own: with none
    /// left to open the server would try to take the next connection over and over.
    /// </summary>
    [Range(1, 1_000_000)]
    public int Connections { get; set; } = 5000;

    /// <summary>Most bytes of a request's JSON body; a whole car with every point named takes about 4 KiB.</summary>
    [Range(4096, 67_108_864)]
    public int BodyBytes { get; set; } = 262_144;

    /// <summary>Most bytes of a line of a batch or a catalogue; a whole car takes about 4 KiB.</summary>
    [Range(1024, 16_777_216)]
    public int LineBytes { get; set; } = 65_536;

    /// <summary>Most characters of a query string.</summary>
    [Range(256, 8000)]
    public int QueryLength { get; set; } = 2_048;

    /// <summary>Most cars of a catalogue's request, which are held in memory; the number of candidates is not limited.</summary>
    [Range(1, 100_000)]
    public int CatalogueCars { get; set; } = 1000;

    /// <summary>Most bytes of the lines of these cars.</summary>
    [Range(4096, 1_073_741_824)]
    public int CatalogueCarBytes { get; set; } = 4_194_304;

    /// <summary>Most bytes that tell what is wrong with these lines, held until the candidates come: as many, but never so few that one line's faults would not go in.</summary>
    internal int CatalogueFaultBytes => Math.Max(CatalogueCarBytes, 1 << 20);

    /// <summary>
    /// Most bytes of a body on the wire, at which the server itself stops reading. More than <see cref="BodyBytes"/>,
    /// because it counts the framing of a chunked body too.
    /// </summary>
    internal long BodyBytesOnTheWire => 2L * BodyBytes;

    /// <summary>What the description says of the caps.</summary>
    internal static IReadOnlyList<Func<CapSettings, string>> Sentences { get; } =
        [static caps => caps.OfBody, static caps => caps.OfBodyAndLine, static caps => caps.OfLine, static caps => caps.OfCars, static caps => caps.OfQuery];

    /// <summary>The cap of a body, as a sentence.</summary>
    internal string OfBody => string.Create(CultureInfo.InvariantCulture, $"A body may have at most {BodyBytes} bytes.");

    /// <summary>The caps of a body and of a line, as the end of a sentence.</summary>
    internal string OfBodyAndLine => string.Create(CultureInfo.InvariantCulture, $"one may have {BodyBytes} bytes, a line of a batch or catalogue {LineBytes}.");

    /// <summary>The cap of a line, as a sentence.</summary>
    internal string OfLine => string.Create(CultureInfo.InvariantCulture, $"A line or row may have at most {LineBytes} bytes.");

    /// <summary>The caps of the cars of a catalogue, as the beginning of a sentence.</summary>
    internal string OfCars => string.Create(CultureInfo.InvariantCulture, $"The part cars may have {CatalogueCars} cars and {CatalogueCarBytes} bytes");

    /// <summary>The cap of a query string, as a sentence.</summary>
    internal string OfQuery => string.Create(CultureInfo.InvariantCulture, $"A query string may have at most {QueryLength} characters.");

    /// <summary>The caps a request is held to.</summary>
    internal static CapSettings From(HttpContext context) => context.RequestServices.GetRequiredService<CapSettings>();
}
