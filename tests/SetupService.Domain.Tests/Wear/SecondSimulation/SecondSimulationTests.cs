using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>The simulated tyres do what is known of tyres, and the draws are what they are said to be.</summary>
public sealed class SecondSimulationTests
{
    private const double LoadN = 4000;
    private const double Degree = Math.PI / 180;
    private const double EightPsiKpa = 55;
    private static readonly TyreMake Tyre = new(190, 310, 230, 0.5, 1.0, 1, 3e-4, 1, 8);
    private static readonly CarKind Saloon = CarKind.All.Single(one => one.Label == "rear-driven saloon");
    private static readonly Driver Usual = new(1, 0.5, 0.5, 0.9, 0.4, false, false);

    // Order of magnitude: 1,027 N/deg at 4 kN (a published magic-formula set, reference value of the handling room).
    [Fact]
    public void A_usual_tyre_is_as_stiff_as_usual()
    {
        var patch = Pressed(230, 0, 0);
        Assert.InRange(patch.SideForceN(0.5 * Degree, 0) * 2, 800, 1300);
        Assert.InRange(patch.SideForceN(20 * Degree, 0), 0.85 * LoadN, LoadN);
    }

    // Frictional work of toe straight ahead at 1,027 N/deg: 179.3, 717.2 and 4,482.5 J/km at 0.1, 0.2 and 0.5 degrees (work = stiffness × slip²,
    // derived); scaled here to the stiffness of this tyre, whose friction lets a little go at half a degree.
    [Theory]
    [InlineData(0.1, 179.3)]
    [InlineData(0.2, 717.2)]
    [InlineData(0.5, 4482.5)]
    public void Toe_rubs_by_its_square(double toeDeg, double joulePerKm)
    {
        var patch = Pressed(230, 0, 0);
        var stiffness = patch.SideForceN(0.02 * Degree, 0) / 0.02 / 1027;
        Assert.InRange(1000 * (Energy(patch, toeDeg * Degree).Sum() - Energy(patch, 0).Sum()) / stiffness, 0.85 * joulePerKm, 1.25 * joulePerKm);
    }

    // Camber makes the pressure one-sided (Tire Science and Technology 28, abstract read); pressure off its right value loads shoulders or centre
    // (vehicle makers' service literature).
    [Fact]
    public void Camber_and_pressure_load_where_they_are_known_to()
    {
        Assert.True(Pressed(230, -2, 0).LoadN[9] > 1.1 * Pressed(230, -2, 0).LoadN[1]);
        Assert.Equal(Pressed(230, 0, 0).LoadN[9], Pressed(230, 0, 0).LoadN[1], 1e-6);
        Assert.True(CentreShare(Pressed(160, 0, 0)) < CentreShare(Pressed(230, 0, 0)));
        Assert.True(CentreShare(Pressed(300, 0, 0)) > CentreShare(Pressed(230, 0, 0)));
        Assert.All(new[] { 160.0, 230, 300 }, kpa => Assert.Equal(LoadN, Pressed(kpa, -2, 500).LoadN.Sum(), LoadN * 1e-3));

        static double CentreShare(ContactPatch patch) => patch.LoadN[5] / patch.LoadN.Sum();
    }

    // A car's front toed in wears its outer shoulders, toed out its inner ones (common practice, no source).
    [Theory]
    [InlineData(0.4, true)]
    [InlineData(-0.4, false)]
    public void Toe_in_wears_the_outer_shoulder_and_toe_out_the_inner(double toeDeg, bool isOuter)
    {
        var worn = Road(toeDeg, 0, 230)[0];
        Assert.Equal(isOuter, worn[1] > worn[9] * 1.1);
        Assert.Equal(!isOuter, worn[9] > worn[1] * 1.1);
        Assert.True(worn.Average() > 1.3 * Road(0, 0, 230)[0].Average());
    }

    // Wear of cornering goes with the square of the side force, so with the fourth power of speed: a tenth faster, 46 % more (derived).
    [Fact]
    public void A_tenth_faster_through_a_bend_wears_half_as_much_again()
    {
        var (slow, fast) = (Cornering(0.25), Cornering(0.25 * 1.21));
        Assert.InRange(fast / slow, 1.3, 1.6);

        static double Cornering(double lateralG) => Rates([new(1, lateralG, 0)], Saloon, 0, 0, 230)[0].Average();
    }

    // Convoys at controlled alignment: outer grooves worn 10 to 50 % more than inner ones (ROSAP 5836, abstract read).
    [Fact]
    public void A_car_set_upright_wears_its_outer_grooves_a_little_more()
    {
        var worn = Road(0, 0, 230)[0];
        Assert.InRange((worn[1] + worn[2]) / (worn[8] + worn[9]), 1.05, 1.6);
    }

    // Tread life 1.78 % shorter for each psi too little (US rule-making analysis of tyre pressure, read): 14 % at 8 psi. The simulated car may differ by half.
    [Fact]
    public void Too_little_air_costs_life_as_published()
    {
        var (right, low) = (Worst(230), Worst(230 - EightPsiKpa));
        Assert.InRange(1 - (right / low), 0.07, 0.21);

        static double Worst(double kpa) => Road(0.05, -0.5, kpa)[0].Max();
    }

    // Front-driven cars wear their fronts faster, "almost twice" (trade statements, not a source): held loosely.
    [Fact]
    public void A_front_driven_car_wears_its_front_faster_and_a_track_wears_faster_than_a_road()
    {
        var estate = CarKind.All.Single(one => one.Label == "family estate");
        var road = Rates(Usual.Road(), estate, 0.05, -0.8, 240);
        Assert.InRange(road[0].Average() / road[2].Average(), 1.1, 3);
        Assert.InRange(Rates(Usual.Track(), estate, 0.05, -0.8, 240, true)[0].Average() / road[0].Average(), 8, 80);
    }

    [Fact]
    public void The_same_seed_draws_the_same_car_and_another_seed_another()
    {
        var (one, same, other) = (Draw(11), Draw(11), Draw(12));
        Assert.Equal(one.Car.WornMm[0], same.Car.WornMm[0]);
        Assert.Equal(one.Wear.Tyres[0].Zones, same.Wear.Tyres[0].Zones);
        Assert.NotEqual(one.Car.WornMm[0], other.Car.WornMm[0]);
    }

    // Tire Pressure Special Study (2001, press release read): 27 % of cars with one tyre or more 8 psi too low, 13 % with two or more. The plates' mean
    // is 30 psi; here some 33.
    [Fact]
    public void As_many_road_cars_have_too_little_air_as_the_survey_found()
    {
        var low = Enumerable.Range(0, 5000).Select(seed => DrawnCar.DrawPressureOff(new Chance(seed), 0).Count(off => off * 230 < -EightPsiKpa)).ToList();
        Assert.InRange(low.Average(count => count >= 1 ? 1.0 : 0), 0.22, 0.32);
        Assert.InRange(low.Average(count => count >= 2 ? 1.0 : 0), 0.09, 0.17);
    }

    [Fact]
    public void Readings_are_of_the_tyres_that_wore()
    {
        var drawn = Enumerable.Range(2000, 60).Select(Draw).ToList();
        Assert.All(drawn, one => Assert.All(one.Wear.Tyres, tyre =>
        {
            var wheel = (int)tyre.Position;
            var depth = one.Car.Wheels[wheel].Tyre.NewDepthMm - one.Car.WornMm[wheel][5];
            Assert.InRange(tyre.Zones[1].DepthMm, depth - 2.2, depth + 1.8);
        }));
        Assert.InRange(drawn.Average(one => one.Wear.Tyres.Count), 3, 4);
        Assert.Contains(drawn, one => one.Wear.Tyres.Any(tyre => tyre.History.Count > 1));
        Assert.Contains(drawn, one => one.Wear.Vehicle.WheelbaseMm is not null);
    }

    // The bins themselves: someone who says 80 % of what is true in half the cases is 30 points off, someone who says a half of it is not.
    [Fact]
    public void The_bins_notice_who_tells_wrong()
    {
        var (wrong, right) = (new ToldAgainstTrue(), new ToldAgainstTrue());
        for (var i = 0; i < 2 * ToldAgainstTrue.LeastCount; i++)
        {
            wrong.Add(WearCause.ToeIn, 0.8, i % 2 == 0);
            right.Add(WearCause.ToeIn, 0.5, i % 2 == 0);
        }

        Assert.Equal(30, wrong.MeanOffPoints(), 1e-9);
        Assert.Equal(30, wrong.MostOffPoints(), 1e-9);
        Assert.Equal(0, right.MostOffPoints(), 1e-9);
        Assert.Equal(double.NaN, new ToldAgainstTrue().MeanOffPoints());
    }

    private static (DrawnCar Car, WearCase Wear) Draw(int seed)
    {
        var chance = new Chance(seed);
        var car = DrawnCar.From(chance);
        return (car, new CarReader(chance, car).Read());
    }

    private static ContactPatch Pressed(double kpa, double inclinationDeg, double inboardForceN)
    {
        var patch = new ContactPatch();
        patch.Press(Tyre, LoadN, kpa, inclinationDeg, inboardForceN, new double[ContactPatch.Discs]);
        return patch;
    }

    private static double[] Energy(ContactPatch patch, double slip)
    {
        var energy = new double[ContactPatch.Discs];
        patch.AddEnergy(slip, 0, 1, 1, energy);
        return energy;
    }

    private static double[][] Road(double toeDeg, double camberDeg, double kpa) => Rates(Usual.Road(), Saloon, toeDeg, camberDeg, kpa);

    private static double[][] Rates(RoadEvent[] events, CarKind kind, double toeDeg, double camberDeg, double kpa, bool isHot = false) =>
        new RollingCar(kind, [.. Enumerable.Range(0, 4).Select(_ => new WheelState(camberDeg, toeDeg, kpa, Tyre))]).RatesMmPerKm(events, isHot, 0, DrawnCar.Fresh());
}
