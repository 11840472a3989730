using System.Buffers;
using System.Globalization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Queries;

/// <summary>A query parameter that is a number; its unit is the end of its name.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it is.</param>
/// <param name="Minimum">The smallest value accepted.</param>
/// <param name="Maximum">The largest value accepted.</param>
/// <param name="Sample">An example.</param>
public sealed record NumberParameter(string Name, string Description, double Minimum, double Maximum, double Sample)
    : QueryParameter(Name, Description)
{
    private const NumberStyles Accepted = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>True where only whole numbers mean something.</summary>
    public bool IsWhole { get; init; }

    /// <summary>The characters numbers are written with; the words for infinity and NaN need others.</summary>
    internal static SearchValues<char> Letters { get; } = SearchValues.Create("+-.0123456789eE");

    /// <summary>Reads the text of a sound value.</summary>
    internal static double Read(string text) => double.Parse(text, Accepted, CultureInfo.InvariantCulture);

    internal override Fault? Check(string text)
    {
        // The words for infinity and NaN would be read as well; they are no numbers here.
        if (text.AsSpan().ContainsAnyExcept(Letters)
            || !double.TryParse(text, Accepted, CultureInfo.InvariantCulture, out var value))
        {
            return Fault.ForParameter(Name, FaultCodes.WrongType, $"{Name} is {TokenText.Quote(text)}; a number is needed here.");
        }

        if (!double.IsFinite(value))
            return Fault.ForParameter(Name, FaultCodes.NotFinite, $"{Name} is {TokenText.Quote(text)}, too large for a number in double precision.");
        if (IsWhole && value != Math.Truncate(value))
            return Fault.ForParameter(Name, FaultCodes.WrongType, $"{Name} is {TokenText.Quote(text)}; a whole number is needed here.");
        var unit = UnitOfName.Read(Name);
        return value >= Minimum && value <= Maximum
            ? null
            : Fault.ForParameter(
                Name,
                FaultCodes.OutOfRange,
                RangeText.Message(Name, TokenText.Quote(text), Minimum, Maximum, unit),
                new FaultLimits { Minimum = Minimum, Maximum = Maximum, Unit = unit });
    }
}
