using System.Text.Json;

namespace SetupService.Api.Http.Contract;

/// <summary>Reads a number where it is within limits; a number too large for a double is never within any.</summary>
internal static class NumberTokens
{
    public static bool TryRead(ref Utf8JsonReader reader, LimitsAttribute limits, out double value)
    {
        value = 0;
        return reader.TokenType == JsonTokenType.Number
            && reader.TryGetDouble(out value)
            && value >= limits.Minimum
            && value <= limits.Maximum;
    }

    public static bool TryReadWhole(ref Utf8JsonReader reader, LimitsAttribute limits, out int value)
    {
        // 87.0 is the whole number 87 (JSON Schema says so), 87.5 is none.
        var isWhole = TryRead(ref reader, limits, out var read) && double.IsInteger(read)
            && read is >= int.MinValue and <= int.MaxValue;
        value = isWhole ? (int)read : 0;
        return isWhole;
    }
}
