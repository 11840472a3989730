using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Host.Access;
using SetupService.Api.Http;
using SetupService.Domain.Answers;

namespace SetupService.Api.Host.OpenApi;

/// <summary>The parts of the API description that belong to no single call.</summary>
internal sealed class DocumentFrame(CapSettings caps) : IOpenApiDocumentTransformer
{
    private const string KeyScheme = "key";

    private const string Description =
        """
        Does a wheel and tyre fit a car, and carry it? What do its suspension and tyres do in a turn, why do its tyres wear as they do, which of the parts
        on offer are worth buying, if any, how are they set, and did the change work? JSON in and out. A number's name ends in its unit;
        axes follow ISO 8855; numbers of answers have at most nine significant digits. Every refusal is RFC 9457 problem
        JSON that lists every fault of the request. Nothing is guessed in silence: what an answer assumed, it lists. Answers
        are computed aids: they do not replace the vehicle maker's data, local law or a licensed practice's inspection.
        Example answers here are cut to one row of each list and four digits, pictures are left out.
        """;

    private static readonly (string Name, string Description)[] Tags =
    [
        ("Tyres", "Reading tyre markings."),
        ("Wheels", "Reading wheel markings."),
        ("Fitment", "Whether a wheel and tyre fit a car, by how much, and which offsets would."),
        ("Geometry", "What a suspension does with its wheel over travel and steer, and which adjustment gives the angles wanted."),
        ("Handling", "How a car stands on its springs and in a turn, and what its tyres see of it at the road."),
        ("Wear", "What tyres say by depth, temperature and pressure, how long they last, and whether a change worked."),
        ("Plans", "Which of the parts on offer to buy, if any, and what to do first."),
        ("Reference", "The tables of the trade the answers are computed from: load indices and speed symbols."),
        ("Service", "The service itself: health, version, explanatory pages."),
    ];

    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        document.Info = new OpenApiInfo
        {
            Title = "Setup service",
            Version = Edition.Current,
            Description = $"{Description.ReplaceLineEndings(" ")} {caps.OfQuery}",
            Contact = new OpenApiContact { Name = "The maintainers of this service" },
            License = new OpenApiLicense { Name = "MIT", Identifier = "MIT" },
        };
        document.Servers = [new OpenApiServer { Url = "/" }];

        // Who runs the service decides whether callers need a key.
        document.AddComponent(KeyScheme, new OpenApiSecurityScheme { Type = SecuritySchemeType.ApiKey, In = ParameterLocation.Header, Name = AccessCheck.Header });
        document.Security = [new OpenApiSecurityRequirement { [new OpenApiSecuritySchemeReference(KeyScheme, document)] = [] }, []];

        // Only tags that calls carry; a described tag nobody uses would be noise.
        HashSet<string> used = [.. (document.Paths ?? [])
            .SelectMany(path => path.Value.Operations ?? [])
            .SelectMany(operation => operation.Value.Tags ?? new HashSet<OpenApiTagReference>())
            .Select(tag => tag.Name!)];
        document.Tags = new HashSet<OpenApiTag>(
            Tags.Where(tag => used.Contains(tag.Name)).Select(tag => new OpenApiTag { Name = tag.Name, Description = tag.Description }));
        return Task.CompletedTask;
    }
}
