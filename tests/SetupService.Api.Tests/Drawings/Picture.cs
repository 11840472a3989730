using SetupService.Domain.Fitment;

namespace SetupService.Api.Tests.Drawings;

/// <summary>The drawing of a fitment check, with the sheet it was drawn from.</summary>
internal sealed class Picture(string svg, CheckSheet sheet) : SvgPicture(svg)
{
    public CheckSheet Sheet { get; } = sheet;

    public double X(string lineId) => Length(Find(lineId)!, "x1");

    public double Y(string lineId) => Length(Find(lineId)!, "y1");

    public double NominalMm(CheckId place) => Sheet[place].Margin!.Value.NominalMm;

    /// <summary>Smallest and largest x, smallest y of everything drawn in a group of absolute paths.</summary>
    public (double Left, double Right, double Top) Reach(string group)
    {
        var points = Find(group)!.Elements(Svg + "path").SelectMany(path => Numbers(path.Attribute("d")!.Value).Chunk(2)).ToList();
        return (points.Min(point => point[0]), points.Max(point => point[0]), points.Min(point => point[1]));
    }
}
