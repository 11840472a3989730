using System.Globalization;
using System.Text;

namespace SetupService.Api.Http.Pages;

/// <summary>Text that goes into XML or HTML.</summary>
internal static class LegalText
{
    /// <summary>The text with a mark in place of every character that XML cannot carry.</summary>
    public static string Replace(string content)
    {
        var legal = new StringBuilder(content.Length);
        foreach (var rune in content.EnumerateRunes())
        {
            var isLegal = rune.Value is '\t' or '\n' or '\r' or >= 0x20 and not 0xfffe and not 0xffff;
            legal.Append(CultureInfo.InvariantCulture, $"{(isLegal ? rune : Rune.ReplacementChar)}");
        }

        return legal.ToString();
    }
}
