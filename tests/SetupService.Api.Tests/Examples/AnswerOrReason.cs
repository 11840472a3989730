using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Examples;

/// <summary>Holds a call to this: any request gets an answer that keeps its described schema, or a refusal that says why, and never a number that is none.</summary>
internal static class AnswerOrReason
{
    /// <summary>What is put in some place of a request now and then.</summary>
    private static readonly string[] Hostile =
        ["null", "true", "\"\"", "[]", "{}", "[[[[]]]]", "-0", "1e999", "-1e308", "5e-324", "5000.0000000000009", "3.0000000000000004", "0", "2", "150", "1900", "-15", "\"many\"", "\"left\"", "{\"xMm\":0}", "1,\"kind\":\"measured\""];

    /// <summary>Sends one request; gives its status.</summary>
    /// <param name="client">The service.</param>
    /// <param name="schemas">What it describes.</param>
    /// <param name="path">The call.</param>
    /// <param name="body">The request.</param>
    /// <param name="moreOf">What must hold of an answer beyond its schema, told the answer and the request.</param>
    public static async Task<int> CheckAsync(HttpClient client, DescribedSchemas schemas, string path, string body, Action<JsonElement, string>? moreOf = null)
    {
        using var response = await client.PostAsync(path, body);
        var text = await response.Content.ReadAsStringAsync();
        var status = (int)response.StatusCode;
        Assert.True(status is 200 or 400 or 422, $"{status} for {body}: {text}");
        Assert.Null(schemas.FaultOf("post", path, status, text));
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
        if (status == 200)
        {
            UnknownIds.Check(Calls.Parse(text));
            moreOf?.Invoke(Calls.Parse(text), body);
        }
        else
        {
            Assert.NotEmpty((await Problems.Read(response, ProblemTypes.ForStatus(status))).GetProperty("errors").EnumerateArray());
        }

        return status;
    }

    /// <summary>Sends sound requests with something hostile in one place, or one member taken out.</summary>
    public static async Task CheckHostileAsync(HttpClient client, string path, Gen<JsonObject> sound, int requests, Action<JsonElement, string>? moreOf = null)
    {
        var schemas = await DescribedSchemas.ReadAsync(client);
        await Gen.Select(sound, Gen.Int[0, 10_000], Gen.OneOf(Hostile), Gen.Bool).SampleAsync(
            async (body, place, raw, removes) =>
            {
                var places = BodyPlaces.Of(body).ToArray();
                var chosen = places[place % places.Length];
                var text = removes && BodyPlaces.IsMember(chosen) ? body.Without(chosen).ToJsonString() : body.WithRaw(chosen, raw);
                await CheckAsync(client, schemas, path, text, moreOf);
            },
            iter: requests);
    }
}
