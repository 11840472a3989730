namespace SetupService.Api.Http;

/// <summary>What is fixed for every request; <see cref="CapSettings"/> has what an operator may set.</summary>
public static class ServiceLimits
{
    /// <summary>Deepest nesting of objects and arrays in a body; the deepest document here nests seven levels.</summary>
    public const int JsonDepth = 32;

    /// <summary>Most faults listed in one answer; what is beyond is counted.</summary>
    public const int FaultsListed = 100;

    /// <summary>Longest piece of a caller's text quoted back in a message, in characters.</summary>
    public const int QuotedLength = 40;
}
