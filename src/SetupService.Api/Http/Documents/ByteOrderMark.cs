namespace SetupService.Api.Http.Documents;

/// <summary>Passes over the mark some editors put before UTF-8 text (RFC 8259, section 8.1, lets a reader ignore it).</summary>
internal static class ByteOrderMark
{
    public static ReadOnlySpan<byte> Skip(ReadOnlySpan<byte> utf8) =>
        utf8.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
}
