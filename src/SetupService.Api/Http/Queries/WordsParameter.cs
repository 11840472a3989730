using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Queries;

/// <summary>A query parameter that is one or several words of a closed set, with commas between them.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it is.</param>
/// <param name="Words">The words.</param>
public sealed record WordsParameter(string Name, string Description, IReadOnlyList<string> Words)
    : QueryParameter(Name, Description)
{
    /// <summary>The words of a sound value.</summary>
    internal static string[] Read(string text) => text.Split(',');

    internal override Fault? Check(string text) =>
        Array.Find(Read(text), word => !Words.Contains(word)) is { } unknown
            ? Fault.ForParameter(Name, FaultCodes.UnknownWord, WordText.Message(Name, unknown, Words) + " Several have commas between them.")
            : null;
}
