using FluentValidation;

namespace SetupService.Api.Http.Documents;

/// <summary>The rules between members of one kind of document, made when it is first read.</summary>
public abstract class DocumentRules
{
    /// <summary>The type of the document.</summary>
    public abstract Type Document { get; }

    /// <summary>The rules a validator holds.</summary>
    /// <typeparam name="T">The document.</typeparam>
    /// <param name="make">Makes the validator.</param>
    public static DocumentRules Create<T>(Func<IValidator<T>> make)
        where T : class => new DocumentRules<T>(make);
}

/// <summary>The rules between members of one kind of document.</summary>
/// <typeparam name="T">The document.</typeparam>
/// <param name="make">Makes the validator.</param>
internal sealed class DocumentRules<T>(Func<IValidator<T>> make) : DocumentRules
    where T : class
{
    public override Type Document => typeof(T);

    /// <summary>The validator, made anew.</summary>
    public IValidator<T> Make() => make();
}
