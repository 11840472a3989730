using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;

namespace SetupService.Api.Drawings.Corners;

/// <summary>The words of the corner views.</summary>
internal static class CornerWords
{
    private const double MillimetresPerMetre = 1000;
    private const double MillimetresPerFoot = 304.8;

    // From here on the views show offsets across and along the wheel noticeably shortened.
    private const double SteeredDeg = 1;

    public static string Title(CornerViews views) => $"{views.Heading}: seen from behind and from the left";

    /// <summary>The picture in words, for somebody who cannot see it.</summary>
    public static string Description(CornerShape shape, UnitSystem units)
    {
        var views = shape.Views;
        List<string> sentences =
        [
            .. views.Lines.Select(Sentence),
            "Above, seen from behind, outboard on the left; below, seen from the left, forward on the left.",
            .. Figures(shape, units).Select(Sentence),
        ];
        if (views.FrontInstantCentre is { } front) sentences.Add(Sentence($"Seen from behind, the {InstantCentre(Flat(shape, isFront: true), front, isFront: true, units)}"));
        if (views.SideInstantCentre is { } side) sentences.Add(Sentence($"Seen from the side, the {InstantCentre(Flat(shape, isFront: false), side, isFront: false, units)}"));
        if (views.Points.Count > 0) sentences.Add(Sentence($"Points, forward, to the left and up: {string.Join("; ", views.Points.Select((point, i) => $"{i + 1} {point.Name} {Place(point.Position, units)}"))}"));
        sentences.AddRange(Notes(shape));
        return string.Join(' ', sentences);
    }

    /// <summary>The angles and offsets, a line each.</summary>
    public static IEnumerable<string> Figures(CornerShape shape, UnitSystem units)
    {
        var wheel = shape.Views.Wheel;
        yield return Prose.Write(units, $"camber {wheel.CamberDeg:deg}, toe {wheel.ToeDeg:deg}");
        if (shape.Views.Axis is { } axis) yield return Prose.Write(units, $"caster {axis.CasterDeg:deg}, steering-axis inclination {axis.SteeringAxisInclinationDeg:deg}");
        if (shape.Offsets is { } offsets) yield return $"{ScrubRadius(offsets.ScrubRadiusMm, units)}, {Trail(offsets.MechanicalTrailMm, units)}";
        if (shape.Views.RollCentreHeightMm is { } rollCentre) yield return $"roll centre {Above(rollCentre, units)}";
    }

    public static string ScrubRadius(double lengthMm, UnitSystem units) => $"scrub radius {Length(lengthMm, units)}";

    public static string Trail(double lengthMm, UnitSystem units) => $"mechanical trail {Length(lengthMm, units)}";

    public static string Above(double heightMm, UnitSystem units) => $"{Distance(Math.Abs(heightMm), units)} {(heightMm < 0 ? "below" : "above")} the ground";

    /// <summary>How far an instant centre is from the contact, along the ground or in height, whichever is more, and which way.</summary>
    public static string FarAway(CornerShape shape, ViewPoint centre, bool isFront, UnitSystem units)
    {
        var contact = Flat(shape, isFront);
        var (along, height) = (centre.AlongMm - contact.AlongMm, centre.HeightMm - contact.HeightMm);
        return Math.Abs(along) >= Math.Abs(height) ? Away(along, isFront, units) : $"{Distance(Math.Abs(height), units)} {(height > 0 ? "up" : "down")}";
    }

    /// <summary>The sentences under the views: what is indicative, then what the caller says.</summary>
    public static IEnumerable<string> Notes(CornerShape shape)
    {
        if (shape.Views.TyreWidthMm is null) yield return "The tyre's width is indicative.";
        if (shape.Views.Axis is null) yield return "No steering axis: this wheel is not steered, or the axis is not known.";
        if (shape.Offsets is not null && Math.Abs(shape.Views.Wheel.SteerDeg) > SteeredDeg)
            yield return "Scrub radius and trail are taken across and along the wheel; with the wheel steered the views show them shortened.";
        foreach (var note in shape.Views.Notes) yield return note;
    }

    public static string Length(double lengthMm, UnitSystem units) => Prose.Write(units, $"{lengthMm:mm}");

    private static string Away(double along, bool isFront, UnitSystem units)
    {
        var direction = (isFront, along > 0) switch
        {
            (true, true) => "outboard",
            (true, false) => "inboard",
            (false, true) => "ahead",
            _ => "rearward",
        };
        return $"{Distance(Math.Abs(along), units)} {direction}";
    }

    /// <summary>A distance that may be far longer than the car.</summary>
    private static string Distance(double lengthMm, UnitSystem units) => units switch
    {
        _ when lengthMm < MillimetresPerMetre => Length(lengthMm, units),
        UnitSystem.Us => Prose.Write(units, $"{lengthMm / MillimetresPerFoot:n} ft"),
        _ => Prose.Write(units, $"{lengthMm / MillimetresPerMetre:n} m"),
    };

    private static string InstantCentre(ViewPoint contact, ViewPoint centre, bool isFront, UnitSystem units) =>
        $"instant centre is {Away(centre.AlongMm - contact.AlongMm, isFront, units)} of the contact, {Above(centre.HeightMm - contact.HeightMm, units)}";

    private static ViewPoint Flat(CornerShape shape, bool isFront) => new ViewProjection(isFront, 0, 0).Flat(shape.Contact);

    private static string Place(Vector3 point, UnitSystem units) => $"({Length(point.X, units)}, {Length(point.Y, units)}, {Length(point.Z, units)})";

    private static string Sentence(string text) => text.Length == 0 ? "" : $"{char.ToUpperInvariant(text[0])}{text[1..].TrimEnd('.')}.";
}
