using System.Xml.Linq;

namespace SetupService.Api.Tests.Drawings;

/// <summary>That a picture is nothing but a picture.</summary>
internal static class Harmlessness
{
    private static readonly string[] Allowed = ["svg", "title", "desc", "style", "rect", "circle", "g", "path", "line", "text"];

    public static void Holds(SvgPicture picture)
    {
        Assert.Empty(picture.Root.DescendantsAndSelf().Select(element => element.Name.LocalName).Except(Allowed));
        Assert.All(picture.Root.DescendantsAndSelf(), element => Assert.Equal(SvgPicture.Svg, element.Name.Namespace));
        Assert.DoesNotContain(
            picture.Root.DescendantsAndSelf().Attributes(),
            attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase) || attribute.Name.LocalName is "href" or "src" or "style");
        Assert.DoesNotContain("url(", picture.Source, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", picture.Source, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<!", picture.Source, StringComparison.Ordinal);
        Assert.DoesNotContain("<?", picture.Source, StringComparison.Ordinal);
    }

    /// <summary>Title and description are there and the root names them.</summary>
    public static void IsDescribed(SvgPicture picture)
    {
        var labels = picture.Root.Attribute("aria-labelledby")!.Value.Split(' ').Select(id => picture.Find(id)!).ToList();
        Assert.Equal("img", picture.Root.Attribute("role")!.Value);
        Assert.Equal(["title", "desc"], labels.Select(label => label.Name.LocalName));
        Assert.All(labels, label => Assert.NotEmpty(label.Value));
    }

    /// <summary>No id stands twice.</summary>
    public static void IdsAreSingle(SvgPicture picture)
    {
        var ids = picture.Root.DescendantsAndSelf().Attributes("id").Select(id => id.Value).ToList();
        Assert.Equal(ids.Distinct(), ids);
    }
}
