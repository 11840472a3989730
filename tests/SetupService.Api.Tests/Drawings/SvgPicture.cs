using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace SetupService.Api.Tests.Drawings;

/// <summary>A picture as a reader finds it: parsed as XML and measured in its own units.</summary>
internal partial class SvgPicture(string svg)
{
    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public string Source { get; } = svg;

    public XElement Root { get; } = XDocument.Parse(svg).Root!;

    /// <summary>Left, top, width, height.</summary>
    public double[] ViewBox => Numbers(Root.Attribute("viewBox")!.Value);

    public IEnumerable<XElement> Texts => Root.Descendants(Svg + "text");

    public string Title => Root.Element(Svg + "title")!.Value;

    public string Description => Root.Element(Svg + "desc")!.Value;

    public string AllText => string.Join('\n', Root.Descendants().Where(element => element.Name.LocalName is "text" or "title" or "desc").Select(element => element.Value));

    public XElement? Find(string id) => Root.Descendants().SingleOrDefault(element => element.Attribute("id")?.Value == id);

    public XElement Group(string id) => Find(id)!;

    public IEnumerable<string> TextsOf(string id) => Group(id).Descendants(Svg + "text").Select(text => text.Value);

    /// <summary>The points of a path of straight lines.</summary>
    public static List<(double X, double Y)> Points(XElement path) =>
        [.. Numbers(path.Attribute("d")!.Value).Chunk(2).Select(pair => (pair[0], pair[1]))];

    public static double Length(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    public static bool HasClass(XElement element, string name) => element.Attribute("class")?.Value.Split(' ').Contains(name) == true;

    protected static double[] Numbers(string text) =>
        [.. Number().Matches(text).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"-?\d+(?:\.\d+)?")]
    private static partial Regex Number();
}
