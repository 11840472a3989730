using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Examples;

namespace SetupService.Api.Tests.Wear;

/// <summary>Requests on tyres, sound ones of many kinds: each part of the example may be missing, each number otherwise.</summary>
internal static class AnyTyres
{
    private static readonly string[] Parts =
    [
        "newDepthMm", "patterns", "temperatureC", "temperatureBy", "secondsAfterLap", "pressureKpa", "gaugeErrorMm", "madeWeek",
    ];

    private static readonly string Example = File.ReadAllText(ExampleCall.FileOf("wear-diagnosis.request.json"));

    public static Gen<JsonObject> Requests { get; } = Gen.Select(
        Gen.Int[0, 255], Gen.Int[0, 15], Gen.Double[0, 7.8].Array[12], Gen.Bool, Gen.Bool, Gen.Int[0, 300],
        (parts, wheels, depths, hasCar, hasUse, laps) =>
        {
            var request = JsonNode.Parse(Example)!.AsObject();
            var tyres = request["tyres"]!.AsArray();
            for (var i = 3; i >= 0; i--)
            {
                if ((wheels & (1 << i)) == 0)
                {
                    tyres.RemoveAt(i);
                    continue;
                }

                var tyre = tyres[i]!.AsObject();
                tyre["depthMm"] = new JsonObject { ["outer"] = depths[3 * i], ["centre"] = depths[(3 * i) + 1], ["inner"] = depths[(3 * i) + 2] };
                for (var part = 0; part < Parts.Length; part++)
                {
                    if ((parts & (1 << part)) == 0) tyre.Remove(Parts[part]);
                }
            }

            if (!hasCar) request.Remove("vehicle");
            if (hasUse) request["use"]!["trackLaps"] = laps;
            else request.Remove("use");
            return request;
        });
}
