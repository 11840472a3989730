using System.Diagnostics;
using OpenTelemetry.Exporter;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;
using SetupService.Api.Host.Settings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;

namespace SetupService.Api.Host.Watching;

/// <summary>Traces and metrics by OpenTelemetry: of requests, of the runtime, and of the service's own work. Nothing is measured unless settings ask for it.</summary>
internal static class Telemetry
{
    private const string ServiceName = "setup-service";
    private const string MetricsPath = "/metrics";

    private static readonly string[] Texts = ["url.query", "http.request.method_original", "user_agent.original", "server.address"];

    private static readonly string[] Meters = [ServiceMeter.Name, "Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel", "System.Runtime"];

    /// <summary>Adds what the settings ask for. They are read here already, before the service is built, because they decide what it has.</summary>
    public static void AddTelemetry(this WebApplicationBuilder builder)
    {
        var settings = ServiceSettings.ReadTelemetry(builder.Configuration);
        if (!settings.Metrics && settings.OtlpEndpoint is null)
            return;

        var telemetry = builder.Services.AddOpenTelemetry()
            .ConfigureResource(static resource => resource.AddService(ServiceName, serviceVersion: Edition.Current))
            .WithMetrics(metrics =>
            {
                metrics.AddMeter(Meters);

                // Two measurements a request for a number that the durations tell as well.
                metrics.AddView("http.server.active_requests", MetricStreamConfiguration.Drop);
                if (settings.Metrics)
                    metrics.AddPrometheusExporter();
                if (settings.OtlpEndpoint is not null)
                    metrics.AddOtlpExporter(otlp => Aim(otlp, settings, "v1/metrics"));
            });
        if (settings.OtlpEndpoint is not null)
        {
            telemetry.WithTracing(traces => traces
                .SetSampler(SamplerFrom(settings))
                .AddAspNetCoreInstrumentation(static requests => requests.EnrichWithHttpResponse = static (activity, response) => LeaveOutTexts(activity, response.HttpContext))
                .AddOtlpExporter(otlp => Aim(otlp, settings, "v1/traces")));
        }
    }

    /// <summary>Keeps the port of the metrics to metrics and health.</summary>
    public static void UseMetricsPort(this WebApplication app)
    {
        var port = app.Services.GetRequiredService<TelemetrySettings>().MetricsPort;
        if (port == 0)
            return;
        app.Use((context, next) =>
            context.Connection.LocalPort != port || context.Request.Path.StartsWithSegments(MetricsPath) || context.Request.Path.StartsWithSegments("/health")
                ? next(context)
                : Problem.Create(ProblemTypes.NotFound, "This port answers /metrics and /health only.").ExecuteAsync(context));
    }

    public static void MapMetrics(this WebApplication app)
    {
        if (app.Services.GetRequiredService<TelemetrySettings>().Metrics)
            app.MapPrometheusScrapingEndpoint(MetricsPath);
    }

    /// <summary>Decides what is traced: a share, whatever callers ask for, or what they ask for and the share of the others.</summary>
    internal static Sampler SamplerFrom(TelemetrySettings settings)
    {
        ShareSampler share = new(settings.TracedShare);
        return settings.CallerDecidesTracing ? new ParentBasedSampler(share) : new ParentBasedSampler(share, remoteParentSampled: share, remoteParentNotSampled: share);
    }

    /// <summary>Takes out of a trace what is the caller's own text, in which a key may stand by mistake: of the path the route is kept.</summary>
    private static void LeaveOutTexts(Activity activity, HttpContext context)
    {
        activity.SetTag("url.path", RequestLog.RouteOf(context));
        foreach (var text in Texts)
            activity.SetTag(text, null);
    }

    private static void Aim(OtlpExporterOptions otlp, TelemetrySettings settings, string path)
    {
        otlp.Protocol = settings.OtlpByGrpc ? OtlpExportProtocol.Grpc : OtlpExportProtocol.HttpProtobuf;
        otlp.Endpoint = settings.OtlpByGrpc ? new Uri(settings.OtlpEndpoint!) : new Uri(settings.OtlpEndpoint!.TrimEnd('/') + "/" + path);
    }
}

/// <summary>Draws the requests to be traced by lot. Not by their trace ids, which a caller makes up.</summary>
/// <param name="share">Share of requests, 0 to 1.</param>
internal sealed class ShareSampler(double share) : Sampler
{
    /// <inheritdoc />
    public override SamplingResult ShouldSample(in SamplingParameters samplingParameters) => new(Random.Shared.NextDouble() < share);
}
