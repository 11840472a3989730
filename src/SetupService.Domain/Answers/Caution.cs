namespace SetupService.Domain.Answers;

/// <summary>A warning that belongs to an answer because acting on the answer can hurt somebody.</summary>
/// <param name="Code">Stable word that names the caution.</param>
/// <param name="Text">The caution as a sentence.</param>
public sealed record Caution(string Code, string Text);

/// <summary>Cautions that several subjects give.</summary>
public static class CommonCautions
{
    /// <summary>Springs under load.</summary>
    public static Caution SpringsUnderLoad { get; } = new(
        "springsUnderLoad",
        "A coil spring holds enough energy to kill. Take struts apart only with a compressor made for it, in good order, and stand out of the spring's line; leave it to a workshop if in doubt. Support the car on stands, never on the jack alone.");
}
