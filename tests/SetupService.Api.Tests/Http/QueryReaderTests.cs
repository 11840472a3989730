using System.Net;
using System.Text.Json;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Tests.Http;

/// <summary>Query strings: read strictly, every fault in one answer.</summary>
public sealed class QueryReaderTests(ProductionEcho fixture) : IClassFixture<ProductionEcho>
{
    [Theory]
    [InlineData("marking=a", "a  Metric")]
    [InlineData("marking=a%20b&speedKmh=1e2&units=us", "a b 100 Us")]
    [InlineData("units=metric&speedKmh=0&marking=%C3%A9", "é 0 Metric")]
    [InlineData("marking=1234567890&speedKmh=300", "1234567890 300 Metric")]
    public async Task Declared_parameters_are_read(string query, string expected)
    {
        using var response = await Get(query);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        using var answer = JsonDocument.Parse(await response.Content.ReadAsStringAsync());
        Assert.Equal(expected, answer.RootElement.GetProperty("status").GetString());
    }

    [Theory]
    [InlineData("", "marking", FaultCodes.Required)]
    [InlineData("marking=", "marking", FaultCodes.Required)]
    [InlineData("marking=a&marking=b", "marking", FaultCodes.RepeatedParameter)]
    [InlineData("marking=12345678901", "marking", FaultCodes.TooLong)]
    [InlineData("marking=a&speed=3", "speed", FaultCodes.UnknownParameter)]
    [InlineData("marking=a&speedKmh=", "speedKmh", FaultCodes.Required)]
    [InlineData("marking=a&speedKmh=fast", "speedKmh", FaultCodes.WrongType)]
    [InlineData("marking=a&speedKmh=NaN", "speedKmh", FaultCodes.WrongType)]
    [InlineData("marking=a&speedKmh=Infinity", "speedKmh", FaultCodes.WrongType)]
    [InlineData("marking=a&speedKmh=1,5", "speedKmh", FaultCodes.WrongType)]
    [InlineData("marking=a&speedKmh=%201", "speedKmh", FaultCodes.WrongType)]
    [InlineData("marking=a&speedKmh=1e999", "speedKmh", FaultCodes.NotFinite)]
    [InlineData("marking=a&speedKmh=300.1", "speedKmh", FaultCodes.OutOfRange)]
    [InlineData("marking=a&speedKmh=-0.1", "speedKmh", FaultCodes.OutOfRange)]
    [InlineData("marking=a&units=US", "units", FaultCodes.UnknownWord)]
    [InlineData("marking=a&units=imperial", "units", FaultCodes.UnknownWord)]
    public async Task A_fault_names_its_parameter(string query, string parameter, string code)
    {
        using var response = await Get(query);

        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        var error = Assert.Single(problem.GetProperty("errors").EnumerateArray());
        Assert.Equal((parameter, code), (error.GetProperty("parameter").GetString(), error.GetProperty("code").GetString()));
    }

    [Fact]
    public async Task A_name_in_another_case_is_another_name()
    {
        using var response = await Get("Marking=a");

        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        Assert.Contains(problem.GetProperty("errors").EnumerateArray(), error => error.GetProperty("code").GetString() == FaultCodes.UnknownParameter);
    }

    [Fact]
    public async Task All_faults_come_at_once()
    {
        using var response = await Get("speedKmh=301&units=x&a=1&b=2");

        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        Assert.Equal(
            [FaultCodes.Required, FaultCodes.OutOfRange, FaultCodes.UnknownWord, FaultCodes.UnknownParameter, FaultCodes.UnknownParameter],
            problem.GetProperty("errors").EnumerateArray().Select(error => error.GetProperty("code").GetString()));
    }

    [Fact]
    public async Task A_query_string_beyond_its_limit_is_not_taken_apart()
    {
        using var response = await Get("marking=a&" + string.Join('&', Enumerable.Range(0, 500).Select(number => $"x{number}=1")));

        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        Assert.Equal(FaultCodes.TooLong, Assert.Single(problem.GetProperty("errors").EnumerateArray()).GetProperty("code").GetString());
    }

    private Task<HttpResponseMessage> Get(string query) => fixture.Client.GetAsync(new Uri("/test/query?" + query, UriKind.Relative));
}
