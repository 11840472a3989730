using System.Globalization;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Answers;

namespace SetupService.Api.Http.Queries;

/// <summary>A query parameter that is a text, such as a marking.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it is.</param>
/// <param name="MaximumLength">The most characters read.</param>
/// <param name="Sample">An example.</param>
public sealed record TextParameter(string Name, string Description, int MaximumLength, string Sample)
    : QueryParameter(Name, Description)
{
    /// <summary>Finds what cannot be read in a text; null = any text will do.</summary>
    public Func<string, ParseFault?>? Judge { get; init; }

    internal override Fault? Check(string text)
    {
        if (text.Length > MaximumLength)
        {
            return Fault.ForParameter(
                Name,
                FaultCodes.TooLong,
                string.Create(CultureInfo.InvariantCulture, $"{Name} has {text.Length} characters; at most {MaximumLength} are read."),
                new FaultLimits { Maximum = MaximumLength });
        }

        return Judge?.Invoke(text) is { } fault ? Fault.ForParameter(Name, FaultCodes.Unreadable, fault.Message) : null;
    }
}
