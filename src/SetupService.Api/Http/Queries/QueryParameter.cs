using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Queries;

/// <summary>
/// One query parameter of a call: declared once, read by the handler, checked before it, and described in the API
/// description. Put it on the endpoint with <see cref="QueryEndpoints.WithQuery"/>.
/// </summary>
/// <param name="Name">Its name, in camelCase, ending in its unit where it is a quantity.</param>
/// <param name="Description">What it is, with unit and sign.</param>
public abstract record QueryParameter(string Name, string Description)
{
    /// <summary>Whether the call cannot do without it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>The fault of a text given for it, or null where it is sound.</summary>
    internal abstract Fault? Check(string text);
}
