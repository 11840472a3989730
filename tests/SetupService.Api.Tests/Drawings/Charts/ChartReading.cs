using System.Globalization;
using System.Xml.Linq;

namespace SetupService.Api.Tests.Drawings.Charts;

/// <summary>
/// Reads values off a drawn panel the way a person does: by the numbers beside the axis. The middle of a number stands 0.34 of its size
/// above its baseline.
/// </summary>
internal sealed class ChartReading(SvgPicture picture, string panel)
{
    private const double MiddleShare = 0.34;

    public List<XElement> Lines { get; } =
        [.. picture.Group(panel).Elements(SvgPicture.Svg + "path").Where(path => path.Attribute("fill")?.Value == "none" && path.Attribute("stroke-opacity") is null)];

    /// <summary>The points of all lines, in the panel's values and those of the axis below.</summary>
    public IEnumerable<(double Across, double Value)> Points(SvgPicture picture, string lowestPanel)
    {
        var up = Scale(picture.Group(panel), text => text.Attribute("text-anchor")?.Value == "end", MiddleY);
        var across = Scale(picture.Group(lowestPanel), text => text.Attribute("text-anchor")?.Value == "middle", text => SvgPicture.Length(text, "x"));
        return Lines.SelectMany(SvgPicture.Points).Select(point => (across(point.X), up(point.Y)));
    }

    private static double MiddleY(XElement text) => SvgPicture.Length(text, "y") - (MiddleShare * SvgPicture.Length(text, "font-size"));

    /// <summary>The straight line through the first and the last number of an axis.</summary>
    private static Func<double, double> Scale(XElement group, Func<XElement, bool> isTick, Func<XElement, double> place)
    {
        var ticks = group.Elements(SvgPicture.Svg + "text").Where(isTick)
            .Select(text => (Place: place(text), IsNumber: TryNumber(text.Value, out var number), Number: number)).Where(tick => tick.IsNumber).ToList();
        Assert.True(ticks.Count >= 2, "an axis needs two numbers to be read");
        var (first, last) = (ticks[0], ticks[^1]);
        return at => first.Number + ((at - first.Place) / (last.Place - first.Place) * (last.Number - first.Number));
    }

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text.Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out number);
}
