using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Tests.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.CamberTarget;

/// <summary>What is said of each input against the whole search done again with that input moved: the implicit function against what it stands for.</summary>
public sealed class SensitivityTests
{
    private static readonly CamberDemand Demand = AnyDemand.Of([AnyDemand.Corner(0.85, 18, share: 30), AnyDemand.Corner(0.7, 90, TurnDirection.Right, 70)]);

    public static TheoryData<string> Places() => [.. Result().Sensitivities.Where(one => one.Place.StartsWith("/vehicle/", StringComparison.Ordinal)).Select(one => one.Place)];

    [Theory]
    [MemberData(nameof(Places))]
    public void Each_is_how_the_camber_found_moves(string place)
    {
        var input = HandlingInputs.All.Single(one => "/vehicle" + one.Place == place);
        var said = Result().Sensitivities.Single(one => one.Place == place);
        var step = Math.Max(2e-3 * Math.Abs(said.Value), 1e-3);

        var moved = (Camber(input.Put(Car(), said.Value + step)) - Camber(input.Put(Car(), said.Value - step))) / (2 * step);

        // What hardly moves it is told to 1e-5° of what it leaves open.
        Assert.Equal(moved, said.DegPerUnit, (0.03 * Math.Abs(moved)) + 1e-6 + (1e-5 / said.StandardError));
    }

    [Fact]
    public void The_cornering_itself_counts_by_moving_all_corners_alike()
    {
        var byG = Result().Sensitivities.Single(one => one.Place == "/lateralG");
        var byRadius = Result().Sensitivities.Single(one => one.Place == "/cornerRadiusM");

        Assert.Equal((0.85, 18.0), (byG.Value, byRadius.Value));
        Assert.Equal((Scaled(1.005, 1) - Scaled(0.995, 1)) / (0.01 * 0.85), byG.DegPerUnit, 0.03 * Math.Abs(byG.DegPerUnit));
        Assert.Equal((Scaled(1, 1.005) - Scaled(1, 0.995)) / (0.01 * 18), byRadius.DegPerUnit, 0.03 * Math.Abs(byRadius.DegPerUnit));
    }

    // The camber searched anew with one coordinate after the other moved either way, its square added up.
    [Fact]
    public void Errors_of_the_points_count_by_the_squares_of_each_coordinates_effect()
    {
        const double ErrorMm = 1.5;
        var points = KinematicsCases.Setting("ST1").Suspension;
        var car = Car() with { Front = Car().Front with { Suspension = SuspensionModel.From(points, ErrorMm) } };
        var place = "/vehicle/front/suspension/points/pointErrorMm";

        var said = CamberTargetSearch.Solve(new ResolvedHandlingCar(car, [], []), Demand, [], default, out _)!.Sensitivities.Single(one => one.Place == place);

        var square = 0.0;
        foreach (var coordinate in MovedPoints.List(points)) square += Math.Pow((Moved(coordinate(0.5)) - Moved(coordinate(-0.5))) * ErrorMm, 2);
        Assert.Equal(ErrorMm, said.StandardError);
        Assert.True(said.LeavesOpenDeg > 0.01);
        Assert.Equal(Math.Sqrt(square), said.LeavesOpenDeg, 0.05 * said.LeavesOpenDeg);
        Assert.DoesNotContain(Result().Sensitivities, one => one.Place == place);

        double Moved(Hardpoints moved) => Camber(car with { Front = car.Front with { Suspension = SuspensionModel.From(moved) } });
    }

    [Fact]
    public void The_most_telling_stands_first_and_none_stands_for_nothing()
    {
        var open = Result().Sensitivities.Select(one => one.LeavesOpenDeg).ToArray();

        Assert.Equal(open.OrderDescending(), open);
        Assert.All(Result().Sensitivities, one => Assert.NotEqual(0, one.DegPerUnit));
    }

    // Independent errors add by squares (JCGM 100:2008, 5.1.2); 90 % of a normal distribution lie within 1.645 of them. Of values that were given each error is alike to both sides.
    [Fact]
    public void Of_values_given_the_interval_is_the_root_of_the_sum_of_squares()
    {
        var result = Result();
        var error = Math.Sqrt(result.Sensitivities.Sum(one => Math.Pow(one.DegPerUnit * one.StandardError, 2)));

        Assert.Equal(result.StaticCamberDeg.Value + (1.645 * error), result.StaticCamberDeg.Upper, 0.05 * error);
        Assert.Equal(result.StaticCamberDeg.Value - (1.645 * error), result.StaticCamberDeg.Lower, 0.05 * error);
        Assert.Equal(Uncertainty.NinetyPct, result.StaticCamberDeg.LevelPct);
    }

    [Fact]
    public void A_value_assumed_leaves_more_open_than_one_given()
    {
        AssumedInput assumed = new(HandlingInputs.CentreOfGravityHeight, 530, 440, 620, "a test", "a test");
        var (loose, given) = (Solved(Car(), assumed), Result().StaticCamberDeg);

        Assert.True(loose.StaticCamberDeg.Upper - loose.StaticCamberDeg.Lower > 1.2 * (given.Upper - given.Lower));
        Assert.Equal(180 / (2 * 1.6448536269514722), loose.Sensitivities.Single(one => one.Place == "/vehicle/centreOfGravityHeightMm").StandardError, 1e-9);
    }

    // An assumed range is followed to its ends: the camber searched anew there.
    public static TheoryData<string> Skewed() => ["swing arm", "camber give", "bar", "height"];

    [Theory]
    [MemberData(nameof(Skewed))]
    public void The_ends_of_an_assumed_range_are_what_the_whole_search_finds_there(string which)
    {
        var assumed = Assumed(which);
        var said = Solved(assumed.Input.Put(Car(), assumed.Value), assumed).Sensitivities.Single(one => one.Place == "/vehicle" + assumed.Input.Place);
        var middle = Camber(assumed.Input.Put(Car(), assumed.Value));

        Assert.Equal(Camber(assumed.Input.Put(Car(), assumed.Lower)) - middle, said.AtLowerDeg, 0.02 * Math.Abs(said.AtLowerDeg));
        Assert.Equal(Camber(assumed.Input.Put(Car(), assumed.Upper)) - middle, said.AtUpperDeg, 0.02 * Math.Abs(said.AtUpperDeg));
        Assert.NotEqual(0, said.AtLowerDeg);
    }

    // A guessed swing arm leaves as much open to either side, its range being even in 1/length, though its ends are 740 and 2050 mm from its value; give left out has a range skewed upward, and
    // more give wants more negative camber.
    [Fact]
    public void The_interval_follows_ranges_that_are_skewed()
    {
        var arm = Solved(Assumed("swing arm").Input.Put(Car(), Assumed("swing arm").Value), Assumed("swing arm")).Sensitivities.Single(one => one.Place == "/vehicle/front/suspension");
        Assert.Equal(1, Math.Abs(arm.AtLowerDeg / arm.AtUpperDeg), 0.15);
        Assert.True(arm.AtLowerDeg * arm.AtUpperDeg < 0);

        var give = Assumed("camber give");
        var flat = Solved(give.Input.Put(Car(), give.Value), give).StaticCamberDeg;
        Assert.True(flat.Value - flat.Lower > 1.1 * (flat.Upper - flat.Value), $"{flat}");
    }

    // The same sum drawn by another generator, without quantiles: independent errors, each side of each its own.
    [Fact]
    public void The_interval_is_that_of_plain_random_draws()
    {
        AssumedInput[] assumed = [Assumed("swing arm"), Assumed("camber give"), Assumed("bar"), Assumed("height")];
        var car = assumed.Aggregate(Car(), (one, input) => input.Input.Put(one, input.Value));
        var result = CamberTargetSearch.Solve(new ResolvedHandlingCar(car, assumed, []), Demand, [], default, out _)!;
        var random = new Random(20261130);
        var draws = new double[40_000];
        for (var i = 0; i < draws.Length; i++)
        {
            foreach (var one in result.Sensitivities)
            {
                var normal = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()) / 1.6448536269514722;
                draws[i] += normal < 0 ? -normal * one.AtLowerDeg : normal * one.AtUpperDeg;
            }
        }

        Array.Sort(draws);
        var width = result.StaticCamberDeg.Upper - result.StaticCamberDeg.Lower;
        Assert.Equal(result.StaticCamberDeg.Value + draws[draws.Length / 20], result.StaticCamberDeg.Lower, 0.03 * width);
        Assert.Equal(result.StaticCamberDeg.Value + draws[^(draws.Length / 20)], result.StaticCamberDeg.Upper, 0.03 * width);
    }

    private static AssumedInput Assumed(string which)
    {
        var (input, typical) = which switch
        {
            "swing arm" => (HandlingInputs.Front.SwingArm, TypicalValues.SwingArmMm(SuspensionLayout.MacPhersonStrut, CarAxle.Front)),
            "camber give" => (HandlingInputs.Front.CamberCompliance, TypicalValues.CamberComplianceDegPerKn(SuspensionLayout.FiveLink)),
            "bar" => (HandlingInputs.Front.BarRollRate, TypicalValues.BarRollRateNmPerDeg(CarAxle.Front, 28, 1, 1520)),
            _ => (HandlingInputs.CentreOfGravityHeight, TypicalValues.CentreOfGravityHeightMm(1510, null)),
        };
        return new(input, typical.Value, typical.Lower, typical.Upper, typical.Source, "a test");
    }

    private static CamberTargetResult Solved(HandlingCar car, AssumedInput assumed) => CamberTargetSearch.Solve(new ResolvedHandlingCar(car, [assumed], []), Demand, [], default, out _)!;

    private static HandlingCar Car()
    {
        var car = WorkedCar.Make();
        return car with { Front = car.Front with { CamberComplianceDegPerKn = 0.1, ToeComplianceDegPerKn = 0.03, LeftToeDeg = 0.1, RightToeDeg = 0.1 } };
    }

    private static CamberTargetResult Result() => CamberTargetSearch.Solve(new ResolvedHandlingCar(Car(), [], []), Demand, [], default, out _)!;

    private static double Camber(HandlingCar car) => AnyDemand.CamberDeg(car, Demand, out _)!.Value;

    private static double Scaled(double ofG, double ofRadius) => AnyDemand.CamberDeg(
        Car(),
        Demand with { Corners = [.. Demand.Corners.Select(one => one with { Demand = one.Demand with { LateralG = one.Demand.LateralG * ofG, RadiusM = one.Demand.RadiusM * ofRadius } })] },
        out _)!.Value;
}
