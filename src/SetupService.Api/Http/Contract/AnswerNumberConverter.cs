using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>
/// Writes the numbers of answers with at most nine significant digits: 9.7334 and not 9.733399999999975. Nothing the service
/// computes is known more closely, and the digits beyond differ from one processor to the next. Requests are read exactly.
/// </summary>
internal sealed class AnswerNumberConverter : JsonConverter<double>
{
    /// <summary>The format of a number in an answer.</summary>
    public const string NineDigits = "G9";

    // A sign, nine digits, a point, up to four zeros before them, an exponent of up to five characters.
    private const int MaximumLength = 32;

    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => Write(writer, value);

    /// <summary>Writes one number.</summary>
    /// <exception cref="ArgumentException">The number is not finite, which JSON has no form for.</exception>
    public static void Write(Utf8JsonWriter writer, double value)
    {
        // Whole numbers this small have no digits to lose.
        if (value is > -1e9 and < 1e9 && value == (int)value)
        {
            writer.WriteNumberValue((int)value);
            return;
        }

        if (!double.IsFinite(value))
            throw new ArgumentException("A number of an answer is not finite.", nameof(value));
        Span<byte> digits = stackalloc byte[MaximumLength];
        if (!value.TryFormat(digits, out var length, NineDigits, CultureInfo.InvariantCulture))
            throw new InvalidOperationException("A number of an answer is longer than its longest form.");
        writer.WriteRawValue(digits[..length], skipInputValidation: true);
    }
}
