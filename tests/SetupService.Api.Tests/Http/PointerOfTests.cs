using SetupService.Api.Http.Faults;

namespace SetupService.Api.Tests.Http;

public class PointerOfTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("Label", "/label")]
    [InlineData("Candidate.Wheel.BoltCircle", "/candidate/wheel/boltCircle")]
    [InlineData("Items[1].XMm", "/items/1/xMm")]
    [InlineData("Rows[0][12]", "/rows/0/12")]
    public void A_path_of_members_becomes_a_pointer_into_the_body(string path, string expected) =>
        Assert.Equal(expected, PointerOf.Path(path));
}
