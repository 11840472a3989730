using System.Text;
using Microsoft.Extensions.DependencyInjection;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Fitment.Window;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Handling.Ride;
using SetupService.Api.Handling.WhatIf;
using SetupService.Api.Host;
using SetupService.Api.Host.OpenApi;
using SetupService.Api.Http.Documents;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Contract;

/// <summary>What bodies are read by is made when a call is first asked, so that no start waits for it: once, whoever asks at the same time.</summary>
public sealed class ReadersAtFirstUseTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly TimeSpan Enough = TimeSpan.FromMinutes(2);

    /// <summary>A document that leaves part of the contract open does not stop a start; it is seen here.</summary>
    [Fact]
    public async Task Every_request_of_the_service_can_be_read()
    {
        // Endpoints are made with the first request, and their readers with them.
        (await fixture.Client.GetAsync(new Uri("/health/ready", UriKind.Relative))).EnsureSuccessStatusCode();
        var contract = fixture.Service.Services.GetRequiredService<JsonContract>();

        contract.PrepareReaders();

        Assert.True(contract.IsRequestType(typeof(CheckRequest)) && contract.IsRequestType(typeof(RideRequest)));
    }

    [Fact]
    public void A_document_that_leaves_part_of_the_contract_open_is_a_mistake()
    {
        JsonContract contract = new(ContractJsonContext.Default, []);
        contract.ReaderOf<HealthAnswer>();

        var mistake = Assert.Throws<InvalidOperationException>(contract.PrepareReaders);

        Assert.Equal("HealthAnswer.status must be settable, and either required or nullable.", mistake.Message);
    }

    [Fact]
    public async Task Threads_that_come_first_at_once_all_read_and_the_rules_are_made_once()
    {
        for (var round = 0; round < 20; round++)
        {
            var made = 0;
            JsonContract contract = new(ContractJsonContext.Default, [DocumentRules.Create(() => MakeCounted(ref made))]);
            Action[] readers =
            [
                Reading<RideRequest>(contract, "ride"), Reading<RideRequest>(contract, "ride"), Reading<CheckRequest>(contract, "fitment-check"),
                Reading<CorneringRequest>(contract, "cornering"), Reading<WhatIfRequest>(contract, "what-if"), Reading<WindowRequest>(contract, "fitment-window"),
            ];
            using Barrier start = new(readers.Length);
            var threads = Array.ConvertAll(readers, read => Task.Factory.StartNew(
                () =>
                {
                    start.SignalAndWait();
                    read();
                },
                CancellationToken.None,
                TaskCreationOptions.LongRunning,
                TaskScheduler.Default));

            // In time: they do not wait for each other.
            await Task.WhenAll(threads).WaitAsync(Enough);
            Assert.Equal(1, made);
        }
    }

    private static RideRules MakeCounted(ref int made)
    {
        Interlocked.Increment(ref made);
        return new RideRules();
    }

    /// <summary>Reads the example of a call, and finds the faults of an empty body.</summary>
    private static Action Reading<T>(JsonContract contract, string example)
        where T : class
    {
        var body = Encoding.UTF8.GetBytes(ExampleFiles.Text($"api/examples/{example}.request.json")!);
        return () =>
        {
            var reader = contract.ReaderOf<T>();
            Assert.True(reader.Read(body, out _, out var refusal), $"{example}: {refusal}");
            Assert.NotEmpty(reader.Faults("{}"u8));
        };
    }
}
