using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>A caller's own name for a line, given back as it came: a text of up to 64 characters, or a whole number.</summary>
[JsonConverter(typeof(LineIdConverter))]
public sealed record LineId
{
    /// <summary>The longest text kept.</summary>
    public const int MaximumLength = 64;

    /// <summary>The text, or null where the id is a number.</summary>
    public string? Text { get; init; }

    /// <summary>The number; meant only where there is no text.</summary>
    public long Number { get; init; }
}
