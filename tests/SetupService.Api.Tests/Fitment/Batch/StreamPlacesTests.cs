using System.Net;
using Microsoft.Extensions.DependencyInjection;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment.Catalogue;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Host.Access;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>How many streams are answered at once, of all callers and of one.</summary>
public sealed class StreamPlacesTests
{
    [Theory]
    [InlineData(Calls.Batch)]
    [InlineData(CatalogueCalls.Path)]
    public async Task As_many_as_there_are_places_are_answered_one_more_is_refused_and_a_place_that_is_left_is_free(string path)
    {
        await using var service = await RunningService.StartAsync(configure: static builder => builder.Configuration["Batch:Concurrency"] = "2");
        using var first = await BeginAsync(service);
        using (var second = await BeginAsync(service))
        {
            using (var refused = await SendAsync(service, path))
            {
                await Problems.Read(refused, ProblemTypes.Unavailable);
                Assert.Equal(TimeSpan.FromSeconds(1), refused.Headers.RetryAfter!.Delta);
            }

            // Nothing but streams takes a place.
            await service.Client.AnswerOf(Calls.Check, Requests.Check());
            await second.EndAsync();
            await second.ReadToEndAsync();
        }

        await UntilTaken(service, 1);
        using var next = await SendAsync(service, path);
        Assert.Equal(HttpStatusCode.OK, next.StatusCode);
    }

    [Fact]
    public async Task A_caller_who_goes_away_leaves_the_place()
    {
        await using var service = await RunningService.StartAsync();
        using (var batch = await BeginAsync(service))
        {
            Assert.Equal(1, service.Services.GetRequiredService<StreamPlaces>().Taken);
            batch.HangUp();
        }

        await UntilTaken(service, 0);
    }

    [Fact]
    public async Task One_client_does_not_take_the_places_of_the_others()
    {
        await using var service = await ServiceWithKeys.StartAsync(settings: ("Batch:ConcurrencyPerClient", "1"));
        using var first = await BeginAsync(service, ServiceWithKeys.First);

        // The other key is the same client's.
        using (var refused = await SendAsync(service, Calls.Batch, ServiceWithKeys.Second))
        {
            Assert.Equal(["Api-Key limitReached"], (await Problems.Read(refused, ProblemTypes.TooManyRequests)).FaultsOf());
            Assert.Equal(TimeSpan.FromSeconds(1), refused.Headers.RetryAfter!.Delta);
        }

        using (var other = await SendAsync(service, Calls.Batch, ServiceWithKeys.OfOther))
            Assert.Equal(HttpStatusCode.OK, other.StatusCode);
        await first.EndAsync();
        await first.ReadToEndAsync();
        await UntilTaken(service, 0);
        using var next = await SendAsync(service, Calls.Batch, ServiceWithKeys.First);
        Assert.Equal(HttpStatusCode.OK, next.StatusCode);
    }

    private static async Task<OpenBatch> BeginAsync(RunningService service, string? key = null)
    {
        var batch = await OpenBatch.StartAsync(service.Client, headers: key is null ? "" : $"Api-Key: {key}\r\n");
        await batch.SendAsync($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n");
        await batch.ReadLineAsync();
        return batch;
    }

    private static async Task<HttpResponseMessage> SendAsync(RunningService service, string path, string? key = null)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri(path, UriKind.Relative));
        if (key is not null)
            request.Headers.Add("Api-Key", key);
        request.Content = path == CatalogueCalls.Path
            ? CatalogueCalls.Form(CatalogueCalls.Car(1).ToJsonString() + "\n", BatchCalls.CandidateLine() + "\n")
            : new StringContent($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n", new System.Net.Http.Headers.MediaTypeHeaderValue(BatchCalls.Ndjson));
        return await service.Client.SendAsync(request);
    }

    /// <summary>A place is left when the request is done, which may be after its answer has come.</summary>
    private static async Task UntilTaken(RunningService service, int places)
    {
        var known = service.Services.GetRequiredService<StreamPlaces>();
        for (var wait = 0; known.Taken != places && wait < 500; wait++)
            await Task.Delay(20);
        Assert.Equal(places, known.Taken);
    }
}
