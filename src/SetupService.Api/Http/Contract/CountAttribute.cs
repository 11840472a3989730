namespace SetupService.Api.Http.Contract;

/// <summary>How many elements an array of a request may have, both ends included.</summary>
/// <param name="minimum">The fewest elements accepted.</param>
/// <param name="maximum">The most elements accepted.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class CountAttribute(int minimum, int maximum) : Attribute
{
    /// <summary>The fewest elements accepted.</summary>
    public int Minimum { get; } = minimum;

    /// <summary>The most elements accepted.</summary>
    public int Maximum { get; } = maximum;
}
