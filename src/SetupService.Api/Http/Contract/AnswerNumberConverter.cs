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
    /// <summary>The longest number: a sign, nine digits, a point, up to four zeros before them, or an exponent of up to five characters.</summary>
    public const int MaximumLength = 32;

    // What an answer's number looks like.
    private const string NineDigits = "G9";

    // The powers of ten that doubles hold exactly, as far as they are needed here.
    private static ReadOnlySpan<double> PowersOfTen => [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12];

    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => Write(writer, value);

    /// <summary>Writes one number.</summary>
    /// <exception cref="ArgumentException">The number is not finite, which JSON has no form for.</exception>
    public static void Write(Utf8JsonWriter writer, double value)
    {
        Span<byte> digits = stackalloc byte[MaximumLength];
        writer.WriteRawValue(digits[..Format(digits, value)], skipInputValidation: true);
    }

    /// <summary>Writes the characters of a number into a span of at least <see cref="MaximumLength"/>; how many they are.</summary>
    /// <exception cref="ArgumentException">The number is not finite.</exception>
    public static int Format(Span<byte> utf8, double value)
    {
        int length;

        // Whole numbers this small have no digits to lose.
        if (value is > -1e9 and < 1e9 && value == (int)value)
        {
            ((int)value).TryFormat(utf8, out length, provider: CultureInfo.InvariantCulture);
            return length;
        }

        if (!double.IsFinite(value))
            throw new ArgumentException("A number of an answer is not finite.", nameof(value));
        if (!TryFormatPlainly(utf8, value, out length) && !value.TryFormat(utf8, out length, NineDigits, CultureInfo.InvariantCulture))
            throw new InvalidOperationException("A number of an answer is longer than its longest form.");
        return length;
    }

    /// <summary>
    /// Writes the same characters as <see cref="NineDigits"/> at a fraction of the cost, where the number is between 0.0001 and 1e9 and
    /// its digits behind the ninth leave no doubt how that one is rounded; false for the others.
    /// </summary>
    private static bool TryFormatPlainly(Span<byte> utf8, double value, out int length)
    {
        length = 0;
        var size = Math.Abs(value);
        if (size is not (>= 1e-4 and < 1e9))
            return false;

        // Digits before the point; below 1, less the zeros behind it.
        var places = 0;
        while (places < 9 && size >= PowersOfTen[places])
            places++;
        while (places is <= 0 and > -3 && size * PowersOfTen[1 - places] < 1)
            places--;

        // The product is off by half a unit in its last place, less than 1e-7 here: only nearer to a half is the rounding in doubt.
        var decimals = 9 - places;
        var scaled = size * PowersOfTen[decimals];
        var nine = (uint)scaled;
        var rest = scaled - nine;
        if (Math.Abs(rest - 0.5) < 1e-6)
            return false;
        if (rest > 0.5)
            nine++;

        // 0.9999999999 is rounded to 1, which has a digit more before the point.
        if (nine is < 100_000_000 or >= 1_000_000_000)
            return false;
        for (; decimals > 0 && nine % 10 == 0; decimals--)
            nine /= 10;

        Span<byte> digits = stackalloc byte[MaximumLength];
        var first = MaximumLength;
        for (var place = 0; nine > 0 || place <= decimals; place++)
        {
            if (place == decimals && decimals > 0)
                digits[--first] = (byte)'.';
            digits[--first] = (byte)('0' + (nine % 10));
            nine /= 10;
        }

        if (value < 0)
            digits[--first] = (byte)'-';
        digits[first..].CopyTo(utf8);
        length = MaximumLength - first;
        return true;
    }
}
