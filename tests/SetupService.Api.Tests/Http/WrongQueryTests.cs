using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Http;

/// <summary>A sound body with a query that breaks the contract: every call refuses it as the query's fault.</summary>
public sealed class WrongQueryTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    public static TheoryData<string> Answers() => [.. ExampleCall.All.Where(call => call.Path.StartsWith("/v1/", StringComparison.Ordinal)).Select(call => call.Answer)];

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task A_parameter_the_call_does_not_know_is_refused(string answer)
    {
        using var response = await ExampleCall.All.Single(call => call.Answer == answer).AskAsync(fixture.Client, "nonsense=1");

        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        var error = Assert.Single(problem.GetProperty("errors").EnumerateArray());
        Assert.Equal(("nonsense", FaultCodes.UnknownParameter), (error.GetProperty("parameter").GetString(), error.GetProperty("code").GetString()));
    }
}
