namespace SetupService.Api.Http.Contract;

/// <summary>How long a text of a request may be. On an array of texts it holds for each element.</summary>
/// <param name="maximumLength">The most characters accepted, counted as UTF-16 code units.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class TextAttribute(int maximumLength) : Attribute
{
    /// <summary>The most characters accepted.</summary>
    public int MaximumLength { get; } = maximumLength;
}
