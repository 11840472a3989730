using System.ComponentModel.DataAnnotations;

namespace SetupService.Api.Host.Settings;

/// <summary>Who may call. Without clients everybody may, and the service listens to this machine alone unless told otherwise.</summary>
public sealed class AccessSettings
{
    /// <summary>The most keys of a client: the one in use and its successor.</summary>
    public const int MostKeys = 2;

    /// <summary>True lets the service listen beyond this machine although no client has a key.</summary>
    public bool AllowWithoutKeys { get; set; }

    /// <summary>The secret under which keys are kept: at least 32 bytes in base64.</summary>
    public string? HashSecret { get; set; }

    /// <summary>The clients by their names: small letters, digits and hyphens.</summary>
    public Dictionary<string, ClientSettings> Clients { get; } = new(StringComparer.Ordinal);

    /// <summary>Longest time ahead to which an address may be signed, in seconds.</summary>
    [Range(1, 315_360_000)]
    public int LongestSignedSeconds { get; set; } = 2_678_400;
}

/// <summary>A client.</summary>
public sealed class ClientSettings
{
    /// <summary>HMAC-SHA-256 of its keys in hexadecimal; at most two, so that a key can be replaced while the old one still holds.</summary>
    public string[] Keys { get; set; } = [];

    /// <summary>The secret it signs addresses of pictures with: at least 32 bytes in base64. Without one it signs none.</summary>
    public string? SigningSecret { get; set; }

    /// <summary>Units it may ask for in Limits:BurstSeconds, in place of Limits:BurstUnits.</summary>
    public long? BurstUnits { get; set; }

    /// <summary>Units it may ask for in Limits:SustainedSeconds, in place of Limits:SustainedUnits.</summary>
    public long? SustainedUnits { get; set; }
}

/// <summary>Whose word about the caller's address is taken.</summary>
public sealed class ProxySettings
{
    /// <summary>Networks of proxies in front of the service, such as 10.0.0.0/8; the headers X-Forwarded-For and X-Forwarded-Proto of others are ignored.</summary>
    public string[] Networks { get; set; } = [];

    /// <summary>Proxies a request passes, one behind the other.</summary>
    [Range(1, 10)]
    public int Hops { get; set; } = 1;
}
