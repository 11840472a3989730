using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Queries;

/// <summary>A query parameter that is one word of a closed set.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it is.</param>
/// <param name="Words">The words.</param>
/// <param name="Default">The word that stands where none is given; null where that means something of its own.</param>
public sealed record EnumParameter(string Name, string Description, IReadOnlyList<string> Words, string? Default = null)
    : QueryParameter(Name, Description)
{
    internal override Fault? Check(string text) =>
        Words.Contains(text) ? null : Fault.ForParameter(Name, FaultCodes.UnknownWord, WordText.Message(Name, text, Words));
}
