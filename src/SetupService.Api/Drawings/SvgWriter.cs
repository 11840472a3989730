using System.Globalization;
using System.Text;
using System.Xml;
using SetupService.Api.Http.Pages;

namespace SetupService.Api.Drawings;

/// <summary>
/// Writes the elements of a drawing as XML text. Lengths are mm of the picture; line widths and letters are in text units,
/// which grow with the picture so that it reads the same at every size.
/// </summary>
internal sealed class SvgWriter : IDisposable
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    private readonly StringBuilder _text = new();
    private readonly XmlWriter _xml;
    private readonly double _unitMm;

    public SvgWriter(double unitMm)
    {
        _unitMm = unitMm;
        _xml = XmlWriter.Create(_text, new XmlWriterSettings { OmitXmlDeclaration = true, Indent = true, IndentChars = " ", NewLineChars = "\n" });
    }

    public void Dispose() => _xml.Dispose();

    public string Finish()
    {
        _xml.Flush();
        return _text.Append('\n').ToString();
    }

    public void Open(string element, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        _xml.WriteStartElement(element, Namespace);
        foreach (var (name, value) in attributes) _xml.WriteAttributeString(name, value);
    }

    /// <summary>How large the element just opened is shown, pixels.</summary>
    public void Size(double widthPx, double heightPx)
    {
        Number("width", widthPx);
        Number("height", heightPx);
    }

    public void OpenGroup(string id) => Open("g", ("id", id));

    public void Close() => _xml.WriteEndElement();

    /// <summary>An element that holds nothing but text.</summary>
    public void Element(string element, string content, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(element, attributes);
        _xml.WriteString(LegalText.Replace(content));
        Close();
    }

    public void Line(double x1, double y1, double x2, double y2, Pen pen, string? id = null)
    {
        Open("line");
        if (id is not null) _xml.WriteAttributeString("id", id);
        Number("x1", x1);
        Number("y1", y1);
        Number("x2", x2);
        Number("y2", y2);
        WritePen(pen);
        Close();
    }

    public void Rectangle(double x, double y, double width, double height, Pen pen)
    {
        Open("rect");
        Number("x", x);
        Number("y", y);
        Number("width", width);
        Number("height", height);
        WritePen(pen);
        Close();
    }

    public void Circle(double x, double y, double radius, Pen pen)
    {
        Open("circle");
        Number("cx", x);
        Number("cy", y);
        Number("r", radius);
        WritePen(pen);
        Close();
    }

    public void Path(string data, Pen pen)
    {
        Open("path", ("d", data));
        WritePen(pen);
        Close();
    }

    public void Letters(double x, double y, string content, Lettering lettering)
    {
        Open("text");
        Number("x", x);
        Number("y", y);
        Number("font-size", lettering.Size * _unitMm);
        if (lettering.IsBold) _xml.WriteAttributeString("font-weight", "600");
        if (lettering.Anchor is { } anchor) _xml.WriteAttributeString("text-anchor", anchor);
        var halo = lettering.HasHalo ? $" {Palette.LineClass(InkRole.Paper)}" : "";
        _xml.WriteAttributeString("class", Palette.FillClass(lettering.Ink) + halo);
        _xml.WriteAttributeString("fill", Palette.Fallback(lettering.Ink));
        if (lettering.HasHalo)
        {
            _xml.WriteAttributeString("stroke", Palette.Fallback(InkRole.Paper));
            Number("stroke-width", 5 * _unitMm);
            _xml.WriteAttributeString("stroke-linejoin", "round");
            _xml.WriteAttributeString("paint-order", "stroke");
        }

        _xml.WriteString(LegalText.Replace(content));
        Close();
    }

    private void WritePen(Pen pen)
    {
        var classes = string.Join(' ', Classes(pen));
        _xml.WriteAttributeString("class", classes);
        _xml.WriteAttributeString("fill", pen.Fill is { } fill ? Palette.Fallback(fill) : "none");
        if (pen.Fill is not null && pen.FillOpacity < 1) Number("fill-opacity", pen.FillOpacity);
        if (pen.Line is not { } line) return;
        _xml.WriteAttributeString("stroke", Palette.Fallback(line));
        Number("stroke-width", pen.Width * _unitMm);
        if (pen.LineOpacity < 1) Number("stroke-opacity", pen.LineOpacity);
        if (pen.Dashes.Length == 0) return;
        _xml.WriteAttributeString("stroke-dasharray", string.Join(' ', pen.Dashes.Select(dash => SvgNumber.Write(dash * _unitMm))));
    }

    private static IEnumerable<string> Classes(Pen pen)
    {
        if (pen.Fill is { } fill) yield return Palette.FillClass(fill);
        if (pen.Line is { } line) yield return Palette.LineClass(line);
    }

    private void Number(string name, double value) => _xml.WriteAttributeString(name, SvgNumber.Write(value));
}

/// <summary>Writes a number of a drawing: to a thousandth, without exponent, in no culture.</summary>
internal static class SvgNumber
{
    public static string Write(double value)
    {
        var rounded = Math.Round(value, 3, MidpointRounding.AwayFromZero);

        // Minus zero would be written with its sign.
        return rounded == 0 ? "0" : rounded.ToString("0.###", CultureInfo.InvariantCulture);
    }
}
