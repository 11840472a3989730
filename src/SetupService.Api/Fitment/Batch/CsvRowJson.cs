using System.Buffers;
using System.Text.Json;
using nietras.SeparatedValues;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// Writes a row as the candidate line it stands for, so that a bad row has the very faults, pointers and words of the same
/// candidate as JSON.
/// </summary>
internal static class CsvRowJson
{
    /// <summary>A number that JSON can write and a double cannot hold.</summary>
    private const string TooLarge = "1e999";

    public static ReadOnlyMemory<byte> Write(SepReader.Row row, CsvColumn[] columns)
    {
        ArrayBufferWriter<byte> buffer = new(512);
        using Utf8JsonWriter writer = new(buffer);
        writer.WriteStartObject();
        Cells(writer, row, columns, "id", "");
        writer.WriteStartObject("candidate");
        Part(writer, row, columns, "wheel");
        Part(writer, row, columns, "tyre");
        writer.WriteEndObject();
        writer.WriteEndObject();
        writer.Flush();
        return buffer.WrittenMemory;
    }

    private static void Part(Utf8JsonWriter writer, SepReader.Row row, CsvColumn[] columns, string part)
    {
        writer.WriteStartObject(part);
        Cells(writer, row, columns, part + ".", part + ".");
        writer.WriteEndObject();
    }

    private static void Cells(Utf8JsonWriter writer, SepReader.Row row, CsvColumn[] columns, string start, string prefix)
    {
        for (var i = 0; i < columns.Length && i < row.ColCount; i++)
        {
            var column = columns[i];
            var cell = row[i].Span;
            if (!column.Name.StartsWith(start, StringComparison.Ordinal) || cell.IsEmpty)
                continue;

            writer.WritePropertyName(column.Name[prefix.Length..]);
            if (column.IsFlag && bool.TryParse(cell, out var flag))
                writer.WriteBooleanValue(flag);
            else if (!column.IsNumber || !CsvColumn.TryReadNumber(cell, out var value))
                writer.WriteStringValue(cell);
            else if (double.IsFinite(value))
                writer.WriteNumberValue(value);
            else
                writer.WriteRawValue(TooLarge, skipInputValidation: true);
        }
    }
}
