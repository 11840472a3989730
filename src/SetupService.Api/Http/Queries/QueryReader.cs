using System.Reflection;
using Microsoft.AspNetCore.Http.Metadata;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Work;
using SetupService.Domain.Answers;

namespace SetupService.Api.Http.Queries;

/// <summary>
/// The query string of a request, checked against the parameters its endpoint declares. A handler takes it as a
/// parameter, returns <see cref="Problem"/> where there is one, and otherwise asks for values.
/// </summary>
public sealed class QueryReader : IBindableFromHttpContext<QueryReader>, IEndpointParameterMetadataProvider, IRefusable
{
    private const double NarrowestPx = 400;

    private readonly IQueryCollection _query;

    private QueryReader(HttpContext context)
    {
        _query = context.Request.Query;
        Problem = Refusal.From(QueryFaults.Find(context)) is { } refusal ? Problem.Invalid(refusal) : null;
    }

    /// <summary>What is wrong with the query string; null where nothing is.</summary>
    public Problem? Problem { get; }

    /// <summary>The units asked for by <see cref="QueryParameters.Units"/>; metric unless said otherwise.</summary>
    public UnitSystem Units => Word<UnitSystem>(QueryParameters.Units) ?? UnitSystem.Metric;

    /// <summary>The width a picture will be shown at, by <see cref="QueryParameters.WidthPx"/>, pixels; the narrowest it is made for unless said otherwise.</summary>
    public double WidthPx => Number(QueryParameters.WidthPx) ?? NarrowestPx;

    /// <inheritdoc />
    public static ValueTask<QueryReader?> BindAsync(HttpContext context, ParameterInfo parameter) =>
        ValueTask.FromResult<QueryReader?>(new QueryReader(context));

    /// <inheritdoc />
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.AddProblems(ProblemTypes.InvalidRequest);
    }

    /// <summary>The text given, or null where none is.</summary>
    public string? Text(TextParameter parameter)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        return Find(parameter);
    }

    /// <summary>The number given, or null where none is.</summary>
    public double? Number(NumberParameter parameter)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        return Find(parameter) is { } text ? NumberParameter.Read(text) : null;
    }

    /// <summary>The word given as a member of its enum, or null where none is.</summary>
    public T? Word<T>(EnumParameter parameter)
        where T : struct, Enum
    {
        ArgumentNullException.ThrowIfNull(parameter);
        return Find(parameter) is { } text && EnumNames<T>.TryGet(text, out var word) ? word : null;
    }

    /// <summary>The words given as members of their enum, or null where none are.</summary>
    public IReadOnlyList<T>? Words<T>(WordsParameter parameter)
        where T : struct, Enum
    {
        ArgumentNullException.ThrowIfNull(parameter);
        return Find(parameter) is { } text ? Array.ConvertAll(WordsParameter.Read(text), static word => EnumNames<T>.TryGet(word, out var value) ? value : default) : null;
    }

    private string? Find(QueryParameter parameter)
    {
        if (Problem is not null)
            throw new InvalidOperationException("A query string with faults is refused, not read.");
        return _query.TryGetValue(parameter.Name, out var values) && values.Count == 1 ? values[0] : null;
    }
}
