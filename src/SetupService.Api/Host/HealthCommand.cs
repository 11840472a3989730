namespace SetupService.Api.Host;

/// <summary>
/// The command <c>health [URL]</c>: asks the service that runs beside it, under the same settings, whether it takes requests. For containers, whose image has nothing else to ask with.
/// </summary>
internal static class HealthCommand
{
    public const string Name = "health";

    private static readonly TimeSpan Timeout = TimeSpan.FromSeconds(3);

    /// <summary>Asks once; the exit code: 0 = ready, 1 = not ready or not answered, 2 = there is no address to ask.</summary>
    /// <param name="args">The command, and the service's address where it is not to be taken from the settings.</param>
    /// <param name="output">Where it says what it found.</param>
    public static int Run(string[] args, TextWriter output)
    {
        var address = args.Length > 1 ? args[1] : Address(WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory }).Configuration);
        if (!Uri.TryCreate(address, UriKind.Absolute, out var service) || service.Scheme is not ("http" or "https"))
        {
            output.WriteLine($"usage: {Name} URL; the settings name no http address of the service");
            return 2;
        }

        using HttpClient client = new() { Timeout = Timeout };
        try
        {
            using HttpRequestMessage request = new(HttpMethod.Get, new Uri(service, "/health/ready"));
            using var answer = client.Send(request);
            output.WriteLine($"{request.RequestUri}: {(int)answer.StatusCode}");
            return answer.IsSuccessStatusCode ? 0 : 1;
        }
        catch (Exception fault) when (fault is HttpRequestException or OperationCanceledException)
        {
            output.WriteLine($"{service}: {fault.Message}");
            return 1;
        }
    }

    /// <summary>
    /// An address without TLS at which the settings let the service listen, as it is reached from the same machine: that of the metrics, whose connections are counted by themselves,
    /// else the first; null = there is none. One that speaks HTTP/2 alone is not asked.
    /// </summary>
    public static string? Address(IConfiguration settings)
    {
        const string Protocols = nameof(Protocols);
        var ofAll = settings["Kestrel:EndpointDefaults:" + Protocols];
        List<string> addresses =
        [
            .. settings.GetSection("Kestrel:Endpoints").GetChildren()
                .Where(endpoint => !string.Equals(endpoint[Protocols] ?? ofAll, "Http2", StringComparison.OrdinalIgnoreCase))
                .Select(static endpoint => endpoint["Url"] ?? ""),
        ];
        if (!settings.GetSection("Kestrel:Endpoints").Exists())
        {
            addresses.AddRange((settings["urls"] ?? "").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries));
            if (addresses is [])
                addresses.AddRange((settings["http_ports"] ?? "").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(static port => $"http://+:{port}"));
            if (addresses is [] && settings["https_ports"] is null)
                addresses.Add(SetupServiceHost.DefaultUrl);
        }

        List<string> reachable = [.. addresses.Where(static address => address.StartsWith("http://", StringComparison.OrdinalIgnoreCase)).Select(Greeting.Reachable)];
        var metrics = ":" + settings["Telemetry:MetricsPort"];
        return reachable.Find(address => address.EndsWith(metrics, StringComparison.Ordinal)) ?? reachable.FirstOrDefault();
    }
}
