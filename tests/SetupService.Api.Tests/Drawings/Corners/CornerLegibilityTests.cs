using CsCheck;
using SetupService.Api.Drawings.Corners;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Tests.Drawings.Corners;

/// <summary>The corner views can be read, wherever the points are.</summary>
public sealed class CornerLegibilityTests
{
    private static readonly Gen<Vector3> NearCorner = Gen.Select(Gen.Double[-20, 20], Gen.Double[-20, 20], Gen.Double[-20, 20]).Select((x, y, z) => new Vector3(x, y, z));

    private static readonly Gen<ViewPoint?> AnyCentre = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[2, 7], Gen.Bool)
        .Select((along, height, power, isKnown) => isKnown ? new ViewPoint(along * Math.Pow(10, power), height * Math.Pow(10, power)) : (ViewPoint?)null);

    private static readonly Gen<CornerViews> AnyCorner = Gen
        .Select(NearCorner.Array[8], AnyCentre, AnyCentre, Gen.Double[-400, 900], Gen.Double[-8, 8], Gen.Double[-40, 40], Gen.Double[220, 420])
        .Select((shifts, front, side, rollCentre, camber, toe, radius) =>
        {
            var moved = SampleCorner.Views.Points.Select((point, i) => point with { Position = point.Position + shifts[i] }).ToList();
            CornerPoint New(CornerPoint old) => moved.Find(point => point.Name == old.Name)!;
            return SampleCorner.Views with
            {
                Points = moved,
                Links = [.. SampleCorner.Views.Links.Select(link => new CornerLink(New(link.From), New(link.To), link.Kind))],
                Axis = SteeringAxis.Through(moved[2].Position, moved[5].Position),
                FrontInstantCentre = front,
                SideInstantCentre = side,
                RollCentreHeightMm = rollCentre,
                Wheel = WheelPlane.At(SampleCorner.WheelCentre, camber, toe),
                LoadedRadiusMm = radius,
                TyreWidthMm = null,
            };
        });

    [Fact]
    public void Texts_keep_clear_of_the_edge_and_of_each_other() => AnyCorner.Sample(views => Legibility.TextsKeepClear(SampleCorner.Draw(views)));

    [Fact]
    public void Every_letter_has_twelve_pixels_where_the_picture_is_400_wide() => AnyCorner.Sample(views => Legibility.LettersHaveAtLeast(12, SampleCorner.Draw(views)));

    [Fact]
    public void Everything_drawn_is_inside_the_picture() => AnyCorner.Sample(views =>
    {
        var picture = SampleCorner.Draw(views);
        var box = picture.ViewBox;
        var ends = picture.Root.Descendants(SvgPicture.Svg + "line")
            .SelectMany(line => ((string, string)[])[("x1", "y1"), ("x2", "y2")], (line, names) => (X: SvgPicture.Length(line, names.Item1), Y: SvgPicture.Length(line, names.Item2)));
        foreach (var (x, y) in ends.Concat(picture.Root.Descendants(SvgPicture.Svg + "path").SelectMany(SvgPicture.Points)))
        {
            Assert.InRange(x, box[0], box[0] + box[2]);
            Assert.InRange(y, box[1], box[1] + box[3]);
        }
    });

    [Fact]
    public void Long_names_are_broken_and_all_there()
    {
        const string Name = "rear pivot of the lower arm, the bolt that also holds the anti-roll bar's bracket on the left side of the car";
        var points = SampleCorner.Views.Points.Select((point, i) => i == 1 ? point with { Name = Name } : point).ToList();
        var picture = SampleCorner.Draw(SampleCorner.Views with { Points = points });

        Legibility.TextsKeepClear(picture);
        Assert.Contains(Name, string.Join(' ', picture.TextsOf("key")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_point_far_off_makes_the_picture_larger_and_the_letters_with_it()
    {
        var far = SampleCorner.Views.Points.Append(new CornerPoint("spring, body end", new(-5000, 100, 900), IsOnBody: true)).ToList();
        var picture = SampleCorner.Draw(SampleCorner.Views with { Points = far });

        Legibility.TextsKeepClear(picture);
        Legibility.LettersHaveAtLeast(12, picture);
    }
}
