namespace SetupService.Api.Http;

/// <summary>The caps every request is held to, with the reason for each.</summary>
public static class ServiceLimits
{
    /// <summary>Largest request body in bytes (256 KiB); a whole car with every point named takes about 4 KiB.</summary>
    public const int BodyBytes = 262_144;

    /// <summary>
    /// Most bytes of a body on the wire, at which the server itself stops reading. More than <see cref="BodyBytes"/>,
    /// because it counts the framing of a chunked body too.
    /// </summary>
    public const int BodyBytesOnTheWire = 2 * BodyBytes;

    /// <summary>Deepest nesting of objects and arrays in a body; the deepest document here nests seven levels.</summary>
    public const int JsonDepth = 32;

    /// <summary>Most faults listed in one answer; what is beyond is counted.</summary>
    public const int FaultsListed = 100;

    /// <summary>Longest piece of a caller's text quoted back in a message, in characters.</summary>
    public const int QuotedLength = 40;

    /// <summary>Longest query string a call reads, in characters.</summary>
    public const int QueryLength = 2_048;
}
