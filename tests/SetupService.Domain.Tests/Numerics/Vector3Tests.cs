using SetupService.Domain.Numerics;

namespace SetupService.Domain.Tests.Numerics;

public sealed class Vector3Tests
{
    [Fact]
    public void A_vectors_text_is_its_three_numbers() =>
        Assert.Equal("(1.5, -2, 0.25)", new Vector3(1.5, -2, 0.25).ToString());
}
