using System.Globalization;
using System.Text;
using System.Xml;

namespace SetupService.Api.Http.Pages;

/// <summary>
/// Writes a page as HTML that is XML too: every text is escaped, and only elements that have no content in HTML end in themselves.
/// </summary>
internal sealed class HtmlWriter : IDisposable
{
    private readonly StringBuilder _text = new("<!DOCTYPE html>\n");
    private readonly XmlWriter _xml;

    public HtmlWriter() => _xml = XmlWriter.Create(_text, new XmlWriterSettings { OmitXmlDeclaration = true, NewLineChars = "\n" });

    public void Dispose() => _xml.Dispose();

    public string Finish()
    {
        _xml.Flush();
        return _text.Append('\n').ToString();
    }

    /// <summary>Opens an element; whoever asked closes it.</summary>
    public void Open(string element, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        _xml.WriteStartElement(element);
        foreach (var (name, value) in attributes)
            _xml.WriteAttributeString(name, LegalText.Replace(value));
    }

    public void Close()
    {
        _xml.WriteFullEndElement();
        _xml.WriteWhitespace("\n");
    }

    /// <summary>An element that holds nothing but text.</summary>
    public void Element(string element, string content, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(element, attributes);
        Text(content);
        Close();
    }

    /// <summary>An element without content: <c>meta</c> and its like.</summary>
    public void Void(string element, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(element, attributes);
        _xml.WriteEndElement();
        _xml.WriteWhitespace("\n");
    }

    public void Text(string content) => _xml.WriteString(LegalText.Replace(content));

    /// <summary>Markup of our own, as it is: a style sheet, a drawing. Never anything a caller sent.</summary>
    public void Markup(string own) => _xml.WriteRaw(own);
}

/// <summary>Text that goes into XML or HTML.</summary>
internal static class LegalText
{
    /// <summary>The text with a mark in place of every character that XML cannot carry.</summary>
    public static string Replace(string content)
    {
        var legal = new StringBuilder(content.Length);
        foreach (var rune in content.EnumerateRunes())
        {
            var isLegal = rune.Value is '\t' or '\n' or '\r' or >= 0x20 and not 0xfffe and not 0xffff;
            legal.Append(CultureInfo.InvariantCulture, $"{(isLegal ? rune : Rune.ReplacementChar)}");
        }

        return legal.ToString();
    }
}
