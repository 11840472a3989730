using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Wheels;

public class FastenerThreadTests
{
    // Metric threads by diameter and pitch, inch threads by diameter and threads in 25.4 mm: from memory, ISO 261 and the
    // unified thread series; the inch figures follow from the definition of the inch.
    [Theory]
    [InlineData("M14x1.5", 14, 1.5)]
    [InlineData("M12×1,25", 12, 1.25)]
    [InlineData("14x1.5", 14, 1.5)]
    [InlineData(" m 12 X 1.75 ", 12, 1.75)]
    [InlineData("1/2-20", 12.7, 1.27)]
    [InlineData("1/2\" - 20 UNF", 12.7, 1.27)]
    [InlineData("1/2in-20unf", 12.7, 1.27)]
    [InlineData("7/16-20", 11.1125, 1.27)]
    [InlineData("9/16-18", 14.2875, 25.4 / 18)]
    public void Threads_are_read_as_people_type_them(string text, double diameterMm, double pitchMm)
    {
        Assert.True(FastenerThreadReader.Read(text).TryGet(out var thread, out var fault), fault?.Message);
        Assert.Equal(diameterMm, thread.DiameterMm, 1e-12);
        Assert.Equal(pitchMm, thread.PitchMm, 1e-12);
    }

    [Theory]
    [InlineData("M8x0.75")]
    [InlineData("M24x3")]
    [InlineData("M14  x           1.5")] // 20 characters
    public void The_limits_themselves_are_read(string text) => Assert.Null(FastenerThreadReader.Read(text).Fault);

    [Fact]
    public void Twenty_one_characters_are_too_many() => Assert.NotNull(FastenerThreadReader.Read("M14  x            1.5").Fault);

    [Fact]
    public void A_text_of_one_character_is_quoted() => Assert.StartsWith("“M” is not ", FastenerThreadReader.Read("M").Fault!.Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("", "", 0, "M14x1.5")]
    [InlineData("M14", "M14", 0, "M14x1.5")]
    [InlineData("M14x1.5 long", "M14x1.5 long", 0, "M14x1.5")]
    [InlineData("1/0-20", "1/0-20", 0, "M14x1.5")]
    [InlineData("M7x1", "7", 1, "8 to 24 mm")]
    [InlineData("M30x2", "30", 1, "8 to 24 mm")]
    [InlineData("9/2-20", "9/2", 0, "8 to 24 mm")]
    [InlineData("M14x0.5", "0.5", 4, "0.75 to 3 mm")]
    [InlineData("M14x15", "15", 4, "0.75 to 3 mm")]
    [InlineData("1/2-6", "6", 4, "0.75 to 3 mm")]
    public void The_fault_names_the_part(string text, string part, int position, string words)
    {
        var fault = FastenerThreadReader.Read(text).Fault;

        Assert.NotNull(fault);
        Assert.Equal((part, position), (fault.Part, fault.Position));
        Assert.Contains(words, fault.Message);
    }
}
