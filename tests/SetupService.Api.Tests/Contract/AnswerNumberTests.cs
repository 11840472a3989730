using System.Globalization;
using System.Text.Json;
using CsCheck;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Tests.Contract;

/// <summary>Numbers of answers carry at most nine significant digits and stay the numbers they are.</summary>
public sealed class AnswerNumberTests
{
    private static readonly JsonSerializerOptions Options = new() { Converters = { new AnswerNumberConverter() } };

    [Theory]
    [InlineData(9.733399999999975, "9.7334")]
    [InlineData(0.1 + 0.2, "0.3")]
    [InlineData(-1.4553999999999998, "-1.4554")]
    [InlineData(123456.7891234, "123456.789")]
    [InlineData(345, "345")]
    [InlineData(-0.0, "0")]
    [InlineData(2026, "2026")]
    [InlineData(999999999.9, "1E+09")]
    [InlineData(0.5, "0.5")]
    [InlineData(1e-7, "1E-07")]
    public void A_number_is_written_with_nine_digits_at_most(double value, string expected) =>
        Assert.Equal(expected, JsonSerializer.Serialize(value, Options));

    [Fact]
    public void What_is_written_is_the_number_to_nine_digits() =>
        Gen.Double[-1e12, 1e12].Sample(value =>
        {
            var text = JsonSerializer.Serialize(value, Options);
            var read = double.Parse(text, CultureInfo.InvariantCulture);
            var digits = text.Split('E')[0].Replace(".", "", StringComparison.Ordinal).TrimStart('-').TrimStart('0');
            return digits.Length <= 9 && Math.Abs(read - value) <= 5.001e-9 * Math.Abs(value) && JsonDocument.Parse(text).RootElement.ValueKind == JsonValueKind.Number;
        });

    /// <summary>What is written is character by character the framework's own form of nine digits, which rounds the exact value: at every size, and near and on the halves between two forms.</summary>
    [Fact]
    public void A_number_is_written_as_the_framework_writes_nine_digits() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Int[-9, 12], Gen.Int[0, 999_999_999], Gen.Int[-3, 3]).Sample(
            (part, size, nine, nudge) =>
            {
                var halfway = double.Parse($"{nine}.5E{size - 9}", CultureInfo.InvariantCulture);
                return Array.TrueForAll(
                    [part * Math.Pow(10, size), halfway, BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(halfway) + nudge), Math.Pow(10, size) * (1 - (nine * 1e-18)), -nine / 1024.0],
                    value => JsonSerializer.Serialize(value, Options) == (value == 0 ? "0" : value.ToString("G9", CultureInfo.InvariantCulture)));
            },
            iter: 20_000);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_number_that_is_none_is_never_written(double value) =>
        Assert.Throws<ArgumentException>(() => JsonSerializer.Serialize(value, Options));
}
