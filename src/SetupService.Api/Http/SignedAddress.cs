using SetupService.Api.Http.Queries;

namespace SetupService.Api.Http;

/// <summary>Marks a GET that may be called by an address a client has signed, without its key.</summary>
internal sealed class SignedAddress
{
    private const int LongestName = 64;
    private const int SignatureDigits = 64;

    /// <summary>Until when the address holds.</summary>
    public static NumberParameter Expires { get; } = new("expires", "Of a signed address: until when it holds, in seconds since 1970-01-01 UTC.", 0, 1e11, 1798761600) { IsWhole = true };

    /// <summary>The client and its signature.</summary>
    public static TextParameter Signature { get; } = new(
        "signature", "Of a signed address, last in it: the client's name, a dot, and HMAC-SHA-256 in hexadecimal over path and query before &signature=.", LongestName + 1 + SignatureDigits, "shop.5f1c…");

    public static SignedAddress Instance { get; } = new();
}
