using System.Globalization;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Adds to each call its query parameters, and what its problems look like.</summary>
internal sealed class Operations : IOpenApiOperationTransformer
{
    public Task TransformAsync(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellationToken)
    {
        var metadata = context.Description.ActionDescriptor.EndpointMetadata;
        foreach (var parameter in metadata.OfType<QueryParameter>())
            (operation.Parameters ??= []).Add(QuerySchemas.Describe(parameter));
        LeaveOutInnerDocuments(operation);
        DescribePath(operation);
        if (metadata.OfType<ProducedMedia>().Any())
            AddSharedProblems(operation, context.Document, context.Description.RelativePath ?? "");
        if (metadata.OfType<IProducesResponseTypeMetadata>().Any(static known => known.StatusCode == StatusCodes.Status304NotModified))
            (operation.Responses ??= []).TryAdd("304", new OpenApiResponse { Description = "The caller has it already: If-None-Match names its entity tag." });
        DescribePicture(operation);
        DescribeProblems(operation, context.ApplicationServices.GetRequiredService<CapSettings>());
        Sort(operation);
        return Task.CompletedTask;
    }

    /// <summary>What <see cref="EndpointFacts.WithSchemas"/> declared is no answer; by now its schemas have their names.</summary>
    private static void LeaveOutInnerDocuments(OpenApiOperation operation)
    {
        foreach (var status in operation.Responses?.Keys.Where(status => StatusOf(status) > EndpointFacts.LastStatus).ToArray() ?? [])
            operation.Responses!.Remove(status);
    }

    private static int StatusOf(string status) => int.Parse(status, CultureInfo.InvariantCulture);

    /// <summary>A picture is a text, whatever document stands beside it.</summary>
    private static void DescribePicture(OpenApiOperation operation)
    {
        if (operation.Responses?.TryGetValue("200", out var answer) == true && answer.Content?.TryGetValue(SvgAnswer.MediaType, out var picture) == true)
            picture.Schema = new OpenApiSchema { Type = JsonSchemaType.String };
    }

    private static void DescribePath(OpenApiOperation operation)
    {
        foreach (var parameter in (operation.Parameters ?? []).OfType<OpenApiParameter>())
        {
            if (parameter.In == ParameterLocation.Path)
                parameter.Description ??= "Name of the page, without an ending; it stands at the end of a problem's type or as an answer's method.";
        }
    }

    /// <summary>What every call that answers anything can be refused with.</summary>
    private static void AddSharedProblems(OpenApiOperation operation, OpenApiDocument? document, string path)
    {
        ProblemType[] ofKeys = path.StartsWith("v1/", StringComparison.Ordinal) ? [ProblemTypes.KeyNeeded, ProblemTypes.TooManyRequests] : [];
        ProblemType[] ofLoad = LoadShedding.IsNeverRefused("/" + path) ? [] : [ProblemTypes.Unavailable];
        foreach (var type in (ProblemType[])[ProblemTypes.NotAcceptable, ProblemTypes.InternalError, .. ofKeys, .. ofLoad])
        {
            OpenApiMediaType media = new() { Schema = new OpenApiSchemaReference(nameof(Problem), document) };
            OpenApiResponse response = new() { Content = new Dictionary<string, OpenApiMediaType> { [Problem.MediaType] = media } };
            operation.Responses ??= [];
            operation.Responses.TryAdd(type.Status.ToString(CultureInfo.InvariantCulture), response);
        }
    }

    private static void DescribeProblems(OpenApiOperation operation, CapSettings caps)
    {
        foreach ((var status, var response) in operation.Responses ?? [])
        {
            var type = ProblemTypes.ForStatus(StatusOf(status));
            if (response.Content?.TryGetValue(Problem.MediaType, out var media) != true)
                continue;

            response.Description = type == ProblemTypes.TooLarge
                ? $"{type.Title}: {caps.OfBodyAndLine}"
                : type.Title + ".";
            media!.Example = ProblemSamples.From(type, caps);
        }
    }

    /// <summary>By status, whatever order the types named them in.</summary>
    private static void Sort(OpenApiOperation operation)
    {
        OpenApiResponses sorted = [];
        foreach ((var status, var response) in (operation.Responses ?? []).OrderBy(pair => pair.Key, StringComparer.Ordinal))
            sorted.Add(status, response);
        operation.Responses = sorted;
    }
}
