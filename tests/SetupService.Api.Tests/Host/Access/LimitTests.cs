using System.Net;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using SetupService.Api.Host;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Work;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Fitment.Batch;
using SetupService.Api.Tests.Fitment.Catalogue;
using SetupService.Api.Tests.Http;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Tests.Host.Access;

/// <summary>How much work clients may ask for.</summary>
public sealed class LimitTests
{
    private const string Table = "/v1/reference/load-indices";

    private readonly FakeTimeProvider _clock = new(DateTimeOffset.UtcNow);

    [Fact]
    public async Task The_last_request_allowed_is_answered_the_next_refused_and_another_client_is_not_touched()
    {
        await using var service = await ServiceWithKeys.StartAsync(_clock, ("Limits:BurstUnits", "3"), ("Limits:BurstSeconds", "30"));
        for (var left = 2; left >= 0; left--)
        {
            using var answer = await service.SendAsync("GET", Table, ServiceWithKeys.First);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Equal($"\"burst\";r={left};t={10 * (3 - left)}", Header(answer, "RateLimit"));
            Assert.Equal("\"burst\";q=3;w=30, \"sustained\";q=3600000;w=3600", Header(answer, "RateLimit-Policy"));
        }

        // The client's other key draws on the same work.
        using (var refused = await service.SendAsync("POST", Calls.Check, ServiceWithKeys.Second, Requests.Check().ToJsonString()))
        {
            var problem = await Problems.Read(refused, ProblemTypes.TooManyRequests);
            Assert.Equal(["Api-Key limitReached"], problem.FaultsOf());
            Assert.Equal(TimeSpan.FromSeconds(10), refused.Headers.RetryAfter!.Delta);
            Assert.Equal("\"burst\";r=0;t=10", Header(refused, "RateLimit"));
        }

        using (var other = await service.SendAsync("GET", Table, ServiceWithKeys.OfOther))
            Assert.Equal(HttpStatusCode.OK, other.StatusCode);
        _clock.Advance(TimeSpan.FromSeconds(10));
        using var again = await service.SendAsync("GET", Table, ServiceWithKeys.First);
        Assert.Equal(HttpStatusCode.OK, again.StatusCode);
    }

    [Fact]
    public async Task A_refused_body_costs_by_its_length()
    {
        await using var service = await ServiceWithKeys.StartAsync(_clock, ("Limits:BurstUnits", "1000"));
        using (var refused = await service.SendAsync("POST", Calls.Check, ServiceWithKeys.First, "{" + new string(' ', (100 * WorkQuota.RefusedBytesPerUnit) - 2) + "}"))
            await Problems.Read(refused, ProblemTypes.InvalidRequest);
        using var answer = await service.SendAsync("GET", Table, ServiceWithKeys.First);

        Assert.StartsWith($"\"burst\";r={1000 - 1 - 100 - 1};", Header(answer, "RateLimit"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_client_may_have_limits_of_its_own()
    {
        await using var service = await ServiceWithKeys.StartAsync(_clock, ("Limits:BurstUnits", "3"), ("Access:Clients:other:BurstUnits", "5"), ("Access:Clients:other:SustainedUnits", "50"));
        using var answer = await service.SendAsync("GET", Table, ServiceWithKeys.OfOther);

        Assert.Equal("\"burst\";q=5;w=10, \"sustained\";q=50;w=3600", Header(answer, "RateLimit-Policy"));
    }

    [Fact]
    public async Task A_sweep_costs_its_rows()
    {
        var body = await File.ReadAllTextAsync(ExampleCall.FileOf("travel-sweep.request.json"));
        await using var service = await ServiceWithKeys.StartAsync(_clock, ("Limits:StepsPerUnit", "1"));
        var first = await UnitsOf(service, "/v1/geometry/travel-sweep", body);
        var longer = System.Text.Json.Nodes.JsonNode.Parse(body)!;
        longer["travelMm"]!["step"] = longer["travelMm"]!["step"]!.GetValue<double>() / 10;
        var second = await UnitsOf(service, "/v1/geometry/travel-sweep", longer.ToJsonString());

        Assert.True(first > 10 && second > 3 * first, $"{first} units, then {second}");
    }

    [Fact]
    public async Task Who_goes_away_before_the_answer_pays_for_the_work_done()
    {
        TaskCompletionSource began = new(TaskCreationOptions.RunContinuationsAsynchronously);
        await using var service = await RunningService.StartAsync(
            configure: builder =>
            {
                ServiceWithKeys.Configure(builder);
                builder.Configuration["Limits:StepsPerUnit"] = "1";
                builder.Services.AddSingleton<TimeProvider>(_clock);
            },
            map: app => app.MapPost("/v1/test/slow", async (Body<VehicleDocument> _, RequestWork work) =>
            {
                for (var i = 0; i < 500; i++)
                    work.Budget.TrySpend();
                began.SetResult();
                await Task.Delay(Timeout.Infinite, work.Cancellation);
                return new Answer<HealthAnswer>(new HealthAnswer { Status = "done" });
            }).WithWork());
        var before = await UnitsLeft(service);
        using CancellationTokenSource gone = new();
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri("/v1/test/slow", UriKind.Relative)) { Content = new StringContent("{}", Encoding.UTF8, "application/json") };
        request.Headers.Add("Api-Key", ServiceWithKeys.First);
        var computing = service.Client.SendAsync(request, gone.Token);
        await began.Task;

        await gone.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => computing);
        var asked = 1;
        while (before - await UnitsLeft(service) < 500 && asked < 100)
        {
            asked++;
            await Task.Delay(20);
        }

        Assert.InRange(asked, 1, 99);
    }

    [Fact]
    public async Task A_batch_costs_its_lines_and_waits_where_they_are_too_many()
    {
        await using var service = await ServiceWithKeys.StartAsync(_clock, ("Limits:LinesPerUnit", "1"), ("Limits:BurstUnits", "12"), ("Limits:BurstSeconds", "12"));
        var lines = BatchCalls.CarLine() + "\n" + string.Concat(Enumerable.Range(0, 10).Select(i => BatchCalls.CandidateLine(i) + "\n"));
        using (var answer = await SendLines(service, lines))
            Assert.Contains("\"answeredCount\":10,", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);

        // One for the request, one for its car, ten for its lines: nothing is left.
        using (var refused = await service.SendAsync("GET", Table, ServiceWithKeys.First))
            Assert.Equal(HttpStatusCode.TooManyRequests, refused.StatusCode);

        // With one unit left a batch begins; it owes ten, and goes on once they have come back.
        _clock.Advance(TimeSpan.FromSeconds(1));
        using var connection = await OpenBatch.StartAsync(service.Client, headers: $"Api-Key: {ServiceWithKeys.First}\r\n");
        await connection.SendAsync(lines);
        Assert.Contains("\"line\":2,", await connection.ReadLineAsync(), StringComparison.Ordinal);
        await connection.SendAsync(BatchCalls.CandidateLine(99) + "\n");
        await connection.EndAsync();
        for (var i = 0; i < 9; i++)
            await connection.ReadLineAsync();
        var late = connection.ReadLineAsync();
        _clock.Advance(TimeSpan.FromSeconds(4));
        Assert.False(late.IsCompleted);
        while (!late.IsCompleted)
        {
            _clock.Advance(TimeSpan.FromSeconds(4));
            await Task.Delay(5);
        }

        Assert.Contains("\"line\":12,", await late, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cars_refused_lines_and_lines_in_detail_cost_as_a_request_of_their_own()
    {
        const int Many = 20;
        await using var service = await ServiceWithKeys.StartAsync(_clock, ("Limits:LinesPerUnit", "1000000"));
        var candidates = string.Concat(Enumerable.Range(0, Many).Select(i => BatchCalls.CandidateLine(i) + "\n"));
        var car = BatchCalls.CarLine() + "\n";

        // What is left is told in whole units: the millionths that lines cost beside, and the pairs of the catalogue, take one more.
        Assert.Equal(1 + 1, await UnitsOfLines(car + candidates));
        Assert.Equal(Many, await UnitsOfLines(string.Concat(Enumerable.Repeat(car, Many))));
        Assert.Equal(Many + 1, await UnitsOfLines(string.Concat(Enumerable.Repeat("{\"id\":1}\n", Many))));
        Assert.Equal(1 + Many + 1, await UnitsOfLines(car + candidates, "?detail=full"));
        Assert.Equal(Many + 1, await UnitsOfForm(Calls.BatchCsv, BatchCalls.Form("wheelMarking,tyreMarking\n" + string.Concat(Enumerable.Repeat("8Jx17 ET40,none\n", Many - 1)), BatchCalls.CarLine())));
        var cars = string.Concat(Enumerable.Range(0, Many).Select(i => CatalogueCalls.Car(i).ToJsonString() + "\n"));
        Assert.Equal(Many + 2 + 1, await UnitsOfForm(CatalogueCalls.Path, CatalogueCalls.Form(cars, "{\"id\":1}\n{\"id\":2}\n" + candidates)));

        async Task<long> UnitsOfLines(string lines, string query = "")
        {
            using var content = new StringContent(lines, Encoding.UTF8, BatchCalls.Ndjson);
            return await UnitsOf(Calls.Batch + query, content);
        }

        async Task<long> UnitsOfForm(string path, MultipartFormDataContent form)
        {
            using (form)
                return await UnitsOf(path, form);
        }

        async Task<long> UnitsOf(string path, HttpContent body)
        {
            var before = await UnitsLeft(service);
            using HttpRequestMessage request = new(HttpMethod.Post, new Uri(path, UriKind.Relative)) { Content = body };
            request.Headers.Add("Api-Key", ServiceWithKeys.First);
            using (var answer = await service.Client.SendAsync(request))
                Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            var units = before - await UnitsLeft(service) - 2;
            _clock.Advance(TimeSpan.FromHours(2));
            return units;
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Without_keys_each_address_has_limits_of_its_own_as_a_named_proxy_tells_it(bool isNamed)
    {
        await using var service = await RunningService.StartAsync(configure: builder =>
        {
            builder.Configuration["Access:AllowWithoutKeys"] = "true";
            builder.Configuration["Limits:BurstUnits"] = "1";
            builder.Configuration["Limits:BurstSeconds"] = "3600";
            builder.Configuration["Proxy:Networks:0"] = isNamed ? "127.0.0.0/8" : "10.0.0.0/8";
        });

        Assert.Equal(HttpStatusCode.OK, await From("203.0.113.1"));
        Assert.Equal(HttpStatusCode.TooManyRequests, await From("203.0.113.1"));
        Assert.Equal(isNamed ? HttpStatusCode.OK : HttpStatusCode.TooManyRequests, await From("203.0.113.2"));
        Assert.Equal(isNamed ? HttpStatusCode.OK : HttpStatusCode.TooManyRequests, await From("2001:db8::1"));
        Assert.Equal(HttpStatusCode.TooManyRequests, await From("2001:db8::2"));

        async Task<HttpStatusCode> From(string address)
        {
            using HttpRequestMessage request = new(HttpMethod.Get, new Uri(Table, UriKind.Relative));
            request.Headers.Add("X-Forwarded-For", address);
            using var answer = await service.Client.SendAsync(request);
            return answer.StatusCode;
        }
    }

    [Fact]
    public async Task On_this_machine_alone_and_without_keys_nothing_is_limited()
    {
        await using var service = await RunningService.StartAsync(configure: builder => builder.Configuration["Limits:BurstUnits"] = "1");
        for (var i = 0; i < 3; i++)
        {
            using var answer = await service.SendAsync("GET", Table, null);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.False(answer.Headers.Contains("RateLimit"));
        }
    }

    private static async Task<HttpResponseMessage> SendLines(RunningService service, string lines)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri(Calls.Batch, UriKind.Relative)) { Content = new StringContent(lines, Encoding.UTF8, BatchCalls.Ndjson) };
        request.Headers.Add("Api-Key", ServiceWithKeys.First);
        return await service.Client.SendAsync(request);
    }

    private static async Task<long> UnitsOf(RunningService service, string path, string body)
    {
        var before = await UnitsLeft(service);
        using (var answer = await service.SendAsync("POST", path, ServiceWithKeys.First, body))
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return before - await UnitsLeft(service) - 1;
    }

    private static async Task<long> UnitsLeft(RunningService service)
    {
        using var answer = await service.SendAsync("GET", Table, ServiceWithKeys.First);
        return long.Parse(Header(answer, "RateLimit").Split(";r=")[1].Split(';')[0], System.Globalization.CultureInfo.InvariantCulture);
    }

    private static string Header(HttpResponseMessage response, string name) => string.Join(", ", response.Headers.GetValues(name));
}
