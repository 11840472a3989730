using SetupService.Api.Http.Problems;

namespace SetupService.Api.Http;

/// <summary>What an endpoint says of itself for the API description, beyond what its types say.</summary>
public static class EndpointFacts
{
    /// <summary>Shows the example files api/examples/NAME.request.json and NAME.answer.json with the call.</summary>
    public static TBuilder WithExample<TBuilder>(this TBuilder builder, string name)
        where TBuilder : IEndpointConventionBuilder => builder.WithMetadata(new ExampleName(name));

    /// <summary>The call can also be refused in these ways; those that go with its types are known already.</summary>
    public static TBuilder WithProblems<TBuilder>(this TBuilder builder, params ProblemType[] types)
        where TBuilder : IEndpointConventionBuilder => builder.WithMetadata([.. types.Select(Response)]);

    /// <summary>The call answers in a media type other than JSON; what Accept is held against.</summary>
    public static TBuilder WithMediaType<TBuilder>(this TBuilder builder, string mediaType)
        where TBuilder : IEndpointConventionBuilder =>
        builder.WithMetadata(
            new ProducedMedia(mediaType),
            new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(string), [mediaType]));

    /// <summary>Adds the problems an endpoint can answer with to what is known of it.</summary>
    internal static void AddProblems(this EndpointBuilder builder, params ReadOnlySpan<ProblemType> types)
    {
        foreach (ProblemType type in types)
            builder.Metadata.Add(Response(type));
    }

    private static ProducesResponseTypeMetadata Response(ProblemType type) =>
        new(type.Status, typeof(Problem), [Problem.MediaType]);
}
