using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Outlines;

namespace SetupService.Domain.Tests.Fitment.Outlines;

/// <summary>What any section of metal or rubber has, whatever its maker: its outline does not cross itself, and its wall is neither a blade nor a block.</summary>
public sealed class SectionShapeTests
{
    private const int PiecesPerCurve = 12;

    public static TheoryData<double, string> Fittings() => new()
    {
        { 7.5, "225/45R17 91W" }, { 6.5, "205/55R16 91V" }, { 5.5, "185R14C 102Q" }, { 8, "31x10.50R15LT 109Q" }, { 8.5, "245/40R18 97Y" },
    };

    [Theory]
    [MemberData(nameof(Fittings))]
    public void No_outline_crosses_itself(double widthIn, string marking)
    {
        var fitting = DemoCar.Fitting(widthIn, marking: marking);
        var outlines = FittingOutlines.Create(fitting);

        Assert.Null(Crossing(outlines.Rim));
        Assert.Null(Crossing(outlines.Tyre));
        Assert.Null(Crossing(outlines.TyreBody));
        Assert.Null(Crossing(HubOutlines.Create(DemoCar.Axle().Hub, fitting).Flange));
    }

    // Around the nominal 6 mm of the rim (4 at its lip).
    [Theory]
    [MemberData(nameof(Fittings))]
    public void The_metal_of_a_rim_is_as_thick_as_metal(double widthIn, string marking)
    {
        var envelope = Envelope.Compute(DemoCar.Fitting(widthIn, marking: marking));
        var outside = RimSection.TyreSide(envelope, 25.4 * widthIn).Polygon(PiecesPerCurve);
        var inside = RimSection.Metal(envelope, 25.4 * widthIn).Polygon(PiecesPerCurve).Skip(outside.Count).ToList();

        Assert.All(inside, point => Assert.InRange(Distance(point, outside), 2, 9));
        Assert.All(outside, point => Assert.InRange(Distance(point, inside), 2, 9));
    }

    [Theory]
    [MemberData(nameof(Fittings))]
    public void A_tyre_stands_on_its_bead_seat(double widthIn, string marking)
    {
        var fitting = DemoCar.Fitting(widthIn, marking: marking);

        Assert.Equal(Envelope.Compute(fitting).RimSeatRadiusMm, FittingOutlines.Create(fitting).Tyre.Polygon(PiecesPerCurve).Min(point => point.HeightMm), 9);
    }

    /// <summary>Two pieces of the closed outline that cross, or null.</summary>
    private static (OutlinePoint, OutlinePoint)? Crossing(Outline outline)
    {
        var points = outline.Polygon(PiecesPerCurve).Append(outline.Start).ToList();
        for (var i = 0; i + 1 < points.Count; i++)
        {
            for (var k = i + 2; k + 1 < points.Count; k++)
            {
                if (Side(points[i], points[i + 1], points[k]) * Side(points[i], points[i + 1], points[k + 1]) < -1e-9
                    && Side(points[k], points[k + 1], points[i]) * Side(points[k], points[k + 1], points[i + 1]) < -1e-9) return (points[i], points[k]);
            }
        }

        return null;
    }

    private static double Side(OutlinePoint from, OutlinePoint to, OutlinePoint point) =>
        ((to.StationMm - from.StationMm) * (point.HeightMm - from.HeightMm)) - ((to.HeightMm - from.HeightMm) * (point.StationMm - from.StationMm));

    private static double Distance(OutlinePoint point, IReadOnlyList<OutlinePoint> line) => line.Zip(line.Skip(1)).Min(piece =>
    {
        var (along, up) = (piece.Second.StationMm - piece.First.StationMm, piece.Second.HeightMm - piece.First.HeightMm);
        var square = (along * along) + (up * up);
        var share = square > 0 ? Math.Clamp((((point.StationMm - piece.First.StationMm) * along) + ((point.HeightMm - piece.First.HeightMm) * up)) / square, 0, 1) : 0;
        return double.Hypot(point.StationMm - piece.First.StationMm - (share * along), point.HeightMm - piece.First.HeightMm - (share * up));
    });
}
