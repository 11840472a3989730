using System.Text.Json;

namespace SetupService.Api.Http.Contract;

/// <summary>
/// A change to a document: the members it names replace the document's, objects member by member, arrays whole (RFC 7396).
/// Null means absent, as everywhere in a request, and so changes nothing. No member is required; those it names are held to
/// the same types and limits as in the document.
/// </summary>
/// <typeparam name="T">The document.</typeparam>
public abstract class DocumentChange<T>
    where T : class
{
    /// <summary>The members named, plainly spelled, without nulls.</summary>
    internal JsonElement Members { get; init; }

    /// <summary>Whether they keep types and limits; only what is left of a refused body can hold some that do not.</summary>
    internal bool IsSound { get; init; }
}
