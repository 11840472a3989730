using System.Text.Json;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Tests.Http;

public class EnumNameConverterTests
{
    private static readonly JsonSerializerOptions Options = new() { Converters = { new EnumNameConverter<FastenerSeat>() } };

    [Fact]
    public void Each_member_is_written_as_its_word_and_read_back()
    {
        Assert.Equal(["cone60", "ball12", "ball13", "ball14", "flat"], EnumNames<FastenerSeat>.List);
        foreach (var seat in Enum.GetValues<FastenerSeat>())
        {
            var json = JsonSerializer.Serialize(seat, Options);
            Assert.Equal($"\"{EnumNames<FastenerSeat>.GetName(seat)}\"", json);
            Assert.Equal(seat, JsonSerializer.Deserialize<FastenerSeat>(json, Options));
        }
    }

    [Theory]
    [InlineData("\"Cone60\"")]
    [InlineData("\"CONE60\"")]
    [InlineData("\" cone60\"")]
    [InlineData("\"0\"")]
    [InlineData("0")]
    [InlineData("\"\"")]
    [InlineData("null")]
    [InlineData("\"cone60, flat\"")]
    public void Nothing_else_is_a_word(string json) =>
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<FastenerSeat>(json, Options));

    [Fact]
    public void A_value_without_a_word_is_not_written() =>
        Assert.Throws<JsonException>(() => JsonSerializer.Serialize((FastenerSeat)99, Options));
}
