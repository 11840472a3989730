using System.Globalization;

namespace SetupService.Domain.Wheels;

/// <summary>Values of the numbers found in wheel texts; the expressions that found them have checked their form.</summary>
internal static class WheelMarkingNumber
{
    /// <summary>A number with a decimal point or comma.</summary>
    public static double Decimal(string digits) =>
        double.Parse(digits.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    /// <summary>The fraction written behind whole inches; 0 where there is none.</summary>
    public static double Fraction(string fraction) => fraction switch
    {
        "1/4" or "¼" => 0.25,
        "1/2" or "½" => 0.5,
        "3/4" or "¾" => 0.75,
        _ => 0,
    };

    /// <summary>A range in words, limits included.</summary>
    public static string Range(string what, double minimum, double maximum, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} from {minimum:0.##} to {maximum:0.##} {unit}");
}
