using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

public class TyreMarkingFaultTests
{
    [Theory]
    [InlineData("", "", 0, "tyre size")]
    [InlineData("   ", "", 0, "tyre size")]
    [InlineData("banana", "banana", 0, "before the width only P, LT, HL and T")]
    [InlineData("PLT265/70R17", "PLT265/70R17", 0, "before the width only P, LT, HL and T")]
    [InlineData("ST205/75R15", "ST", 0, "trailers")]
    [InlineData("P", "", 1, "tyre size")]
    [InlineData("225/45Q17", "45Q17", 4, "such as 45R17")]
    [InlineData(" 225/45Q17 91W", "45Q17", 5, "such as 45R17")]
    [InlineData("225/45 Q 17", "45 Q", 4, "such as 45R17")]
    [InlineData("225/45", "45", 4, "such as 45R17")]
    [InlineData("225/45R", "45R", 4, "such as 45R17")]
    [InlineData("225/", "", 4, "such as 45R17")]
    [InlineData("225/R17", "R17", 4, "such as 45R17")]
    [InlineData("225", "225", 0, "225/45R17 or 185R14")]
    [InlineData("225 45 17", "225 45", 0, "225/45R17 or 185R14")]
    [InlineData("75/45R17", "75", 0, "80 to 455")]
    [InlineData("79/45R17", "79", 0, "80 to 455")]
    [InlineData("456/45R17", "456", 0, "80 to 455")]
    [InlineData("225.5/45R17", "225.5", 0, "whole mm")]
    [InlineData("99999999999999999999/45R17", "99999999999999999999", 0, "80 to 455")]
    [InlineData("225/19R17", "19", 4, "20 to 100")]
    [InlineData("225/101R17", "101", 4, "20 to 100")]
    [InlineData("225/45.5R17", "45.5", 4, "whole percent")]
    [InlineData("225/45R7.5", "7.5", 7, "8 to 26")]
    [InlineData("225/45R26.5", "26.5", 7, "8 to 26")]
    [InlineData("225/45R17.3", "17.3", 7, "whole or half inches")]
    [InlineData("190/65R661", "661", 7, "280 to 660")]
    [InlineData("7.00R390", "390", 5, "8 to 26")]
    [InlineData("3.00R16", "3.00", 0, "3.15 to 17.91")]
    [InlineData("P7.00R16", "7.00", 1, "no P, T or HL size")]
    [InlineData("31x1.50R15", "1.50", 3, "3.15 to 17.91")]
    [InlineData("31x10.50Q15", "10.50Q15", 3, "such as 10.50R15")]
    [InlineData("31x", "", 3, "such as 10.50R15")]
    [InlineData("16x10.50R15LT", "16", 0, "19.2 to 36 in")]
    [InlineData("50 x10.50R15LT", "50", 0, "19.2 to 36 in")]
    [InlineData("225/45R17 201W", "201", 10, "0 to 200")]
    [InlineData("225/45R17 94.5W", "94.5", 10, "0 to 200")]
    [InlineData("225/45R17 94", "94", 10, "94W")]
    [InlineData("225/45R17 94 XL", "94 XL", 10, "94W")]
    [InlineData("225/45R17 94I", "94I", 10, "94W")]
    [InlineData("225/45R17 94Z", "94Z", 10, "94W")]
    [InlineData("225/45R17 94WW", "94WW", 10, "94W")]
    [InlineData("225/45R17 94HL", "94HL", 10, "94W")]
    [InlineData("225/45R17 94/W", "94/W", 10, "94W")]
    [InlineData("225/45R17 (94Y", "(94Y", 10, "closed")]
    [InlineData("225/45R17 ()", "()", 10, "94W")]
    [InlineData("225/45R17 (94H)", "(94H)", 10, "round W or Y")]
    [InlineData("225/45R17 94W 91V", "91V", 14, "second service description")]
    [InlineData("225/70R15C 112S (115N) (116N)", "(116N)", 23, "at most two")]
    [InlineData("225/45R17 94W 9PR", "9", 14, "an even number from 2 to 24")]
    [InlineData("225/45R17 94W LRD 10PR", "10PR", 18, "a tyre has one")]
    [InlineData("225/45R17 94W TL TT", "TT", 17, "with a tube or without")]
    [InlineData("T125/70D17C", "C", 10, "temporary spare")]
    [InlineData("225/45R17 94W XL LL", "LL", 17, "extra load")]
    [InlineData("225/45R17C 94W XL", "XL", 15, "commercial (C)")]
    [InlineData("HL275/35R21 105Y XL", "XL", 17, "high load")]
    [InlineData("LT265/70R17 121S XL", "XL", 17, "light truck (LT)")]
    [InlineData("P225/60R16C 97H", "C", 10, "car tyre")]
    [InlineData("P225/60R16CP 97H", "CP", 10, "car tyre")]
    [InlineData("P225/60R16LT 97H", "LT", 10, "car tyre")]
    [InlineData("225/45R17 94W nice", "nice", 14, "capital letters")]
    [InlineData("225/45R17 94W Tq", "Tq", 14, "capital letters")]
    [InlineData("225/45R17 94W TOOLONG", "TOOLONG", 14, "one to 5 capital letters")]
    [InlineData("225/45R17 94W RUN M+S FLAT", "RUN", 14, "a mark")]
    [InlineData("225/45R17 94W EXTRA", "EXTRA", 14, "a mark")]
    [InlineData("225/45R17 94W AB12", "AB12", 14, "capital letters")]
    [InlineData("225/45R17 94W *q", "*q", 14, "a mark")]
    [InlineData("225/45R17 94W LOAD", "LOAD", 14, "a mark")]
    [InlineData("225/45R17 94W ТЛ", "ТЛ", 14, "a mark")]
    [InlineData("225/45R17 94W M+", "M+", 14, "a mark")]
    [InlineData("225/45R17 94W \ud83d\ude00", "\ud83d\ude00", 14, "a mark")]
    public void The_fault_names_the_part_and_says_what_was_expected(string text, string part, int position, string words)
    {
        var fault = Markings.Fault(text);

        Assert.Equal(part, fault.Part);
        Assert.Equal(position, fault.Position);
        Assert.Contains(words, fault.Message);
        Assert.Contains(part.Length == 0 ? "ends where" : $"“{part}”", fault.Message);
        Assert.EndsWith(".", fault.Message);
    }

    [Fact]
    public void Sixty_characters_are_read_and_sixty_one_are_not()
    {
        var longest = "225/45R17 94W " + string.Join(' ', Enumerable.Repeat("ABC", 11)) + " AB";
        Assert.Equal(TyreMarkingReader.MaximumLength, longest.Length);

        Assert.Equal(12, Markings.Read($" {longest} ").UnreadMarks.Count);
        var fault = Markings.Fault($" {longest}C ");
        Assert.Equal(("C", 61), (fault.Part, fault.Position));
        Assert.Equal("The marking is 61 characters long; at most 60 are read.", fault.Message);
    }

    [Theory]
    [InlineData("80/20R8")]
    [InlineData("455/100R26")]
    [InlineData("225/45R17 0B")]
    [InlineData("225/45R17 200Y")]
    public void The_limits_themselves_are_read(string text) => Assert.Equal(text, Markings.Read(text).StandardText);
}
