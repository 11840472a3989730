using System.Globalization;
using CsCheck;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

public class TyreMarkingPropertyTests
{
    private static readonly Gen<string> LikeMarkings =
        Gen.OneOf(
            "225", "/", "45", "R", "ZR", "17", "16.5", " ", "94", "W", "(", ")", "XL", "C", "LT", "P", "HL", "M+S", "3PMSF", "x",
            "10,5", "31", "-", "RF", "\u0000", "\ud800", "½", "🛞", "E", "run", "FLAT", "EXTRA", "LOAD", "M", "S", "RANGE", "LR", "10PR", "T", "TL", "*", "Q7", ".", ",", "6.00", "390", "(115N)", "\u00a0", "“")
        .Array[0, 14]
        .Select(string.Concat);

    private static readonly Gen<string> AnyText = Gen.OneOf<string>(LikeMarkings, Gen.String[Gen.Char, 0, 80], Gen.String[Gen.Char, 0, 10_000]);

    private static readonly Gen<Sidewall> Sidewalls = Gen.Select(
        Gen.Int[80, 455],
        Gen.Int[20, 100],
        Gen.OneOf("R", "ZR", "-", "B"),
        Gen.Int[16, 52],
        Gen.Int[0, 200],
        Gen.OneOf(SpeedSymbolTable.All.Select(symbol => symbol.Letter).ToArray()),
        Gen.OneOf(string.Empty, "XL", "LL", "C", "CP", "LT", "HL"),
        Gen.Select(Gen.Bool, Gen.Bool, Gen.OneOf("Q7", "AB", "ABCDE", string.Empty)),
        (width, aspect, construction, halfRim, index, symbol, version, marks) => new Sidewall(
            width, aspect, construction, halfRim / 2.0, index, symbol, version, marks.Item1, marks.Item2, marks.Item3));

    [Fact]
    public void No_text_makes_the_reader_throw_and_every_fault_points_into_the_text() =>
        AnyText.Sample(
            text =>
            {
                if (TyreMarkingReader.Read(text).TryGet(out var marking, out var fault))
                {
                    Assert.Equal(text.Trim(), marking.Text);
                    if (marking.StandardText.Length <= TyreMarkingReader.MaximumLength) Assert.Equal(marking, Markings.Read(marking.StandardText));
                    return;
                }

                Assert.InRange(fault.Position, 0, text.Length);
                Assert.Equal(fault.Part, text.Substring(fault.Position, fault.Part.Length));
            },
            iter: 20_000);

    [Fact]
    public void A_marking_is_the_same_however_it_is_spaced_and_cased() =>
        Gen.Select(Sidewalls, Gen.Int[0, 1], Gen.Bool, Gen.Bool).Sample(
            (sidewall, spaces, isLower, isComma) =>
            {
                var text = sidewall.Print(new string(' ', spaces), isLower, isComma);
                var marking = Markings.Read(text);

                Assert.Equal(sidewall.WidthMm, marking.NominalSectionWidthMm);
                Assert.Equal(sidewall.AspectPct, marking.AspectRatioPct);
                Assert.Equal(sidewall.RimIn, marking.RimDiameterIn);
                Assert.Equal(sidewall.LoadIndex, marking.LoadIndex);
                Assert.Equal(sidewall.Symbol, marking.SpeedSymbol!.Letter);
                Assert.Equal(sidewall.Construction == "ZR", marking.IsZr);
                Assert.Equal(sidewall.HasMudAndSnow, marking.HasMudAndSnowMark);
                Assert.Equal(sidewall.IsRunFlat ? true : sidewall.Unread is "AB" or "ABCDE" ? null : false, marking.IsRunFlat);
                Assert.Equal(sidewall.Unread.Length > 0 ? [sidewall.Unread] : [], marking.UnreadMarks);
                Assert.Equal(Markings.Read(sidewall.Print(string.Empty, false, false)), marking);
                Assert.Equal(Markings.Read(marking.StandardText), marking);
            },
            iter: 5_000);

    /// <summary>What stands on an invented tyre, and the many ways a person may type it.</summary>
    private sealed record Sidewall(
        int WidthMm,
        int AspectPct,
        string Construction,
        double RimIn,
        int LoadIndex,
        char Symbol,
        string Version,
        bool HasMudAndSnow,
        bool IsRunFlat,
        string Unread)
    {
        public string Print(string gap, bool isLower, bool isComma)
        {
            var rim = RimIn.ToString(CultureInfo.InvariantCulture);
            var known = string.Join(
                ' ',
                $"{WidthMm}{gap}/{gap}{AspectPct}{gap}{Construction}{gap}{(isComma ? rim.Replace('.', ',') : rim)}",
                $"{LoadIndex}{gap}{Symbol}",
                $"{(HasMudAndSnow ? $"M{gap}+{gap}S" : string.Empty)} {Version} {(IsRunFlat ? "RunFlat" : string.Empty)}");
            return $"{(isLower ? known.ToLowerInvariant() : known)} {Unread}";
        }
    }
}
