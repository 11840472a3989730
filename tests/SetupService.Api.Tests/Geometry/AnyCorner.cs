using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Fitment;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Suspensions of every kind: as they are, a little off, much off, on a coarse grid where points fall together, and anywhere.</summary>
internal static class AnyCorner
{
    private static readonly Gen<Func<double, double>> Plain = Gen.Const<Func<double, double>>(place => place);
    private static readonly Gen<Func<double, double>> Grid = Gen.Int[-3, 6].Select(cell => (Func<double, double>)(_ => 100 * cell));
    private static readonly Gen<Func<double, double>> Beyond = Gen.Double[-5200, 5200].Select(place => (Func<double, double>)(_ => place));

    /// <summary>How the coordinates are moved, one way a corner.</summary>
    private static readonly Gen<Func<double, double>>[] Ways = [Plain, Off(5), Off(40), Off(40), Off(400), Grid, Beyond];

    /// <summary>Suspension, alignment and loaded radius of a kind.</summary>
    public static Gen<JsonObject> Of(string kind) =>
        from way in Gen.Int[0, Ways.Length - 1]
        from moves in Ways[way].Array[48]
        from camberDeg in Within(-15, 15)
        from toeDeg in Within(-5, 5)
        from radiusMm in Within(150, 600)
        from choice in Gen.Int[0, 7]
        select Made(kind, moves, camberDeg, toeDeg, radiusMm, choice);

    /// <summary>A number within its limits, often one of them or none at all.</summary>
    public static Gen<double> Within(double minimum, double maximum) => Gen.OneOf(
        Gen.Double[minimum, maximum], Gen.Double[minimum, maximum], Gen.OneOf(minimum, maximum, Math.Clamp(0, minimum, maximum)));

    private static Gen<Func<double, double>> Off(double mm) => Gen.Double[-mm, mm].Select(by => (Func<double, double>)(place => place + by));

    private static JsonObject Made(string kind, Func<double, double>[] moves, double camberDeg, double toeDeg, double radiusMm, int choice)
    {
        var body = Corners.Of(kind);
        var points = body["vehicle"]!["front"]!["suspension"]!["points"]!.AsObject();
        var next = 0;
        foreach (var place in BodyPlaces.Of(points).Where(place => place.EndsWith("Mm", StringComparison.Ordinal)))
        {
            // The contract wants a beam's shear centre in the car's centre plane; off it there is only one answer.
            if (place == "/beamShearCentre/yMm")
                continue;
            var group = BodyPlaces.At(points, place[..place.LastIndexOf('/')]).AsObject();
            var name = place[(place.LastIndexOf('/') + 1)..];
            group[name] = moves[next % moves.Length](group[name]!.GetValue<double>());
            next++;
        }

        if ((choice & 1) != 0)
            AddLine(points, "spring", moves);
        if ((choice & 2) != 0)
            AddLine(points, "damper", moves);
        if ((choice & 4) != 0)
            points["wheelCentre"]!["yMm"] = Math.Min(4999, 1 + YOf(points).Max());
        return body.With("/vehicle/front/alignment", new JsonObject { ["camberDeg"] = camberDeg, ["toeDeg"] = toeDeg }).With("/vehicle/front/loadedRadiusMm", radiusMm);
    }

    /// <summary>How far outboard the points stand; a wheel inboard of them all is refused as soon as it is seen.</summary>
    private static IEnumerable<double> YOf(JsonObject points) =>
        BodyPlaces.Of(points).Where(place => place.EndsWith("/yMm", StringComparison.Ordinal)).Select(place => BodyPlaces.At(points, place).GetValue<double>());

    private static void AddLine(JsonObject points, string name, Func<double, double>[] moves)
    {
        points[name + "Chassis"] = Corners.Point(moves[^1](10), moves[^2](520), moves[^3](600));
        points[name + "Moving"] = Corners.Point(moves[^4](0), moves[^5](600), moves[^6](230));
    }
}
