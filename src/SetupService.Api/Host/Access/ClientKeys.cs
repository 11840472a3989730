using System.Buffers;
using System.Buffers.Text;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using SetupService.Api.Host.Settings;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Host.Access;

/// <summary>
/// Knows the clients by their keys and by what they have signed. Keys are 256 random bits, written in base64url; what is kept of one is its HMAC-SHA-256 (RFC 2104,
/// FIPS 180-4) under a secret of the service, and it is compared in constant time.
/// </summary>
internal sealed class ClientKeys : IDisposable
{
    public const int KeyBytes = 32;

    private const int LongestText = 4096;

    private static readonly SearchValues<char> OfNames = SearchValues.Create("abcdefghijklmnopqrstuvwxyz0123456789-");
    private static readonly SearchValues<char> OfHexadecimal = SearchValues.Create("0123456789abcdefABCDEF");

    private readonly byte[] _secret;
    private readonly Client[] _clients;

    // Kept for each thread: to make one for every key costs more than the hash.
    private readonly ThreadLocal<IncrementalHash> _hmacs;
    private readonly TimeProvider _clock;
    private readonly long _longestSignedSeconds;

    /// <summary>The clients of the settings.</summary>
    /// <exception cref="SettingException">A name, key or secret is none.</exception>
    public ClientKeys(AccessSettings settings, QuotaSettings quota, TimeProvider clock)
    {
        _clock = clock;
        _longestSignedSeconds = settings.LongestSignedSeconds;
        _secret = settings.HashSecret is { } secret ? Secret("Access:HashSecret", secret) : [];
        if (_secret.Length == 0 && settings.Clients.Count > 0)
            throw new SettingException("Access:HashSecret is missing: keys of clients are kept under it. The command new-key makes one.");
        _hmacs = new(() => IncrementalHash.CreateHMAC(HashAlgorithmName.SHA256, _secret), trackAllValues: true);
        _clients = [.. settings.Clients.Select(pair => new Client(pair.Key, pair.Value, quota, clock))];
    }

    /// <summary>True where clients have keys, so that a caller needs one.</summary>
    public bool AreNeeded => _clients.Length > 0;

    /// <summary>What is kept of a key.</summary>
    public static byte[] Hash(ReadOnlySpan<byte> secret, ReadOnlySpan<byte> key) => HMACSHA256.HashData(secret, key);

    /// <summary>The client of a key.</summary>
    public bool TryFind(string text, [NotNullWhen(true)] out Caller? caller)
    {
        caller = null;
        Span<byte> key = stackalloc byte[KeyBytes + 3];
        if (text.Length > KeyBytes * 2 || !Base64Url.IsValid(text, out var length) || length != KeyBytes || !Base64Url.TryDecodeFromChars(text, key, out var written) || written != KeyBytes)
            return false;

        Span<byte> hash = stackalloc byte[HMACSHA256.HashSizeInBytes];
        var hmac = _hmacs.Value!;
        hmac.AppendData(key[..KeyBytes]);
        hmac.GetHashAndReset(hash);
        key.Clear();

        // All are looked at, so that the time tells nothing of which it was.
        foreach (var client in _clients)
        {
            foreach (var kept in client.Hashes)
            {
                if (CryptographicOperations.FixedTimeEquals(kept, hash))
                    caller = client.Caller;
            }
        }

        return caller is not null;
    }

    /// <summary>The client that has signed an address; else why it does not hold.</summary>
    /// <param name="path">The path.</param>
    /// <param name="query">The query as it was sent, from its question mark on.</param>
    /// <param name="caller">The client.</param>
    /// <param name="reason">Why the address does not hold.</param>
    public bool TryFindSigner(string path, string query, [NotNullWhen(true)] out Caller? caller, [NotNullWhen(false)] out string? reason)
    {
        const string Mark = "&signature=";
        caller = null;
        var at = query.LastIndexOf(Mark, StringComparison.Ordinal);
        var (name, digits) = at < 0 ? ("", "") : Split(query[(at + Mark.Length)..]);
        if (at < 0 || path.Length + at > LongestText || digits.Length != 2 * HMACSHA256.HashSizeInBytes)
        {
            reason = "signature must be the last parameter: the client's name, a dot, and 64 hexadecimal digits.";
            return false;
        }

        var now = _clock.GetUtcNow().ToUnixTimeSeconds();
        if (ExpiryOf(query[..at]) is not { } expires)
            reason = "expires is missing in what was signed: give it, in seconds since 1970-01-01 UTC, before signature.";
        else if (expires <= now)
            reason = "the address has expired; sign a new one.";
        else if (expires > now + _longestSignedSeconds)
            reason = string.Create(CultureInfo.InvariantCulture, $"the address holds for longer than the {_longestSignedSeconds} s that are allowed.");
        else
            reason = Array.Find(_clients, client => client.Caller.Name == name) is { } signer && signer.HasSigned(path + query[..at], digits, out caller) ? null : "the signature is not that of a client for this path and query.";
        return reason is null;
    }

    public void Dispose()
    {
        foreach (var hmac in _hmacs.Values)
            hmac.Dispose();
        _hmacs.Dispose();
    }

    private static (string Name, string Digits) Split(string signature)
    {
        var dot = signature.IndexOf('.', StringComparison.Ordinal);
        return dot < 0 ? ("", "") : (signature[..dot], signature[(dot + 1)..]);
    }

    private static long? ExpiryOf(string query)
    {
        const string Name = "expires=";
        foreach (var part in query.TrimStart('?').Split('&'))
        {
            if (part.StartsWith(Name, StringComparison.Ordinal))
                return long.TryParse(part.AsSpan(Name.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) ? seconds : null;
        }

        return null;
    }

    private static byte[] Secret(string setting, string text)
    {
        var bytes = new byte[text.Length];
        return Convert.TryFromBase64String(text, bytes, out var length) && length >= KeyBytes
            ? bytes[..length]
            : throw new SettingException($"{setting} is no secret: at least {KeyBytes} random bytes in base64. The command new-key makes one.");
    }

    private sealed class Client
    {
        private readonly byte[]? _signingSecret;

        public Client(string name, ClientSettings settings, QuotaSettings quota, TimeProvider clock)
        {
            var at = "Access:Clients:" + name;
            if (name.Length is 0 or > 64 || name.AsSpan().ContainsAnyExcept(OfNames))
                throw new SettingException($"{at}: a client's name has 1 to 64 small letters, digits and hyphens.");
            if (settings.Keys.Length is 0 or > AccessSettings.MostKeys)
                throw new SettingException($"{at}:Keys has {settings.Keys.Length} keys; 1 or {AccessSettings.MostKeys} are allowed, as the command new-key writes them.");
            Hashes = [.. settings.Keys.Select((text, i) => HashOf($"{at}:Keys:{i}", text))];
            _signingSecret = settings.SigningSecret is { } secret ? Secret(at + ":SigningSecret", secret) : null;
            Caller = new(name, new WorkQuota(
                new QuotaSettings
                {
                    BurstUnits = Positive(at + ":BurstUnits", settings.BurstUnits) ?? quota.BurstUnits,
                    BurstSeconds = quota.BurstSeconds,
                    SustainedUnits = Positive(at + ":SustainedUnits", settings.SustainedUnits) ?? quota.SustainedUnits,
                    SustainedSeconds = quota.SustainedSeconds,
                    StepsPerUnit = quota.StepsPerUnit,
                    LinesPerUnit = quota.LinesPerUnit,
                    PairsPerUnit = quota.PairsPerUnit,
                },
                clock));
        }

        public Caller Caller { get; }

        public byte[][] Hashes { get; }

        public bool HasSigned(string text, string digits, [NotNullWhen(true)] out Caller? caller)
        {
            caller = null;
            if (_signingSecret is null || !IsHexadecimal(digits))
                return false;
            if (CryptographicOperations.FixedTimeEquals(HMACSHA256.HashData(_signingSecret, Encoding.UTF8.GetBytes(text)), Convert.FromHexString(digits)))
                caller = Caller;
            return caller is not null;
        }

        private static byte[] HashOf(string setting, string text) =>
            text.Length == 2 * HMACSHA256.HashSizeInBytes && IsHexadecimal(text)
                ? Convert.FromHexString(text)
                : throw new SettingException($"{setting} is no kept key: 64 hexadecimal digits, as the command new-key writes them.");

        private static bool IsHexadecimal(string text) => !text.AsSpan().ContainsAnyExcept(OfHexadecimal);

        private static long? Positive(string setting, long? units) =>
            units is < 1 ? throw new SettingException($"{setting} must be at least 1.") : units;
    }
}
