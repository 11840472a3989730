using System.Globalization;
using Microsoft.Extensions.DependencyInjection;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment.Batch;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment.Catalogue;

/// <summary>Both sides of a catalogue stream over a real connection. Counts the lines and the memory of the whole process, so it runs by itself.</summary>
[Collection(nameof(ByItself))]
public sealed class CatalogueStreamTests
{
    private const string Form = "multipart/form-data; boundary=edge";

    private static readonly string Open =
        "--edge\r\nContent-Disposition: form-data; name=\"cars\"\r\n\r\n" + CatalogueCalls.Car("front").ToJsonString() + "\n" + CatalogueCalls.Car("all", null).ToJsonString()
        + "\r\n--edge\r\nContent-Disposition: form-data; name=\"candidates\"\r\nContent-Type: application/x-ndjson\r\n\r\n";

    [Fact]
    public async Task A_candidate_is_answered_before_the_next_one_is_sent()
    {
        await using var service = await RunningService.StartAsync();
        using var catalogue = await OpenBatch.StartAsync(service.Client, Form, CatalogueCalls.Path);
        await catalogue.SendAsync(Open);
        for (var i = 0; i < 3; i++)
        {
            // The reader of forms keeps back what may be the start of a boundary: a line end, and so one line.
            await catalogue.SendAsync(BatchCalls.CandidateLine(i) + "\n\n" + new string(' ', 200));
            Assert.StartsWith(string.Create(CultureInfo.InvariantCulture, $"{{\"car\":\"front\",\"candidate\":{i},"), await catalogue.ReadLineAsync(), StringComparison.Ordinal);
            Assert.StartsWith(string.Create(CultureInfo.InvariantCulture, $"{{\"car\":\"all\",\"candidate\":{i},"), await catalogue.ReadLineAsync(), StringComparison.Ordinal);
        }

        await catalogue.SendAsync("\r\n--edge--\r\n");
        await catalogue.EndAsync();
        Assert.Contains("\"candidateCount\":3,\"answeredCount\":6,", await catalogue.ReadLineAsync(), StringComparison.Ordinal);
        Assert.Null(await catalogue.ReadLineAsync());
        Assert.Contains("Cache-Control: no-store\n", catalogue.Head, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_with_the_cars_is_told_up_to_a_cap_and_beyond_it_the_catalogue_is_refused()
    {
        await using var service = await RunningService.StartAsync(configure: static builder => builder.Configuration["Caps:CatalogueCarBytes"] = "1048576");

        // A hundred faults take some 16 kB to tell, and held as they are found a hundred times as much as the line.
        var bad = "{" + string.Join(',', Enumerable.Range(0, 100).Select(i => $"\"x{i}\":1")) + "}\n";
        var told = await service.Client.CatalogueOf(string.Concat(Enumerable.Repeat(bad, 30)), BatchCalls.CandidateLine());
        Assert.Equal(30, told.Count(line => line.TryGetProperty("problem", out _)));
        Assert.Equal(30, told[^1].GetProperty("summary").GetProperty("carCount").GetInt32());

        using var form = CatalogueCalls.Form(string.Concat(Enumerable.Repeat(bad, 200)), BatchCalls.CandidateLine());
        using var refused = await service.Client.PostAsync(new Uri(CatalogueCalls.Path, UriKind.Relative), form);
        var problem = await Problems.Read(refused, ProblemTypes.TooLarge);
        Assert.Equal(["/cars tooMany"], problem.FaultsOf());
        Assert.Contains("1048576 bytes", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_client_that_hangs_up_stops_the_work()
    {
        await using var service = await RunningService.StartAsync();
        using LineCount count = new();
        using var catalogue = await OpenBatch.StartAsync(service.Client, Form, CatalogueCalls.Path);
        using CancellationTokenSource gone = new();
        var writing = Task.Run(Write);
        Assert.Contains("verdict", await catalogue.ReadLineAsync(), StringComparison.Ordinal);

        // Nobody reads on, so both ends fill up and the service waits for room to answer. Then the caller goes.
        await count.Settled();
        catalogue.HangUp();
        await gone.CancelAsync();
        var sent = await writing;
        var answered = await count.Settled();

        Assert.True(answered > 0 && answered < sent, $"{answered} of {sent} candidates were answered");

        // The service goes on for others.
        Assert.Equal(2, (await service.Client.CatalogueOf(CatalogueCalls.Car(1).ToJsonString(), BatchCalls.CandidateLine())).Length);

        async Task<long> Write()
        {
            long lines = 0;
            var piece = string.Concat(Enumerable.Repeat(BatchCalls.CandidateLine() + "\n", 200));
            try
            {
                await catalogue.SendAsync(Open);
                for (; !gone.IsCancellationRequested; lines += 200)
                    await catalogue.SendAsync(piece).WaitAsync(gone.Token);
            }
            catch (Exception ended) when (ended is IOException or OperationCanceledException or ObjectDisposedException)
            {
                // The connection is closed under it, as the test wants.
            }

            return lines;
        }
    }

    [Theory]
    [InlineData("?only=unknown")]
    [InlineData("")]
    public async Task Memory_does_not_grow_with_the_candidates(string query)
    {
        const int Warm = 20_000;
        const int Long = 150_000;
        await using var service = await RunningService.StartAsync();
        using var catalogue = await OpenBatch.StartAsync(service.Client, Form, CatalogueCalls.Path + query);
        await catalogue.SendAsync(Open);
        var reading = query.Length == 0 ? Task.Run(Drain) : Task.CompletedTask;
        await Send(Warm);
        var before = GC.GetTotalMemory(forceFullCollection: true);
        await Send(Long);
        var grown = GC.GetTotalMemory(forceFullCollection: true) - before;
        await catalogue.SendAsync("\r\n--edge--\r\n");
        await catalogue.EndAsync();
        if (query.Length > 0)
            Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"\"candidateCount\":{Warm + Long},"), await catalogue.ReadLineAsync(), StringComparison.Ordinal);
        await reading;

        // Kept candidates would be some 60 MB, kept lines 30 MB; what is on its way through the connection at either time is less than this.
        Assert.True(grown < 6_000_000, $"{grown} bytes more after {Long} candidates");

        async Task Send(int candidates)
        {
            var piece = string.Concat(Enumerable.Range(0, 200).Select(i => BatchCalls.CandidateLine(i) + "\n"));
            for (var i = 0; i < candidates; i += 200)
                await catalogue.SendAsync(piece);
        }

        async Task Drain()
        {
            while (await catalogue.ReadLineAsync() is not null)
            {
            }
        }
    }

    [Fact]
    public async Task The_head_comes_although_no_pair_is_kept_yet()
    {
        await using var service = await RunningService.StartAsync();
        using var catalogue = await OpenBatch.StartAsync(service.Client, Form, CatalogueCalls.Path + "?only=unknown");
        await catalogue.SendAsync(Open + BatchCalls.CandidateLine() + "\n\n" + new string(' ', 200));

        Assert.StartsWith("HTTP/1.1 200 ", await catalogue.ReadHeadAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_catalogue_in_which_nothing_comes_is_closed_with_a_summary_that_says_so()
    {
        await using var service = await RunningService.StartAsync(configure: builder =>
            builder.Services.AddSingleton(new BatchSettings { SilenceSeconds = 1 }));
        using var catalogue = await OpenBatch.StartAsync(service.Client, Form, CatalogueCalls.Path);
        await catalogue.SendAsync(Open + BatchCalls.CandidateLine() + "\n{\"id\":\"half a li");

        var lines = (await catalogue.ReadToEndAsync()).Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(3, lines.Length);
        Assert.Contains("\"answeredCount\":2,", lines[2], StringComparison.Ordinal);
        Assert.Contains("\"isComplete\":false,\"reason\":\"No bytes came for 1 s", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_catalogue_that_breaks_off_says_so()
    {
        await using var service = await RunningService.StartAsync();
        using var catalogue = await OpenBatch.StartAsync(service.Client, Form, CatalogueCalls.Path);
        await catalogue.SendAsync(Open + BatchCalls.CandidateLine() + "\n" + BatchCalls.CandidateLine());
        await catalogue.EndAsync();

        var lines = (await catalogue.ReadToEndAsync()).Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.Contains("\"isComplete\":false,\"reason\":", lines[^1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_catalogue_whose_cars_do_not_come_is_refused()
    {
        await using var service = await RunningService.StartAsync(configure: builder =>
            builder.Services.AddSingleton(new BatchSettings { SilenceSeconds = 1 }));
        using var catalogue = await OpenBatch.StartAsync(service.Client, Form, CatalogueCalls.Path);
        await catalogue.SendAsync("--edge\r\nContent-Disposition: form-data; name=\"cars\"\r\n\r\n{\"id\":");

        await Assert.ThrowsAsync<InvalidOperationException>(catalogue.ReadLineAsync);
        Assert.StartsWith("HTTP/1.1 408 ", catalogue.Head, StringComparison.Ordinal);
    }
}
