using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;

namespace SetupService.Api.Tests.Plans;

/// <summary>Asks the single calls what a plan says of its packages, and compares number by number.</summary>
internal static class PlanAgainstSingleCalls
{
    private static readonly string[] Alike =
        ["frontRideFrequencyHz", "rearRideFrequencyHz", "frontDampingRatio", "rearDampingRatio", "frontRideHeightChangeMm", "rearRideHeightChangeMm", "frontCamberDeg", "rearCamberDeg"];

    /// <summary>What a package holds in every bend, how it rides and stands, is that of what-if's changes together; its fit that of the car check.</summary>
    public static async Task PackageHoldsAsync(HttpClient client, JsonObject body, JsonElement answer, JsonElement package)
    {
        var (limit, front, rear, shares) = (0.0, 0.0, 0.0, 0.0);
        JsonElement after = default;
        foreach (var bend in body["bends"]!.AsArray())
        {
            var asked = new JsonObject { ["vehicle"] = body["vehicle"]!.DeepClone(), ["changes"] = Changes(body, package) };
            foreach (var name in (string[])["lateralG", "cornerRadiusM", "turn"]) asked[name] = bend![name]!.DeepClone();
            if (body["heldLateralG"] is { } held && body["bends"]!.AsArray().Count == 1) asked["heldLateralG"] = held.DeepClone();
            after = (await client.AnswerOf("/v1/handling/what-if", asked)).GetProperty("together").GetProperty("after");
            var share = bend!["sharePct"]!.GetValue<double>();
            front += share * after.Number("frontLimitG");
            rear += share * after.Number("rearLimitG");
            limit += share * Math.Min(after.Number("frontLimitG"), after.Number("rearLimitG"));
            shares += share;
        }

        var (track, road) = (package.GetProperty("after").GetProperty("track"), package.GetProperty("after").GetProperty("road"));
        Near(limit / shares, track.Number("limitG"), 2e-6, "limitG", package);
        Near(front / shares, track.Number("frontLimitG"), 2e-6, "frontLimitG", package);
        Near(rear / shares, track.Number("rearLimitG"), 2e-6, "rearLimitG", package);
        // Over several bends no single call tells the mean of a changed car; PackageEvaluatorTests holds it to the camber target's own.
        if (body["bends"]!.AsArray().Count == 1)
        {
            Near(after.Number("frontInclinationDeg"), track.Number("frontInclinationDeg"), 2e-5, "frontInclinationDeg", package);
            Near(after.Number("rearInclinationDeg"), track.Number("rearInclinationDeg"), 2e-5, "rearInclinationDeg", package);
        }

        foreach (var name in Alike)
        {
            Assert.Equal(after.GetProperty(name).ValueKind, road.GetProperty(name).ValueKind);
            if (after.GetProperty(name).ValueKind == JsonValueKind.Number) Near(after.Number(name), road.Number(name), 1e-7 * Math.Max(1, Math.Abs(after.Number(name))), name, package);
        }

        foreach (var setting in package.GetProperty("settings").EnumerateArray())
            Near(road.Number(setting.GetProperty("axle").GetString() + "CamberDeg"), setting.Number("camberDeg"), 0.02, "settings", package);
        Near(track.Number("limitG") - answer.GetProperty("before").GetProperty("track").Number("limitG"), package.GetProperty("change").GetProperty("track").Number("limitG"), 1e-7, "change", package);
        if (package.GetProperty("checks").GetArrayLength() > 0) await FitsAsync(client, body, package);
    }

    private static async Task FitsAsync(HttpClient client, JsonObject body, JsonElement package)
    {
        var asked = new JsonObject { ["vehicle"] = body["vehicle"]!.DeepClone() };
        foreach (var axle in (string[])["front", "rear"])
        {
            if (package.GetProperty("after").GetProperty("road").GetProperty(axle + "RideHeightChangeMm") is { ValueKind: JsonValueKind.Number } height && height.GetDouble() != 0)
                asked["vehicle"]![axle]!["rideHeightChangeMm"] = height.GetDouble();
        }

        var chosen = Parts(body, package).ToArray();
        foreach (var check in package.GetProperty("checks").EnumerateArray())
        {
            var axle = check.GetProperty("axle").GetString()!;
            var fitting = new JsonObject();
            foreach (var name in (string[])["wheel", "tyre"])
            {
                // What a part states replaces member by member, a marking whole.
                var stated = body["vehicle"]![axle]![name]!.DeepClone().AsObject();
                foreach (var member in chosen.SelectMany(part => part["change"]?["vehicle"]?[axle]?[name]?.AsObject() ?? [])) stated[member.Key] = member.Value!.DeepClone();
                fitting[name] = stated;
            }

            asked[axle] = fitting;
        }

        var answer = await client.AnswerOf("/v1/fitment/car-check", asked);
        foreach (var check in package.GetProperty("checks").EnumerateArray())
        {
            var single = answer.GetProperty(check.GetProperty("axle").GetString()!);
            Assert.Equal(single.GetProperty("verdict").GetString(), check.GetProperty("verdict").GetString());
            Assert.Equal(single.GetProperty("decidedBy").GetRawText(), check.GetProperty("decidedBy").GetRawText());
        }
    }

    /// <summary>How the car as given leans is that of camber-target; how it rides that of ride.</summary>
    public static async Task CarAsGivenAsync(HttpClient client, JsonObject body, JsonElement answer)
    {
        var before = answer.GetProperty("before");
        foreach (var axle in (string[])["front", "rear"])
        {
            var asked = new JsonObject { ["vehicle"] = body["vehicle"]!.DeepClone(), ["axle"] = axle, ["corners"] = body["bends"]!.DeepClone() };
            if (body["heldLateralG"] is { } held) asked["heldLateralG"] = held.DeepClone();
            var target = await client.AnswerOf("/v1/handling/camber-target", asked);
            Near(target.GetProperty("before").Number("meanInclinationDeg"), before.GetProperty("track").Number(axle + "InclinationDeg"), 1e-6, axle + "InclinationDeg", before);
        }

        var ride = await client.AnswerOf("/v1/handling/ride", new JsonObject { ["vehicle"] = body["vehicle"]!.DeepClone() });
        foreach (var axle in (string[])["front", "rear"])
        {
            Near(ride.GetProperty(axle).Number("rideFrequencyHz"), before.GetProperty("road").Number(axle + "RideFrequencyHz"), 1e-7, axle + "RideFrequencyHz", before);
            var ratio = ride.GetProperty(axle).GetProperty("dampingRatio");
            if (before.GetProperty("road").GetProperty(axle + "DampingRatio") is { ValueKind: JsonValueKind.Number } told)
                Near((ratio.Number("bump") + ratio.Number("rebound")) / 2, told.GetDouble(), 1e-7, axle + "DampingRatio", before);
        }
    }

    /// <summary>What-if's changes of a package: its parts', then the cambers it sets.</summary>
    public static JsonArray Changes(JsonObject body, JsonElement package)
    {
        var changes = new JsonArray();
        foreach (var part in Parts(body, package))
        {
            if (part["change"] is { } change) changes.Add(change.DeepClone());
        }

        foreach (var setting in package.GetProperty("settings").EnumerateArray())
            changes.Add(new JsonObject { ["vehicle"] = new JsonObject { [setting.GetProperty("axle").GetString()!] = new JsonObject { ["alignment"] = new JsonObject { ["camberDeg"] = setting.Number("statedCamberDeg") } } } });
        if (changes.Count == 0) changes.Add(JsonNode.Parse("""{"vehicle":{"label":"as it is"}}"""));
        return changes;
    }

    private static IEnumerable<JsonObject> Parts(JsonObject body, JsonElement package) =>
        body["parts"]!.AsArray().Where(part => package.GetProperty("parts").EnumerateArray().Any(id => id.GetString() == part!["id"]!.GetValue<string>())).Select(part => part!.AsObject());

    private static void Near(double expected, double actual, double within, string what, JsonElement of) =>
        Assert.True(Math.Abs(expected - actual) <= within, FormattableString.Invariant($"{what}: {expected} by the single call, {actual} in {of.GetRawText()}"));
}
