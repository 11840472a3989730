using System.Globalization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Queries;

namespace SetupService.Api.Fitment.Batch;

/// <summary>One column of a table of candidates: which member it stands for, and how a cell sets it.</summary>
/// <param name="name">The member's path under candidate, such as wheel.rimWidthIn; "id" for the row's id.</param>
/// <param name="schema">What the contract allows there.</param>
/// <param name="number">Sets a number.</param>
/// <param name="text">Sets a text or word; false where the text is none of the words.</param>
internal sealed class CsvColumn(
    string name, ContractSchema schema, Action<CsvRow, double>? number = null, Func<CsvRow, string, bool>? text = null)
{
    private const NumberStyles Accepted = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    public string Name => name;

    public bool IsNumber => number is not null;

    public bool IsFlag => schema is BooleanSchema;

    /// <summary>Reads a number with a decimal point; one too large for a double is infinite.</summary>
    public static bool TryReadNumber(ReadOnlySpan<char> cell, out double value) =>
        double.TryParse(cell, Accepted, CultureInfo.InvariantCulture, out value) && !cell.ContainsAnyExcept(NumberParameter.Letters);

    /// <summary>Sets the member from a cell; false where the contract does not allow what stands there.</summary>
    public bool TrySet(CsvRow row, ReadOnlySpan<char> cell)
    {
        if (number is null)
            return cell.Length <= ((schema as StringSchema)?.MaximumLength ?? LineId.MaximumLength) && text!(row, row.Intern(cell));

        var limits = (NumberSchema)schema;
        if (!TryReadNumber(cell, out var value) || !(value >= limits.Minimum && value <= limits.Maximum))
        {
            return false;
        }

        number(row, value);
        return true;
    }
}
