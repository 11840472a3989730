using System.Buffers;
using System.Text.Json;
using nietras.SeparatedValues;
using SetupService.Api.Tyres;
using SetupService.Api.Wheels;

namespace SetupService.Api.Fitment.Batch;

/// <summary>The candidate of one row. Filled anew for each row; the texts that rows repeat are made once.</summary>
internal sealed class CsvRow
{
    private const int MostTexts = 4096;

    private readonly HashSet<string> _texts = new(StringComparer.Ordinal);
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> _lookup;

    public CsvRow() => _lookup = _texts.GetAlternateLookup<ReadOnlySpan<char>>();

    public string? Id { get; set; }

    /// <summary>True where the number read last, of this row or one before it, had a decimal comma.</summary>
    public bool HasDecimalComma { get; set; }

    public WheelDocument Wheel { get; private set; } = new();

    public TyreDocument Tyre { get; private set; } = new();

    /// <summary>The row as the line of a batch.</summary>
    public BatchCandidateLine Line { get; } = new() { Candidate = new() };

    /// <summary>True when the cell of the tyre's marking was filled, without which there is no tyre to map; what a wheel lacks its mapping tells.</summary>
    public bool HasTyre => Tyre.Marking.Length > 0;

    /// <summary>Empties every member of the candidate.</summary>
    public void Clear()
    {
        Id = null;
        Wheel = new WheelDocument();
        Tyre = new TyreDocument();
        Line.Candidate!.Wheel = Wheel;
        Line.Candidate.Tyre = Tyre;
    }

    /// <summary>The text of a cell, made once for all the rows that repeat it.</summary>
    public string Intern(ReadOnlySpan<char> cell)
    {
        if (_lookup.TryGetValue(cell, out var known))
            return known;

        var text = cell.ToString();
        if (_texts.Count >= MostTexts)
            _texts.Clear();
        _texts.Add(text);
        return text;
    }
}

/// <summary>
/// Writes a row as the equivalent JSON candidate line, so that a bad row gets the same faults, pointers and words as the same
/// candidate sent as JSON.
/// </summary>
internal static class CsvRowJson
{
    /// <summary>A number that JSON can write and a double cannot hold.</summary>
    private const string TooLarge = "1e999";

    public static ReadOnlyMemory<byte> Write(SepReader.Row row, CsvColumn[] columns, TableSeparator separator)
    {
        ArrayBufferWriter<byte> buffer = new(512);
        using Utf8JsonWriter writer = new(buffer);
        writer.WriteStartObject();
        Cells(writer, row, columns, separator, "id", "");
        writer.WriteStartObject("candidate");
        Part(writer, row, columns, separator, "wheel");
        Part(writer, row, columns, separator, "tyre");
        writer.WriteEndObject();
        writer.WriteEndObject();
        writer.Flush();
        return buffer.WrittenMemory;
    }

    private static void Part(Utf8JsonWriter writer, SepReader.Row row, CsvColumn[] columns, TableSeparator separator, string part)
    {
        writer.WriteStartObject(part);
        Cells(writer, row, columns, separator, part + ".", part + ".");
        writer.WriteEndObject();
    }

    private static void Cells(Utf8JsonWriter writer, SepReader.Row row, CsvColumn[] columns, TableSeparator separator, string start, string prefix)
    {
        for (var i = 0; i < columns.Length && i < row.ColCount; i++)
        {
            var column = columns[i];
            var cell = row[i].Span.Trim();
            if (column.IsFurther || !column.Name.StartsWith(start, StringComparison.Ordinal) || cell.IsEmpty)
                continue;

            writer.WritePropertyName(column.Name[prefix.Length..]);
            if (column.IsFlag && bool.TryParse(cell, out var flag))
                writer.WriteBooleanValue(flag);
            else if (!column.IsNumber || !CsvColumn.TryReadNumber(cell, separator, out var value))
                writer.WriteStringValue(cell);
            else if (double.IsFinite(value))
                writer.WriteNumberValue(value);
            else
                writer.WriteRawValue(TooLarge, skipInputValidation: true);
        }
    }
}
