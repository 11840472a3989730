using SetupService.Api.Fitment;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Geometry;
using SetupService.Api.Handling;
using SetupService.Api.Host.Access;
using SetupService.Api.Host.OpenApi;
using SetupService.Api.Host.Settings;
using SetupService.Api.Host.Watching;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Work;
using SetupService.Api.Plans;
using SetupService.Api.Plans.Ranking;
using SetupService.Api.Tyres;
using SetupService.Api.Wear;
using SetupService.Api.Wheels;

namespace SetupService.Api.Host;

/// <summary>The composition root: the same for production, tests and benchmarks.</summary>
public static class SetupServiceHost
{
    /// <summary>Where the service listens when nothing says otherwise.</summary>
    public const string DefaultUrl = "http://localhost:5080";

    /// <summary>The setting that names a folder whose files are settings too.</summary>
    public const string SecretsFolder = "SecretsFolder";

    // What is taken off a connection ahead of its being read. The server's own is a MiB, which each caller who sends and does not read his answers would have.
    private const int ReadAheadBytes = 131_072;

    /// <summary>Builds the whole service, ready to run.</summary>
    /// <param name="args">Command-line arguments, as ASP.NET Core reads them.</param>
    /// <param name="configure">What a test or benchmark changes before the service is built.</param>
    public static WebApplication Build(string[] args, Action<WebApplicationBuilder>? configure = null)
    {
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions
        {
            Args = args,

            // The same from whatever folder it is started.
            ContentRootPath = AppContext.BaseDirectory,
        });
        ConfigureServer(builder);
        ConfigureServices(builder.Services);
        configure?.Invoke(builder);
        if (builder.Configuration[SecretsFolder] is { Length: > 0 } secrets)
            AddSecrets(builder.Configuration, secrets);
        builder.AddTelemetry();

        var app = builder.Build();
        app.Services.CheckSettings();
        Use(app);
        Map(app);
        app.GreetOnStart();
        return app;
    }

    private static void AddSecrets(ConfigurationManager settings, string folder)
    {
        try
        {
            settings.AddKeyPerFile(Path.GetFullPath(folder), optional: false);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new SettingException($"{SecretsFolder} is “{folder}”, which is no folder whose files can be read. {fault.Message}", fault);
        }
    }

    private static void ConfigureServer(WebApplicationBuilder builder)
    {
        var settings = builder.Configuration;
        if (settings["urls"] is null && settings["http_ports"] is null && settings["https_ports"] is null
            && !settings.GetSection("Kestrel:Endpoints").Exists())
        {
            builder.WebHost.UseUrls(DefaultUrl);
        }

        // The slim builder leaves HTTPS out; Kestrel:Endpoints can ask for it.
        builder.WebHost.UseKestrelHttpsConfiguration();

        // What comes and goes over connections is queued with all other work. In a queue of its own one thread at a time would empty it, and whenever a solver has that
        // thread's processor, everybody would wait.
        builder.WebHost.UseSockets(static sockets =>
        {
            sockets.IOQueueCount = 0;
            sockets.MaxReadBufferSize = ReadAheadBytes;
        });
        builder.WebHost.ConfigureKestrel(static kestrel =>
        {
            PublicAddresses.RefuseWithoutKeys(kestrel);
            kestrel.AddServerHeader = false;
            var caps = kestrel.ApplicationServices.GetRequiredService<CapSettings>();
            kestrel.Limits.MaxConcurrentConnections = OpenFiles.MostConnections(caps.Connections, OpenFiles.Limit());
            kestrel.Limits.MaxRequestBodySize = caps.BodyBytesOnTheWire;
            kestrel.Limits.MaxRequestBufferSize = ReadAheadBytes;
        });
    }

    private static void ConfigureServices(IServiceCollection services)
    {
        services.AddServiceLogging();
        services.AddSingleton(ServiceContract.Instance);
        services.AddServiceSettings();
        services.AddSingleton<WorkGate>();
        services.AddSingleton<StreamPlaces>();
        services.AddSingleton<OverloadDetector>();
        services.AddSingleton<ShutdownSignal>();
        services.AddHostedService<Shutdown>();
        services.AddOptions<HostOptions>().Configure<ShutdownSettings>(static (host, shutdown) => host.ShutdownTimeout = shutdown.WholeTime);
        services.AddSingleton<ClientKeys>();
        services.AddSingleton<OpenCallers>();
        services.AddSingleton<AccessCheck>();
        services.AddSingleton(TimeProvider.System);
        services.ConfigureHttpJsonOptions(static http => ServiceJson.Configure(http.SerializerOptions));
        services.Configure<RouteHandlerOptions>(static routes => routes.ThrowOnBadRequest = false);
        services.AddSingleton<IProblemDetailsWriter, ProblemWriter>();
        services.AddProblemDetails();
        services.AddExceptionHandler<FailureHandler>();
        services.AddCors();
        AnswerCompression.AddTo(services);
        services.AddSingleton<IDescription, CommittedDescription>();
    }

    private static void Use(WebApplication app)
    {
        app.UseProxies();
        app.UseCommonHeaders();
        app.UseRequestLog();
        app.UseMetricsPort();
        app.UseAllowedOrigins();
        app.UseLoadShedding();
        app.UseResponseCompression();
        app.UseExceptionHandler();
        app.UseHangUps();
        app.UseStatusCodePages();
        app.UseHead();
        app.UseRouting();
        app.UseAccessCheck();
        app.UseAcceptCheck();
    }

    private static void Map(WebApplication app)
    {
        app.MapDescription();
        app.MapService();
        app.MapMetrics();
        app.MapPages();
        app.MapTyres();
        app.MapTyreRanking();
        app.MapWheels();
        app.MapFitment();
        app.MapGeometry();
        app.MapHandling();
        app.MapWear();
        app.MapPlans();
    }
}
