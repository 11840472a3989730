using System.Text;
using System.Text.Json.Nodes;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Handling.WhatIf;
using SetupService.Api.Host;
using SetupService.Api.Plans;
using SetupService.Api.Tests.Examples;

namespace SetupService.Api.Tests.Http;

/// <summary>
/// What it costs to refuse the greatest bodies: of faults that are not listed, and of elements too many, only their number is found. Told by what is allocated, which no other
/// load on the machine changes.
/// </summary>
public sealed class RefusalCostTests
{
    private const int Bytes = 250_000;

    // What the fast path binds before it refuses, what a body is copied to, and a hundred faults.
    private const int AllocatedPerByte = 32;

    [Fact]
    public void Members_nobody_knows() => Refuse<CheckRequest>("{" + string.Join(',', Enumerable.Range(0, Bytes / 16).Select(static i => $"\"vehikle{i}\":1")) + "}", "moreFaults");

    [Fact]
    public void Members_given_twice() => Refuse<CheckRequest>("{" + string.Join(',', Enumerable.Repeat("\"vehicle\":{}", Bytes / 13)) + "}", "moreFaults");

    [Theory]
    [InlineData("parts")]
    [InlineData("goals")]
    public async Task Parts_of_a_plan(string list) => Refuse<PlanRequest>(await FullAsync("plan", list), "tooMany");

    [Fact]
    public async Task Changes_to_be_compared() => Refuse<WhatIfRequest>(await FullAsync("what-if", "changes"), "tooMany");

    /// <summary>An example of which a list has one element, over and over.</summary>
    private static async Task<string> FullAsync(string example, string list)
    {
        var body = JsonNode.Parse(await File.ReadAllTextAsync(ExampleCall.FileOf(example + ".request.json")))!;
        var one = body[list]![0]!.ToJsonString();
        body[list] = new JsonArray([.. Enumerable.Range(0, Bytes / one.Length).Select(_ => JsonNode.Parse(one))]);
        return body.ToJsonString();
    }

    private static void Refuse<T>(string body, string code)
        where T : class
    {
        var reader = ServiceContract.Instance.ReaderOf<T>();
        var utf8 = Encoding.UTF8.GetBytes(body);
        reader.Read(utf8, out _, out _);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var isRead = reader.Read(utf8, out _, out var refusal);
        var perByte = (double)(GC.GetAllocatedBytesForCurrentThread() - before) / utf8.Length;

        Assert.False(isRead);
        Assert.Contains(refusal!, fault => fault.Code == code);
        Assert.InRange(perByte, 0, AllocatedPerByte);
    }
}
