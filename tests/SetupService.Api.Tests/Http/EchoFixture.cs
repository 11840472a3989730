using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http.HttpResults;
using Serilog;
using SetupService.Api.Fitment.Compare;
using SetupService.Api.Host;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Tests.Host;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Tests.Http;

/// <summary>The service with calls of the tests' own beside its real ones, to reach each corner of the plumbing.</summary>
public abstract class EchoFixture(string environment) : IAsyncLifetime
{
    public static readonly TextParameter Marking = new("marking", "A marking.", MaximumLength: 10, Sample: "abc") { IsRequired = true };
    public static readonly NumberParameter Speed = new("speedKmh", "A speed.", Minimum: 0, Maximum: 300, Sample: 100);

    private static readonly CacheableAnswer<HealthAnswer> Table = new(() => new HealthAnswer { Status = "a table" });

    private RunningService? _service;

    public HttpClient Client => _service!.Client;

    internal CapturedLog Log { get; } = new();

    public async Task InitializeAsync() =>
        _service = await RunningService.StartAsync(
            environment,
            builder => builder.Services.AddSerilog(log => log.MinimumLevel.Information().MinimumLevel.Override("Microsoft", Serilog.Events.LogEventLevel.Warning).WriteTo.Sink(Log), preserveStaticLogger: true),
            Map);

    public async Task DisposeAsync() => await _service!.DisposeAsync();

    private static void Map(WebApplication app)
    {
        app.MapPost("/test/vehicle", Take);
        app.MapPost("/test/refuse", Refuse);
        app.MapGet("/test/fails", Fail);
        app.MapGet("/test/table", static Results<CacheableAnswer<HealthAnswer>, Problem> (QueryReader query) => query.Problem is { } problem ? problem : Table);
        app.MapGet("/test/not-a-number", static () => new Answer<SpeedometerResponse>(new SpeedometerResponse { IndicatedKmh = 100, TrueKmh = double.NaN }));
        app.MapGet("/test/query", Query).WithQuery(Marking, Speed, QueryParameters.Units);
    }

    private static Results<Answer<HealthAnswer>, Problem> Take(Body<VehicleDocument> body) =>
        body.Value is { } vehicle ? new Answer<HealthAnswer>(new HealthAnswer { Status = vehicle.Label ?? "nameless" }) : body.Problem!;

    private static Results<Answer<HealthAnswer>, Problem> Refuse(Body<VehicleDocument> body) =>
        body.Problem ?? (VehicleMapper.Map(body.Value).TryGet(out _, out var refusal) ? throw new InvalidOperationException("The test wants a refusal.") : body.Refuse(refusal));

    private static Answer<HealthAnswer> Fail() => throw new InvalidOperationException("secret of the inside, in inside.cs");

    private static Results<Answer<HealthAnswer>, Problem> Query(QueryReader query) =>
        query.Problem is { } problem
            ? problem
            : new Answer<HealthAnswer>(new HealthAnswer { Status = FormattableString.Invariant($"{query.Text(Marking)} {query.Number(Speed)} {query.Units}") });
}
