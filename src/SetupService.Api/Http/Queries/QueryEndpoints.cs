namespace SetupService.Api.Http.Queries;

/// <summary>Declares the query parameters of an endpoint.</summary>
public static class QueryEndpoints
{
    /// <summary>The endpoint reads these parameters; every other name in its query string is refused.</summary>
    public static TBuilder WithQuery<TBuilder>(this TBuilder builder, params QueryParameter[] parameters)
        where TBuilder : IEndpointConventionBuilder =>
        builder.WithMetadata([.. parameters]);
}
