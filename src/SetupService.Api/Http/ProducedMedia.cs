namespace SetupService.Api.Http;

/// <summary>Says which media type an endpoint answers in; what a caller's <c>Accept</c> is held against.</summary>
/// <param name="Type">The media type, without parameters.</param>
public sealed record ProducedMedia(string Type)
{
    /// <summary>The value of Content-Type of every JSON answer.</summary>
    public const string JsonUtf8 = "application/json; charset=utf-8";

    /// <summary>JSON, what nearly every call answers in.</summary>
    public static ProducedMedia Json { get; } = new("application/json");
}
