namespace SetupService.Api.Http.Contract;

/// <summary>An example value, shown in the API description. A word is given as its text.</summary>
/// <param name="value">A number, a text or a truth value.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class SampleAttribute(object value) : Attribute
{
    /// <summary>The example value.</summary>
    public object Value { get; } = value;
}
