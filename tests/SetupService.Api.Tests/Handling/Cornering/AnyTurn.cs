using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;

namespace SetupService.Api.Tests.Handling.Cornering;

/// <summary>Requests on turns of any car: one of three, some of its numbers changed a little or much, members left out, any suspension put in.</summary>
internal static class AnyTurn
{
    private static readonly double[] Factors = [0, 0.02, 0.3, 0.7, 0.9, 1.1, 1.4, 3, 40, -1];

    public static Gen<JsonObject> Of(string path) =>
        from lateralG in AnyCorner.Within(0, 3)
        from way in Gen.Int[0, 2]
        from suspension in Suspension
        from atRear in Gen.Bool
        from changes in Gen.Select(Gen.Int[0, 10_000], Gen.OneOf(Factors), Gen.Int[0, 4]).Array[0, 6]
        from speedKmh in AnyCorner.Within(1, 500)
        from bySpeed in Gen.Bool
        select Made(path, lateralG, way, way == 1 ? null : suspension, atRear, changes, bySpeed ? speedKmh : null);

    private static Gen<JsonObject?> Suspension =>
        from kind in Gen.OneOf(Corners.Kinds.ToArray())
        from corner in AnyCorner.Of(kind)
        from isPut in Gen.Int[0, 2]
        select isPut == 0 ? (JsonObject?)corner["vehicle"]!["front"]!["suspension"]!.DeepClone() : null;

    private static JsonObject Made(
        string path, double lateralG, int way, JsonObject? suspension, bool atRear, (int Place, double Factor, int Kind)[] changes, double? speedKmh)
    {
        var body = way switch { 0 => CorneringCalls.Example(lateralG), 1 => CorneringCalls.Plain(lateralG), _ => CorneringCalls.Whole(lateralG) };
        if (way < 2 && lateralG > 1.1)
            body.Remove("heldLateralG");
        if (suspension is not null)
            body["vehicle"]![atRear ? "rear" : "front"]!["suspension"] = suspension;
        if (speedKmh is not null)
            body.Without("/cornerRadiusM").With("/speedKmh", speedKmh.Value);
        foreach (var (place, factor, kind) in changes)
            Change(body, place, factor, leavesOut: kind == 0);
        return path == CorneringCalls.Turn ? body : CorneringCalls.Swept(body, 0, Math.Max(0.1, lateralG), Math.Max(0.1, lateralG) / 4);
    }

    private static void Change(JsonObject body, int place, double factor, bool leavesOut)
    {
        var places = BodyPlaces.Of(body["vehicle"]).Where(BodyPlaces.IsMember).ToArray();
        var chosen = "/vehicle" + places[place % places.Length];
        if (leavesOut)
            body.Without(chosen);
        else if (BodyPlaces.At(body, chosen) is JsonValue value && value.TryGetValue<double>(out var number))
            body.With(chosen, number * factor);
    }
}
