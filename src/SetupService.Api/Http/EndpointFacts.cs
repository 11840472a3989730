using SetupService.Api.Http.Problems;

namespace SetupService.Api.Http;

/// <summary>What an endpoint says of itself for the API description, beyond what its types say.</summary>
public static class EndpointFacts
{
    /// <summary>The greatest status HTTP has (RFC 9110, section 15).</summary>
    public const int LastStatus = 599;

    /// <summary>Shows the example files api/examples/NAME.request.json and NAME.answer.json with the call.</summary>
    public static TBuilder WithExample<TBuilder>(this TBuilder builder, string name)
        where TBuilder : IEndpointConventionBuilder => builder.WithMetadata(new ExampleName(name));

    /// <summary>The call can also be refused in these ways; those that go with its types are known already.</summary>
    public static TBuilder WithProblems<TBuilder>(this TBuilder builder, params ProblemType[] types)
        where TBuilder : IEndpointConventionBuilder => builder.WithMetadata([.. types.Select(Response)]);

    /// <summary>The call answers in media types other than JSON; what Accept is held against.</summary>
    public static TBuilder WithMediaTypes<TBuilder>(this TBuilder builder, params string[] mediaTypes)
        where TBuilder : IEndpointConventionBuilder =>
        builder.WithMetadata(
        [
            .. mediaTypes.Select(type => new ProducedMedia(type)),

            // One for all of them: the description keeps only the last response of a status.
            new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(string), mediaTypes),
        ]);

    /// <summary>
    /// Documents that stand inside a text the call reads or writes, a line of a stream say, get schemas of their own in the
    /// description. The framework names only the schemas of whole answers, so they are declared under statuses beyond
    /// <see cref="LastStatus"/>, which no answer has and the description leaves out.
    /// </summary>
    public static TBuilder WithSchemas<TBuilder>(this TBuilder builder, params Type[] documents)
        where TBuilder : IEndpointConventionBuilder =>
        builder.WithMetadata([.. documents.Select((type, i) => new ProducesResponseTypeMetadata(LastStatus + 1 + i, type, [ProducedMedia.Json.Type]))]);

    /// <summary>Adds the problems an endpoint can answer with to what is known of it.</summary>
    internal static void AddProblems(this EndpointBuilder builder, params ReadOnlySpan<ProblemType> types)
    {
        foreach (var type in types)
            builder.Metadata.Add(Response(type));
    }

    private static ProducesResponseTypeMetadata Response(ProblemType type) =>
        new(type.Status, typeof(Problem), [Problem.MediaType]);
}

/// <summary>Names the example files of a call: <c>NAME.request.json</c> and <c>NAME.answer.json</c> in api/examples.</summary>
/// <param name="Name">The first part of the file names.</param>
public sealed record ExampleName(string Name);
