using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using Microsoft.Extensions.Configuration;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Host.OpenApi;
using SetupService.Api.Host.Settings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Fitment.Catalogue;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Host;

/// <summary>Caps that an operator has set: each holds at its edge, refuses just past it, and is told by the refusal and by the description.</summary>
public sealed partial class CapsTests : IAsyncLifetime
{
    private const int BodyBytes = 5000;
    private const int LineBytes = 2000;
    private const int QueryLength = 300;
    private const int Cars = 3;
    private const int CarBytes = 4096;

    private RunningService _service = null!;

    public async Task InitializeAsync() => _service = await RunningService.StartAsync(configure: static builder => builder.Configuration.AddInMemoryCollection(new Dictionary<string, string?>
    {
        ["Caps:BodyBytes"] = Text(BodyBytes),
        ["Caps:LineBytes"] = Text(LineBytes),
        ["Caps:QueryLength"] = Text(QueryLength),
        ["Caps:CatalogueCars"] = Text(Cars),
        ["Caps:CatalogueCarBytes"] = Text(CarBytes),
    }));

    public async Task DisposeAsync() => await _service.DisposeAsync();

    [Theory]
    [InlineData(0, false, true)]
    [InlineData(0, true, true)]
    [InlineData(1, false, false)]
    [InlineData(1, true, false)]
    public async Task A_body(int beyond, bool chunked, bool isRead)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, Calls.Check);
        request.Content = new StringContent("{" + new string(' ', BodyBytes + beyond - 2) + "}", System.Net.Http.Headers.MediaTypeHeaderValue.Parse("application/json"));
        request.Headers.TransferEncodingChunked = chunked;
        using var response = await _service.Client.SendAsync(request);

        // What was read is refused for what is missing in it.
        var problem = await Problems.Read(response, isRead ? ProblemTypes.InvalidRequest : ProblemTypes.TooLarge);
        Assert.Equal(!isRead, problem.GetProperty("detail").GetString()!.Contains(Text(BodyBytes), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public async Task A_line_of_a_batch(int beyond, bool isRead)
    {
        var line = "{\"id\":7" + new string(' ', LineBytes + beyond - 8) + "}";
        using StringContent lines = new(line + "\n", System.Net.Http.Headers.MediaTypeHeaderValue.Parse(NdjsonBatch.MediaType));
        using var response = await _service.Client.PostAsync(new Uri(Calls.Batch, UriKind.Relative), lines);
        var answer = JsonNode.Parse((await response.Content.ReadAsStringAsync()).Split('\n')[0])!;

        Assert.Equal(isRead ? 400 : 413, answer["problem"]!["status"]!.GetValue<int>());
        if (!isRead)
            Assert.Contains(Text(LineBytes), answer["problem"]!["detail"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public async Task A_query_string(int beyond, bool isRead)
    {
        const string Start = "?marking=225/45R17&x=";
        using var response = await _service.Client.GetAsync(new Uri("/v1/tyres/decode" + Start.PadRight(QueryLength + beyond, 'x'), UriKind.Relative));

        Assert.Equal([isRead ? "x unknownParameter" : " tooLong"], (await Problems.Read(response, ProblemTypes.InvalidRequest)).FaultsOf());
    }

    [Theory]
    [InlineData(Cars, 50, true)]
    [InlineData(Cars + 1, 50, false)]
    [InlineData(Cars, CarBytes / Cars, true)]
    [InlineData(Cars, (CarBytes / Cars) + 1, false)]
    public async Task Cars_of_a_catalogue(int count, int length, bool areHeld)
    {
        var cars = string.Concat(Enumerable.Range(0, count).Select(i => $"{{\"id\":{i},\"vehicle\":{{}}}}".PadRight(length) + "\n"));
        using var form = CatalogueCalls.Form(cars, "{\"id\":\"a\"}\n");
        using var response = await _service.Client.PostAsync(new Uri(CatalogueCalls.Path, UriKind.Relative), form);

        Assert.Equal(areHeld ? HttpStatusCode.OK : HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
    }

    [Fact]
    public async Task The_description_names_them()
    {
        var description = await _service.Client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative));

        Assert.Contains($"one may have {BodyBytes} bytes, a line of a batch or catalogue {LineBytes}.", description, StringComparison.Ordinal);
        Assert.Contains($"A body may have at most {BodyBytes} bytes.", description, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_alone_is_named_by_the_description_that_is_shipped()
    {
        foreach (var (caps, told) in new (CapSettings, string)[]
        {
            (new() { BodyBytes = BodyBytes }, $"one may have {BodyBytes} bytes, a line of a batch or catalogue 65536."),
            (new() { LineBytes = LineBytes }, $"A line or row may have at most {LineBytes} bytes."),
            (new() { QueryLength = QueryLength }, $"A query string may have at most {QueryLength} characters."),
            (new() { CatalogueCars = Cars }, $"The part cars may have {Cars} cars and 4194304 bytes."),
            (new() { CatalogueCarBytes = CarBytes }, $"The part cars may have 1000 cars and {CarBytes} bytes."),
        })
        {
            foreach (var description in new[] { await new CommittedDescription(caps).JsonAsync(), await new CommittedDescription(caps).YamlAsync() })
                Assert.Contains(told, SpaceOrBreak().Replace(System.Text.Encoding.UTF8.GetString(description), " "), StringComparison.Ordinal);
        }
    }

    [System.Text.RegularExpressions.GeneratedRegex(@"\s+")]
    private static partial System.Text.RegularExpressions.Regex SpaceOrBreak();

    [Fact]
    public void One_out_of_its_range_stops_the_start()
    {
        var fault = Assert.Throws<SettingException>(static () => SetupService.Api.Host.SetupServiceHost.Build(["--urls", "http://127.0.0.1:0", "--Caps:BodyBytes", "1"]));

        Assert.Contains("Caps:BodyBytes", fault.Message, StringComparison.Ordinal);
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
