using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Http.Contract;
using SetupService.Api.Tests.Fitment;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Requests of the two calls on any corner, every member within its limits and most of them kept together as the rules want.</summary>
internal static class AnyRequest
{
    private static readonly (string Place, Gen<JsonNode> Value)[] OfAxle =
    [
        ("/axle", Word("front", "rear")), ("/vehicle/drivenAxle", Word("front", "rear", "both")), ("/motion", Word("parallel", "opposite")),
        ("/vehicle/wheelbaseMm", Number(1500, 4500)), ("/vehicle/centreOfGravityHeightMm", Number(100, 2000)), ("/vehicle/brakeShareFrontPct", Number(0, 100)),
        ("/measuringDiameterMm", Number(200, 1000)), ("/vehicle/front/trackMm", Number(900, 2200)), ("/vehicle/front/rideHeightChangeMm", Number(-150, 150)),
    ];

    public static Gen<JsonObject> Sweep { get; } =
        from kind in Gen.OneOf(Corners.Kinds.ToArray())
        from corner in AnyCorner.Of(kind)
        from travel in Range(500)
        from rack in Range(200)
        from hasRack in Gen.Bool
        from members in Gen.Int[0, (1 << OfAxle.Length) - 1]
        from values in ValuesOfAxle
        select SweepOf(kind, corner, travel, hasRack ? rack : null, members, values);

    public static Gen<JsonObject> Adjustment { get; } =
        from kind in Gen.OneOf(Corners.Kinds.ToArray())
        from corner in AnyCorner.Of(kind)
        from words in Gen.Shuffle(WordsOf(kind), 1, Math.Min(4, WordsOf(kind).Length))
        from stray in Gen.Int[0, 12 * EnumNames<Adjuster>.List.Count]
        from numbers in AnyCorner.Within(-1, 1).Array[12]
        from target in Target
        from choice in Gen.Int[0, 63]
        select AdjustmentOf(corner, stray < EnumNames<Adjuster>.List.Count ? [.. words, EnumNames<Adjuster>.List[stray]] : words, numbers, target, choice);

    private static Gen<JsonNode[]> ValuesOfAxle =>
        OfAxle.Aggregate(Gen.Const(Array.Empty<JsonNode>()), (all, one) => Gen.Select(all, one.Value, (values, value) => (JsonNode[])[.. values, value]));

    private static Gen<JsonObject> Target =>
        from camberDeg in AnyCorner.Within(-15, 15)
        from casterDeg in AnyCorner.Within(-5, 20)
        from which in Gen.Int[0, 8]
        select new[] { ("camberDeg", camberDeg, which < 6), ("casterDeg", casterDeg, which is > 3 and < 8) }
            .Where(one => one.Item3).Aggregate(new JsonObject(), (target, one) => target.With("/" + one.Item1, one.Item2));

    private static string[] WordsOf(string kind) => (string[])AdjusterTests.HasWhat().Single(row => (string)row[0] == kind)[1];

    private static Gen<JsonNode> Word(params string[] words) => Gen.OneOf(words).Select(word => (JsonNode)word);

    private static Gen<JsonNode> Number(double minimum, double maximum) => AnyCorner.Within(minimum, maximum).Select(number => (JsonNode)number);

    /// <summary>From one place to another in one to twelve steps; now and then the wrong way, or none.</summary>
    private static Gen<JsonNode> Range(double furthest) =>
        from way in Gen.OneOf(1.0, 0.1, 0.02)
        from @from in AnyCorner.Within(-furthest, furthest)
        from to in AnyCorner.Within(-furthest, furthest)
        from steps in Gen.Int[1, 12]
        from turn in Gen.Int[0, 20]
        select GeometryRequests.Range(way * @from, way * to, turn switch
        {
            0 => way * (@from - to) / steps,
            1 => 0,
            _ => Math.Clamp(@from == to ? 1 : way * (to - @from) / steps, -furthest, furthest),
        });

    private static JsonObject SweepOf(string kind, JsonObject body, JsonNode travel, JsonNode? rack, int members, JsonNode[] values)
    {
        body["travelMm"] = travel;
        if (rack is not null && kind is not (GeometryRequests.Arm or GeometryRequests.Beam))
            body["rackMm"] = rack;
        for (var i = 0; i < OfAxle.Length; i++)
        {
            if ((members & (1 << i)) != 0)
                body.With(OfAxle[i].Place, values[i].DeepClone());
        }

        return body;
    }

    private static JsonObject AdjustmentOf(JsonObject body, string[] words, double[] numbers, JsonObject target, int choice)
    {
        var isWanted = (choice & 1) != 0;
        body[isWanted ? "adjusters" : "adjustments"] = new JsonArray([.. words.Select((word, index) => Adjuster(word, numbers[2 * index], numbers[(2 * index) + 1], isWanted))]);
        if (isWanted)
            body[(choice & 8) != 0 ? "change" : "target"] = target.DeepClone();
        if (isWanted && (choice & 2) != 0)
            body["archGapMm"] = 200 * Math.Abs(numbers[11]);
        if ((choice & 4) != 0)
            body["motion"] = "opposite";
        return WithReset(body, choice);
    }

    private static JsonObject Adjuster(string word, double one, double other, bool isWanted)
    {
        JsonObject adjuster = new() { ["adjuster"] = word };
        if (word == "linkLength")
            adjuster["link"] = 1 + (int)(2 * Math.Abs(one));
        if (word == "knuckleEccentric")
            adjuster["boltSpacingMm"] = 10 + (190 * Math.Abs(other));
        var isAngle = word.StartsWith("hubShim", StringComparison.Ordinal);
        var most = isAngle ? 5 : word == "knuckleEccentric" ? 5 + (95 * Math.Abs(other)) : 100;
        var unit = isAngle ? "Deg" : "Mm";
        if (!isWanted)
        {
            adjuster["amount" + unit] = most * one;
            return adjuster;
        }

        if (one < 0.8)
            adjuster["range" + unit] = new JsonObject { ["from"] = most * Math.Min(one, other), ["to"] = most * Math.Max(one, other) };
        return adjuster;
    }

    private static JsonObject WithReset(JsonObject body, int choice)
    {
        if ((choice & 16) != 0)
            body["resetToe"] = (choice & 32) != 0;
        return body;
    }
}
