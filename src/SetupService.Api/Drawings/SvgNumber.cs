using System.Globalization;

namespace SetupService.Api.Drawings;

/// <summary>Writes a number of a drawing: to a thousandth, without exponent, in no culture.</summary>
internal static class SvgNumber
{
    public static string Write(double value)
    {
        var rounded = Math.Round(value, 3, MidpointRounding.AwayFromZero);

        // Minus zero would be written with its sign.
        return rounded == 0 ? "0" : rounded.ToString("0.###", CultureInfo.InvariantCulture);
    }
}
