namespace SetupService.Api.Http.Documents;

/// <summary>
/// How one kind of document becomes a value of the domain. The reader of refused bodies asks it, so that what only the domain can tell
/// comes in the same answer as every other fault.
/// </summary>
public abstract class DocumentMapping
{
    /// <summary>The type of the document.</summary>
    public abstract Type Document { get; }

    /// <summary>The mapping a mapper does.</summary>
    /// <typeparam name="T">The document.</typeparam>
    /// <typeparam name="TValue">What it becomes.</typeparam>
    /// <param name="map">The mapper. It is given documents of which parts were refused and are missing or zero.</param>
    public static DocumentMapping Create<T, TValue>(Func<T, MapResult<TValue>> map)
        where T : class
        where TValue : notnull => new DocumentMapping<T>(document => map(document).Refusal);

    /// <summary>The mapping of one member of a document; nothing is refused where it is left out and may be.</summary>
    /// <typeparam name="T">The document.</typeparam>
    /// <typeparam name="TMember">The member.</typeparam>
    /// <typeparam name="TValue">What it becomes.</typeparam>
    /// <param name="name">Its name in JSON.</param>
    /// <param name="member">The member of a document.</param>
    /// <param name="map">Its mapper.</param>
    public static DocumentMapping OfMember<T, TMember, TValue>(string name, Func<T, TMember?> member, Func<TMember, MapResult<TValue>> map)
        where T : class
        where TMember : class
        where TValue : notnull => new DocumentMapping<T>(document => member(document) is { } given ? map(given).Under(name).Refusal : null);
}

/// <summary>The mapping of one kind of document.</summary>
/// <typeparam name="T">The document.</typeparam>
/// <param name="refuse">Why a document has no value; null where it has one.</param>
internal sealed class DocumentMapping<T>(Func<T, Refusal?> refuse) : DocumentMapping
    where T : class
{
    public override Type Document => typeof(T);

    /// <summary>Why a document has no value; null where it has one.</summary>
    public Refusal? Refuse(T document) => refuse(document);
}
