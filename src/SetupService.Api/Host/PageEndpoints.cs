using System.Collections.Concurrent;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Host;

/// <summary>Serves the pages that problems and answers point to: what a problem means, how a number is computed.</summary>
internal static class PageEndpoints
{
    private const string Markdown = "text/markdown";
    private const string MarkdownEnding = ".md";

    // Only what is there is kept, so that made-up names take no room.
    private static readonly ConcurrentDictionary<string, CacheableBytes> Kept = [];

    public static void MapPages(this IEndpointRouteBuilder routes)
    {
        Map(routes, "problems", "problemPage", "What does a problem mean?", "The page a problem's type points to, or the page codes. Markdown.");
        Map(routes, "methods", "methodPage", "How is it computed?", "The page an answer's method names: formula, sources and limits. Markdown.");

        // The page of the calls, and what it is made of.
        MapPart(routes, "/docs", "docs.html", "text/html");
        MapPart(routes, "/docs/page.css", "docs.css", "text/css");
        MapPart(routes, "/docs/page.js", "docs.js", "text/javascript");

        // The pictures of the pages.
        routes.MapGet("/docs/methods/{name}.svg", static (string name) => Send("methods", name + ".svg", SvgAnswer.MediaType))
            .WithMediaTypes(SvgAnswer.MediaType)
            .ExcludeFromDescription();
    }

    private static void MapPart(IEndpointRouteBuilder routes, string path, string file, string mediaType) =>
        routes.MapGet(path, () => Send("page", file, mediaType)).WithMediaTypes(mediaType).ExcludeFromDescription();

    private static void Map(IEndpointRouteBuilder routes, string folder, string name, string summary, string description) =>
        routes.MapGet($"/docs/{folder}/{{name}}", (string name) => Page(folder, name))
            .WithTags("Service")
            .WithName(name)
            .WithSummary(summary)
            .WithDescription(description)
            .WithMediaTypes(Markdown)
            .WithProblems(ProblemTypes.NotFound);

    /// <summary>A page by its name, or by its file's, as the pages name each other.</summary>
    private static IResult Page(string folder, string name) =>
        Send(folder, name.EndsWith(MarkdownEnding, StringComparison.Ordinal) ? name : name + MarkdownEnding, Markdown);

    private static IResult Send(string folder, string file, string mediaType)
    {
        var path = $"docs/{folder}/{file}";
        if (Kept.TryGetValue(path, out var kept))
            return kept;

        // Resource names are exact, so nothing but a file of this folder can be asked for.
        using var page = typeof(PageEndpoints).Assembly.GetManifestResourceStream(path);
        if (page is null)
            return Problem.Create(ProblemTypes.NotFound, $"There is no such page under /docs/{folder}.");

        var bytes = new byte[page.Length];
        page.ReadExactly(bytes);
        return Kept.GetOrAdd(path, new CacheableBytes(mediaType + "; charset=utf-8", bytes));
    }
}
