using System.Xml.Linq;

namespace SetupService.Api.Tests.Drawings;

/// <summary>Whether the texts of a picture can be read, in the widest usual face.</summary>
internal static class Legibility
{
    public static void TextsKeepClear(SvgPicture picture)
    {
        var view = picture.ViewBox;
        var boxes = picture.Texts.Select(Box).ToList();
        foreach (var box in boxes)
        {
            Assert.True(box.Left >= view[0] && box.Right <= view[0] + view[2], $"“{box.Text}” runs over the side");
            Assert.True(box.Top >= view[1] && box.Bottom <= view[1] + view[3], $"“{box.Text}” runs over the end");
        }

        for (var i = 0; i < boxes.Count; i++)
        {
            foreach (var other in boxes.Skip(i + 1)) Assert.False(Overlap(boxes[i], other), $"“{boxes[i].Text}” lies on “{other.Text}”");
        }
    }

    public static void LettersHaveAtLeast(double pixels, SvgPicture picture, double widthPx = 400)
    {
        var pixelsPerUnit = widthPx / picture.ViewBox[2];
        Assert.All(picture.Texts, text => Assert.True(SvgPicture.Length(text, "font-size") * pixelsPerUnit >= pixels, text.Value));
    }

    private static (string Text, double Left, double Right, double Top, double Bottom) Box(XElement text)
    {
        var size = SvgPicture.Length(text, "font-size");
        var (x, y) = (SvgPicture.Length(text, "x"), SvgPicture.Length(text, "y"));
        var width = FaceWidths.Of(text.Value, size, text.Attribute("font-weight") is not null);
        var left = text.Attribute("text-anchor")?.Value switch { "end" => x - width, "middle" => x - (width / 2), _ => x };
        return (text.Value, left, left + width, y - (0.72 * size), y + (0.1 * size));
    }

    private static bool Overlap((string Text, double Left, double Right, double Top, double Bottom) a, (string Text, double Left, double Right, double Top, double Bottom) b) =>
        a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}
