using System.ComponentModel.DataAnnotations;

namespace SetupService.Api.Host.Settings;

/// <summary>How lines of the log are written.</summary>
public enum LogFormat
{
    /// <summary>For people.</summary>
    Text,

    /// <summary>For machines: a JSON object a line.</summary>
    Json,
}

/// <summary>What the log tells, on standard output. Never bodies, queries or keys.</summary>
public sealed class LogSettings
{
    /// <summary>How lines are written: Text or Json.</summary>
    [AllowedValues(LogFormat.Text, LogFormat.Json, ErrorMessage = "Log:Format must be Text or Json.")]
    public LogFormat Format { get; set; }

    /// <summary>True gives every request a line, false only those that were refused or failed.</summary>
    public bool EveryRequest { get; set; }

    /// <summary>Most lines of refused requests a second; the next line says how many were left out.</summary>
    [Range(1, 100_000)]
    public int RefusalsPerSecond { get; set; } = 20;
}

/// <summary>What is measured, and where it goes. All is off unless asked for.</summary>
public sealed class TelemetrySettings
{
    /// <summary>True serves the metrics as text at /metrics, to callers with a key where clients have keys.</summary>
    public bool Metrics { get; set; }

    /// <summary>A port at which only metrics and health are answered, without a key; the service must be told to listen there. 0 = none.</summary>
    [Range(0, 65535)]
    public int MetricsPort { get; set; }

    /// <summary>Where traces and metrics are sent by OTLP, such as http://collector:4318; nothing is sent without it.</summary>
    public string? OtlpEndpoint { get; set; }

    /// <summary>True sends by gRPC, false by HTTP.</summary>
    public bool OtlpByGrpc { get; set; }

    /// <summary>Share of requests that are traced, 0 to 1.</summary>
    [Range(0.0, 1.0)]
    public double TracedShare { get; set; } = 0.1;

    /// <summary>True lets a caller's traceparent decide whether its request is traced; false continues its trace, and traces the share.</summary>
    public bool CallerDecidesTracing { get; set; }
}
