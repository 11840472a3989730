namespace SetupService.Api.Http.Problems;

/// <summary>One kind of refusal: its name, its status and its title never change.</summary>
/// <param name="Name">The last part of the type URI and the name of its page.</param>
/// <param name="Status">The HTTP status it is sent with.</param>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="Detail">What is said where the case has nothing more exact to say.</param>
public sealed record ProblemType(string Name, int Status, string Title, string Detail)
{
    /// <summary>The type URI (RFC 9457): a path under which this service explains it.</summary>
    public string Uri => "/docs/problems/" + Name;
}
