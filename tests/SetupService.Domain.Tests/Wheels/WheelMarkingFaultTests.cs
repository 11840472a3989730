using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Wheels;

public class WheelMarkingFaultTests
{
    [Theory]
    [InlineData("", "", 0, "8.5Jx18")]
    [InlineData("  wheel", "wheel", 2, "8.5Jx18")]
    [InlineData("8.5J", "8.5J", 0, "8.5Jx18")]
    [InlineData("8.5Jx", "8.5Jx", 0, "8.5Jx18")]
    [InlineData("8.5Qx18", "8.5Qx18", 0, "8.5Jx18")]
    [InlineData("8.5Jx18J", "J", 7, "second contour letter")]
    [InlineData("18Jx8.5", "18", 0, "3 to 16 in")]
    [InlineData("2.5Jx18", "2.5", 0, "3 to 16 in")]
    [InlineData("18x19", "18", 0, "3 to 16 in")]
    [InlineData("8Jx7.5", "7.5", 3, "8 to 26 whole or half inches")]
    [InlineData("8Jx26.5", "26.5", 3, "8 to 26 whole or half inches")]
    [InlineData("8Jx18.3", "18.3", 3, "8 to 26 whole or half inches")]
    [InlineData("8Jx18 ET151", "ET151", 6, "-150 to 150 mm")]
    [InlineData("8Jx18 ET-150.5", "ET-150.5", 6, "-150 to 150 mm")]
    [InlineData("8Jx18 44", "44", 6, "an offset")]
    [InlineData("8Jx18 ET", "ET", 6, "an offset")]
    [InlineData("8Jx18 ET44 ET45", "ET45", 11, "second offset")]
    [InlineData("8Jx18 IS-44", "IS-44", 6, "take none")]
    [InlineData("8Jx18 OS+12", "OS+12", 6, "take none")]
    [InlineData("8Jx18 H2 FH", "FH", 9, "second hump")]
    [InlineData("8Jx18 H3", "H3", 6, "a hump")]
    [InlineData("8Jx18 5x112 5x108", "5x108", 12, "second bolt circle")]
    [InlineData("8Jx18 2x112", "2", 6, "3 to 10 holes")]
    [InlineData("8Jx18 5x50", "50", 8, "80 to 300 mm")]
    [InlineData("8Jx18 ET44 black", "black", 11, "a hump")]
    public void The_fault_names_the_part_and_says_what_was_expected(string text, string part, int position, string words)
    {
        var fault = WheelMarkingReader.Read(text).Fault;

        Assert.NotNull(fault);
        Assert.Equal((part, position), (fault.Part, fault.Position));
        Assert.Contains(words, fault.Message);
        Assert.EndsWith(".", fault.Message);
    }

    [Fact]
    public void Sixty_characters_are_read_and_sixty_one_are_not()
    {
        var longest = "8.5Jx18" + new string(' ', 49) + "ET44";
        Assert.Equal(WheelMarkingReader.MaximumLength, longest.Length);

        Assert.NotNull(WheelMarkingReader.Read(longest).Value);
        var fault = WheelMarkingReader.Read($" {longest}5").Fault;
        Assert.Equal(("5", 61), (fault?.Part, fault?.Position));
        Assert.Equal("The text is 61 characters long; at most 60 are read.", fault?.Message);
    }
}
