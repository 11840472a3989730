using System.Text.Json;

namespace SetupService.Client.Tests;

/// <summary>Batches, tables and catalogues through the client, with the examples of the contract.</summary>
public sealed class LineTests(Service service) : IClassFixture<Service>
{
    private static readonly string[] RequestLines = ContractCall.Example("fitment-batch.request.ndjson").Trim().Split('\n');

    [Fact]
    public async Task A_batch_of_lines_is_answered_as_its_example_says()
    {
        var answers = await service.Client.FitmentBatchAsync(AsyncLines()).ToListAsync();
        var kept = ContractCall.Example("fitment-batch.answer.ndjson").Trim().Split('\n').Select(line => JsonSerializer.Deserialize<BatchAnswerLine>(line, SetupClient.SerializerOptions)!).ToList();

        Assert.Equal(kept.Select(Told), answers.Select(Told));
        Assert.True(answers[^1].Summary!.IsComplete);
        Assert.Equal(kept[^1].Summary!.LineCount, answers[^1].Summary!.LineCount);
    }

    [Fact]
    public async Task A_batch_longer_than_one_request_keeps_its_car_and_its_numbers()
    {
        const int count = 8_000;
        var answers = await service.Client.FitmentBatchAsync(Many()).ToListAsync();

        Assert.True(answers.Count(answer => answer.Summary is not null) > 1);
        var lines = answers.Where(answer => answer.Summary is null).ToList();
        Assert.Equal(Enumerable.Range(0, count).Select(i => $"n{i}"), lines.Select(line => line.Id));
        Assert.Equal(Enumerable.Range(2, count), lines.Select(line => line.Line!.Value));
        Assert.All(lines, line => Assert.Equal(CheckStatus.Caution, line.Verdict));

        async IAsyncEnumerable<object> Many()
        {
            await Task.Yield();
            yield return Car();
            for (var i = 0; i < count; i++)
                yield return Candidate($"n{i}");
        }
    }

    [Fact]
    public async Task Only_the_verdicts_wanted_come()
    {
        var answers = await service.Client.FitmentBatchAsync(AsyncLines(), FitmentBatchDetail.Checks, [CheckStatus.Fail, CheckStatus.Pass], Units.Us).ToListAsync();

        Assert.Equal("too-far-in", Assert.Single(answers, line => line.Verdict is not null).Id);
        Assert.NotNull(answers.Single(line => line.Verdict is not null).Result!.Checks);
    }

    [Fact]
    public async Task A_table_is_answered_row_by_row()
    {
        var table = ContractCall.Example("fitment-batch.request.csv");
        var car = JsonSerializer.Deserialize<BatchCarLine>(ContractCall.Example("fitment-batch.car.json"), SetupClient.SerializerOptions)!;
        var rows = await service.Client.FitmentBatchCsvAsync(car, table).ToListAsync();

        Assert.Equal(ContractCall.Example("fitment-batch.answer.csv").Trim().Split('\n'), rows);
    }

    [Fact]
    public async Task A_catalogue_is_answered_pair_by_pair()
    {
        var table = ContractCall.Example("fitment-catalogue.request.csv");
        var cars = ContractCall.Example("fitment-catalogue.cars.ndjson").Trim().Split('\n').Select(line => JsonSerializer.Deserialize<CatalogueCarLine>(line, SetupClient.SerializerOptions)!);
        var answers = await service.Client.FitmentCatalogueAsync(cars, table).ToListAsync();
        var kept = ContractCall.Example("fitment-catalogue.answer.ndjson").Trim().Split('\n').Select(line => JsonSerializer.Deserialize<CatalogueAnswerLine>(line, SetupClient.SerializerOptions)!).ToList();

        Assert.Equal(kept.Select(one => (one.Car, one.Candidate, one.Verdict)), answers.Select(one => (one.Car, one.Candidate, one.Verdict)));
        Assert.Equal(kept[^1].Summary!.AnsweredCount, answers[^1].Summary!.AnsweredCount);
    }

    [Fact]
    public async Task A_batch_without_a_line_is_refused() =>
        await Assert.ThrowsAsync<SetupServiceException>(async () => await service.Client.FitmentBatchAsync(AsyncEnumerable.Empty<object>()).ToListAsync());

    [Fact]
    public async Task A_table_that_is_too_long_is_not_sent() =>
        await Assert.ThrowsAsync<ArgumentException>(async () => await service.Client.FitmentBatchCsvAsync(Car(), new string('x', SetupClient.TableBytes + 1)).ToListAsync());

    private static (int?, string?, CheckStatus?, CheckId?, int) Told(BatchAnswerLine line) => (line.Line, line.Id, line.Verdict, line.Governing, line.Problem?.Errors.Count ?? 0);

    private static BatchCarLine Car() => JsonSerializer.Deserialize<BatchCarLine>(RequestLines[0], SetupClient.SerializerOptions)!;

    private static BatchCandidateLine Candidate(string id) => new()
    {
        Id = id,
        Candidate = new FittingDocument { Wheel = new WheelDocument { Marking = "8Jx17 ET42 5x108 CB67.1" }, Tyre = new TyreDocument { Marking = "225/45R17 94W XL" } },
    };

    /// <summary>The lines of the example; an id that is a number is sent as its digits.</summary>
    private static async IAsyncEnumerable<object> AsyncLines()
    {
        await Task.Yield();
        foreach (var line in RequestLines)
        {
            yield return line.Contains("\"vehicle\"", StringComparison.Ordinal)
                ? JsonSerializer.Deserialize<BatchCarLine>(line, SetupClient.SerializerOptions)!
                : JsonSerializer.Deserialize<BatchCandidateLine>(line.Replace("\"id\":3", "\"id\":\"3\"", StringComparison.Ordinal), SetupClient.SerializerOptions)!;
        }
    }
}
