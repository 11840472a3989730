using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Tests.Drawings;

/// <summary>A drawing as a reader finds it: parsed as XML and measured in the picture's own units.</summary>
internal sealed partial class Picture(string svg, CheckSheet sheet)
{
    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public string Source { get; } = svg;

    public CheckSheet Sheet { get; } = sheet;

    public XElement Root { get; } = XDocument.Parse(svg).Root!;

    /// <summary>Left, top, width, height.</summary>
    public double[] ViewBox => Numbers(Root.Attribute("viewBox")!.Value);

    public IEnumerable<XElement> Texts => Root.Descendants(Svg + "text");

    public string AllText => string.Join('\n', Root.Descendants().Where(element => element.Name.LocalName is "text" or "title" or "desc").Select(element => element.Value));

    public XElement? Find(string id) => Root.Descendants().SingleOrDefault(element => element.Attribute("id")?.Value == id);

    public double X(string lineId) => Length(Find(lineId)!, "x1");

    public double Y(string lineId) => Length(Find(lineId)!, "y1");

    public double NominalMm(CheckId place) => Sheet[place].Margin!.Value.NominalMm;

    /// <summary>Smallest and largest x, smallest y of everything drawn in a group of absolute paths.</summary>
    public (double Left, double Right, double Top) Reach(string group)
    {
        var points = Find(group)!.Elements(Svg + "path").SelectMany(path => Numbers(path.Attribute("d")!.Value).Chunk(2)).ToList();
        return (points.Min(point => point[0]), points.Max(point => point[0]), points.Min(point => point[1]));
    }

    public static double Length(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static double[] Numbers(string text) =>
        [.. Number().Matches(text).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"-?\d+(?:\.\d+)?")]
    private static partial Regex Number();
}
