using System.Globalization;
using System.Net;
using SetupService.Api.Host.Settings;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Host.Access;

/// <summary>
/// Finds who calls and what it may still ask for, before any work: by its key, by an address it has signed, or by where it calls from on a service that is open on
/// purpose. Health, version and pages about the calls are everybody's.
/// </summary>
internal sealed class AccessCheck(ClientKeys keys, AccessSettings access, TelemetrySettings telemetry, OpenCallers open)
{
    /// <summary>The header with the key.</summary>
    public const string Header = Caller.KeyHeader;

    public const string PolicyHeader = "RateLimit-Policy";
    public const string LimitHeader = "RateLimit";

    /// <summary>The refusal of a request; null where it may go on.</summary>
    public Problem? Find(HttpContext context)
    {
        if (!IsGuarded(context) || !(keys.AreNeeded || access.AllowWithoutKeys))
            return null;

        Caller? caller;
        if (!keys.AreNeeded)
            caller = open.From(context.Connection.RemoteIpAddress);
        else if (!TryFind(context, out caller, out var problem))
            return problem;

        context.Features.Set(caller);
        return caller!.Quota is { } quota ? Limit(context.Response, quota) : null;
    }

    /// <summary>True for the calls, and for metrics unless they are asked for at their own port.</summary>
    private bool IsGuarded(HttpContext context)
    {
        var path = context.Request.Path;
        return path.StartsWithSegments("/v1") || (path.StartsWithSegments("/metrics") && (telemetry.MetricsPort == 0 || context.Connection.LocalPort != telemetry.MetricsPort));
    }

    private bool TryFind(HttpContext context, out Caller? caller, out Problem? problem)
    {
        problem = null;
        var sent = context.Request.Headers[Header];
        if (sent.Count == 1 && keys.TryFind(sent[0]!, out caller))
            return true;

        caller = null;
        if (sent.Count > 0)
            problem = Refused(context, Header, FaultCodes.UnknownKey, "The key is none of a client of this service.");
        else if (context.Request.Query.ContainsKey(SignedAddress.Signature.Name) && context.GetEndpoint()?.Metadata.GetMetadata<SignedAddress>() is not null)
            problem = keys.TryFindSigner(context.Request.Path.ToUriComponent(), context.Request.QueryString.Value!, out caller, out var reason) ? null : Refused(context, SignedAddress.Signature.Name, FaultCodes.BadSignature, char.ToUpperInvariant(reason[0]) + reason[1..]);
        else
            problem = Refused(context, Header, FaultCodes.Required, "The header Api-Key is missing: this service answers clients that have a key.");
        return problem is null;
    }

    private static Problem Refused(HttpContext context, string parameter, string code, string message)
    {
        // RFC 9110, section 15.5.2: a 401 names what it asks for.
        context.Response.Headers.WWWAuthenticate = $"{Header} realm=\"setup-service\"";
        return Problem.Create(ProblemTypes.KeyNeeded, message, [Fault.ForParameter(parameter, code, message)]);
    }

    /// <summary>Takes the unit of a request and says what is left (IETF draft-ietf-httpapi-ratelimit-headers, its structured form).</summary>
    private static Problem? Limit(HttpResponse response, WorkQuota quota)
    {
        var state = quota.TryBegin();
        response.Headers[PolicyHeader] = quota.Policy;
        response.Headers[LimitHeader] = string.Create(CultureInfo.InvariantCulture, $"\"{state.Name}\";r={state.UnitsLeft};t={state.Seconds}");
        if (state.IsAllowed)
            return null;

        response.Headers.RetryAfter = state.Seconds.ToString(CultureInfo.InvariantCulture);
        var message = string.Create(CultureInfo.InvariantCulture, $"The work allowed by the limit “{state.Name}” is used up; the next request may come in {state.Seconds} s.");
        return Problem.Create(ProblemTypes.TooManyRequests, message, [Fault.ForParameter(Header, FaultCodes.LimitReached, message)]);
    }
}

/// <summary>The callers of a service that is open on purpose, by their networks: each has a quota of its own. Holds a bounded number.</summary>
internal sealed class OpenCallers(QuotaSettings settings, TimeProvider clock)
{
    /// <summary>The most networks remembered; then those with a full quota are forgotten, and where none has one, all.</summary>
    public const int Capacity = 10_000;

    private readonly System.Collections.Concurrent.ConcurrentDictionary<UInt128, Caller> _known = new();

    /// <summary>The caller at an address.</summary>
    public Caller From(IPAddress? address)
    {
        var network = NetworkOf(address);
        if (_known.TryGetValue(network, out var caller))
            return caller;
        if (_known.Count >= Capacity)
            Forget();
        return _known.GetOrAdd(network, static (_, one) => new Caller("-", new WorkQuota(one.settings, one.clock)), (settings, clock));
    }

    private void Forget()
    {
        foreach ((var network, var caller) in _known)
        {
            if (caller.Quota!.IsFull)
                _known.TryRemove(network, out _);
        }

        if (_known.Count >= Capacity)
            _known.Clear();
    }

    /// <summary>An IPv4 address, or the first 64 bits of an IPv6 address, within which a household's or a shop's machines lie (RFC 4291, section 2.5.4).</summary>
    private static UInt128 NetworkOf(IPAddress? address)
    {
        if (address is null)
            return 0;
        Span<byte> bytes = stackalloc byte[16];
        var mapped = address.MapToIPv6();
        mapped.TryWriteBytes(bytes, out _);
        if (!mapped.IsIPv4MappedToIPv6)
            bytes[8..].Clear();
        return System.Buffers.Binary.BinaryPrimitives.ReadUInt128BigEndian(bytes);
    }
}
