using System.Runtime.Intrinsics;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Tests.Numerics;

/// <summary>Two arctangents at once, against those of the platform's mathematics library.</summary>
public sealed class ArctangentTests
{
    [Fact]
    public void Agrees_with_the_library_over_all_ranges_and_signs()
    {
        for (var exponent = -12.0; exponent <= 12; exponent += 0.001)
        {
            var (one, other) = (Math.Pow(10, exponent), -1.37 * Math.Pow(10, exponent));

            var both = Arctangent.Of(Vector128.Create(one, other));

            Assert.Equal(1, both[0] / Math.Atan(one), 1e-15);
            Assert.Equal(1, both[1] / Math.Atan(other), 1e-15);
        }
    }

    [Fact]
    public void Keeps_nothing_endless_and_not_a_number()
    {
        Assert.Equal(Vector128.Create(0, Math.PI / 2), Arctangent.Of(Vector128.Create(0, double.PositiveInfinity)));
        Assert.Equal(-Math.PI / 2, Arctangent.Of(Vector128.Create(double.NegativeInfinity))[0]);
        Assert.True(double.IsNaN(Arctangent.Of(Vector128.Create(double.NaN))[0]));
    }
}
