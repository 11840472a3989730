using System.Globalization;
using Serilog;
using Serilog.Events;

namespace SetupService.Api.Host;

/// <summary>The log: to the console, one line for each request that failed or was refused, none for one that went well, never a body.</summary>
internal static class ServiceLogging
{
    private const string Line = "{Timestamp:yyyy-MM-dd HH:mm:ss.fff} {Level:u3} {Message:lj}{NewLine}{Exception}";

    public static void AddServiceLogging(this IServiceCollection services) =>
        services.AddSerilog(
            static log => log
                .MinimumLevel.Information()
                .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
                .MinimumLevel.Override("System", LogEventLevel.Warning)
                .WriteTo.Console(outputTemplate: Line, formatProvider: CultureInfo.InvariantCulture),
            preserveStaticLogger: true);
}
