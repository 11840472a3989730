using System.Globalization;
using Serilog;
using Serilog.Events;
using SetupService.Api.Host.Settings;

namespace SetupService.Api.Host.Watching;

/// <summary>The log: to standard output, for people or for machines, one line for each request that failed or was refused, or for each request; never a body.</summary>
internal static class ServiceLogging
{
    private const string Line = "{Timestamp:yyyy-MM-dd HH:mm:ss.fff} {Level:u3} {Message:lj}{NewLine}{Exception}";

    public static void AddServiceLogging(this IServiceCollection services)
    {
        services.AddSerilog(
            static (known, log) =>
            {
                log.MinimumLevel.Information()
                    .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
                    .MinimumLevel.Override("System", LogEventLevel.Warning)

                    // What keeps the service from starting is told by the program, without the inside.
                    .MinimumLevel.Override("Microsoft.Extensions.Hosting.Internal.Host", LogEventLevel.Fatal);
                var settings = known.GetRequiredService<LogSettings>();
                log.Filter.ByExcluding(new LineRate(settings.RefusalsPerSecond, known.GetRequiredService<TimeProvider>()).IsBeyond);
                if (settings.Format == LogFormat.Json)
                    log.WriteTo.Sink(new JsonLines(Console.OpenStandardOutput()));
                else
                    log.WriteTo.Console(outputTemplate: Line, formatProvider: CultureInfo.InvariantCulture);
            },
            preserveStaticLogger: true);
        services.AddSingleton<RequestLog>();
    }

    public static void UseRequestLog(this IApplicationBuilder app) => app.Use(app.ApplicationServices.GetRequiredService<RequestLog>().RunAsync);
}
