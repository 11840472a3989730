using System.Reflection;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SetupService.Client.Tests;

/// <summary>
/// The client against the contract and the running service. Each call is made twice with the example of the contract, by the client and by hand: what the client sent
/// must mean the same, and what it read must lose nothing of what came.
/// </summary>
public sealed class EveryCallTests(Service service) : IClassFixture<Service>
{
    // Lines have tests of their own.
    private static readonly string[] OfLines = ["fitmentBatch", "fitmentBatchCsv", "fitmentCatalogue"];

    // The pictures take their query as one record.
    private static readonly string[] OfCompactQuery = ["fitmentPicture", "fitmentBadge"];

    public static TheoryData<string> Names() => [.. ContractCall.All.Select(call => call.Name)];

    public static TheoryData<string> SingleNames() => [.. ContractCall.All.Select(call => call.Name).Except(OfLines).Except(OfCompactQuery)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_call_has_its_method(string name) => Assert.NotNull(ContractCall.Find(name).ClientMethod);

    [Fact]
    public void The_client_has_no_other_methods() =>
        Assert.Equal(
            ContractCall.All.Select(call => call.ClientMethod!.Name).Order(StringComparer.Ordinal),
            typeof(SetupClient).GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Select(method => method.Name).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(SingleNames))]
    public void A_method_takes_what_the_call_takes_and_gives_what_it_answers(string name)
    {
        var call = ContractCall.Find(name);
        var method = call.ClientMethod!;

        Assert.Equal(
            call.Parameters.Select(one => one["name"]!.GetValue<string>()).Append("cancellation"),
            method.GetParameters().Where(one => one.Name != "request").Select(one => one.Name!));
        Assert.Equal(call.BodySchema, method.GetParameters().SingleOrDefault(one => one.Name == "request")?.ParameterType.Name);
        Assert.Equal(call.AnswerSchema ?? "String", method.ReturnType.GenericTypeArguments[0].Name);
    }

    [Theory]
    [MemberData(nameof(SingleNames))]
    public async Task The_example_is_answered_to_the_client_as_to_anybody(string name)
    {
        var call = ContractCall.Find(name);
        var method = call.ClientMethod!;
        var arguments = method.GetParameters().Select(parameter => Argument(call, parameter)).ToArray();
        dynamic task = method.Invoke(service.Client, arguments)!;
        object read = await task;

        var sent = await ByHandAsync(call);
        if (read is string text)
            Assert.Equal(sent, text);
        else
            Assert.Equal(Plain(JsonNode.Parse(sent)), Plain(JsonSerializer.SerializeToNode(read, read.GetType(), SetupClient.SerializerOptions)));
    }

    [Fact]
    public async Task The_pictures_take_their_query()
    {
        CompactQuery query = new()
        {
            New = "8Jx17 ET40 5x108 CB63.4,225/45R17 94W XL",
            Now = "7.5Jx17 ET45 5x108,225/45R17 91W",
            Axle = Axle.Front,
            InMm = 14,
            OutMm = 18,
            OverMm = 12,
            MaximumAxleLoadKg = 870,
            MinimumLoadIndex = 87,
            TopSpeedKmh = 228,
            CentreBoreMm = 63.4,
            Units = Units.Metric,
        };

        Assert.Equal(await ByHandAsync(ContractCall.Find("fitmentPicture")), await service.Client.FitmentPictureAsync(query));
        Assert.Equal(await ByHandAsync(ContractCall.Find("fitmentBadge")), await service.Client.FitmentBadgeAsync(query));
    }

    [Fact]
    public async Task A_refusal_comes_with_every_fault()
    {
        var refusal = await Assert.ThrowsAsync<SetupServiceException>(() => service.Client.TyreDecodeAsync("225/45R17 94W", rimWidthIn: 40, loadKg: 1));

        Assert.Equal(400, refusal.Status);
        Assert.Null(refusal.RetryAfter);
        Assert.Equal(["loadKg", "rimWidthIn"], refusal.Problem!.Errors.Select(fault => fault.Parameter).Order(StringComparer.Ordinal));
    }

    private async Task<string> ByHandAsync(ContractCall call)
    {
        using HttpRequestMessage request = new(new HttpMethod(call.Method), call.Address(_ => true));
        if (call.BodyExample is { } body)
            request.Content = new StringContent(body.ToJsonString(), Encoding.UTF8, call.BodyType!);
        using var response = await service.Http.SendAsync(request);
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        return text;
    }

    /// <summary>The example of a parameter or body as the method wants it.</summary>
    private static object? Argument(ContractCall call, ParameterInfo parameter)
    {
        if (parameter.ParameterType == typeof(CancellationToken))
            return CancellationToken.None;
        if (parameter.Name == "request")
            return call.BodyExample.Deserialize(parameter.ParameterType, SetupClient.SerializerOptions);
        var example = call.Parameters.Single(one => one["name"]!.GetValue<string>() == parameter.Name)["example"];
        return example.Deserialize(parameter.ParameterType, SetupClient.SerializerOptions);
    }

    /// <summary>The JSON with its members in order and without nulls, which mean the same as nothing.</summary>
    private static string Plain(JsonNode? node) => Ordered(node)?.ToJsonString() ?? "null";

    private static JsonNode? Ordered(JsonNode? node) => node switch
    {
        JsonObject members => new JsonObject(members.Where(one => one.Value is not null).OrderBy(one => one.Key, StringComparer.Ordinal).Select(one => KeyValuePair.Create(one.Key, Ordered(one.Value)))),
        JsonArray items => new JsonArray([.. items.Select(Ordered)]),
        JsonValue value when value.GetValueKind() == JsonValueKind.Number => JsonValue.Create(double.Parse(value.ToJsonString(), System.Globalization.CultureInfo.InvariantCulture)),
        _ => node?.DeepClone(),
    };
}
