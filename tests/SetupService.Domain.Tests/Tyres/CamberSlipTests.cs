using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

/// <summary>How much less a strip's rolling radius is by how much further it is pressed in, against geometry and what tables of radials say.</summary>
public sealed class CamberSlipTests
{
    // A tread of fixed length laid flat over the arc 2θ of a circle of radius R moves the wheel on by R sin θ where it turns by θ: it rolls on R sin θ/θ and stands on R cos θ.
    [Theory]
    [InlineData(8.0)]
    [InlineData(16.0)]
    [InlineData(23.0)]
    public void A_tread_of_fixed_length_loses_a_third_of_its_deflection(double halfArcDeg)
    {
        var arc = double.DegreesToRadians(halfArcDeg);

        Assert.Equal(CamberSlip.Share, (1 - (Math.Sin(arc) / arc)) / (1 - Math.Cos(arc)), 3e-3);
    }

    // A radial tyre's rolling circumference is 3.05 times its diameter (ETRTO, by a vehicle-theory textbook), its static radius 0.91 to 0.94 of half its diameter (GOST R 52899, rows of radials).
    [Fact]
    public void By_tables_of_radials_it_is_a_third_to_a_half()
    {
        var lost = 1 - (RollingCircumference.Factor(TyreConstruction.Radial) / Math.PI);

        Assert.InRange(CamberSlip.Share, lost / (1 - 0.91), lost / (1 - 0.94));
        Assert.InRange(CamberSlip.LargestShare, lost / (1 - 0.91), 1);
    }

    // Rolling radius by deflection as R − δ₀ (D atan(B ρ) + F ρ), ρ the deflection by that at nominal load (Tyre and Vehicle Dynamics); B 8.386, D 0.25826, F 0.07394 in a public set of a 205/60R15.
    [Fact]
    public void The_slope_at_nominal_load_of_a_published_set_is_the_least_plausible()
    {
        const double B = 8.386, D = 0.25826, F = 0.07394;

        Assert.Equal(CamberSlip.LeastShare, (D * B / (1 + (B * B))) + F, 0.01);
    }

    // 95 mm towards the car of a wheel at −2° of 305 mm: 95 sin 2° / 305 = 0.010870, a third of it 0.003623; what is pressed in further rolls slower.
    [Fact]
    public void By_hand()
    {
        Assert.Equal(-0.003623, CamberSlip.Along(95, -2, 305, 1 / 3.0), 1e-6);
        Assert.Equal(0.003623, CamberSlip.Along(-95, -2, 305, 1 / 3.0), 1e-6);
        Assert.Equal(0, CamberSlip.Along(95, 0, 305, 1 / 3.0));
    }
}
