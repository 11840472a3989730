using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Tests.Suspension;

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

    // Independent errors add by squares (JCGM 100:2008, 5.1.2); 90 % of a normal distribution lie within 1.645 of them.
    [Fact]
    public void The_interval_is_the_root_of_the_sum_of_squares()
    {
        var result = Result();
        var error = Math.Sqrt(result.Sensitivities.Sum(one => Math.Pow(one.DegPerUnit * one.StandardError, 2)));

        Assert.Equal(error, result.StaticCamberDeg.StandardError, 1e-12);
        Assert.Equal(result.StaticCamberDeg.Value + (1.645 * error), result.StaticCamberDeg.Ninety.Upper, 1e-3 * error);
        Assert.Equal(Uncertainty.NinetyPct, result.StaticCamberDeg.Ninety.LevelPct);
    }

    [Fact]
    public void A_value_assumed_leaves_more_open_than_one_given()
    {
        var input = HandlingInputs.Front.RollCentreHeight;
        AssumedInput assumed = new(input, 70, -20, 160, "a test", "a test");
        var loose = CamberTargetSearch.Solve(new ResolvedHandlingCar(Car(), [assumed], []), Demand, [], default, out _)!;

        Assert.True(loose.StaticCamberDeg.StandardError > Result().StaticCamberDeg.StandardError);
        Assert.Equal(180 / (2 * 1.6448536269514722), loose.Sensitivities.Single(one => one.Place == "/vehicle/front/rollCentreHeightMm").StandardError, 1e-9);
    }

    private static HandlingCar Car()
    {
        var car = WorkedCar.Make();
        return car with { Front = car.Front with { CamberComplianceDegPerKn = 0.1, ToeComplianceDegPerKn = 0.03, LeftToeDeg = 0.1, RightToeDeg = 0.1 } };
    }

    private static CamberTargetResult Result() => CamberTargetSearch.Solve(new ResolvedHandlingCar(Car(), [], []), Demand, [], default, out _)!;

    private static double Camber(HandlingCar car) => CamberTargetSearch.CamberDeg(car, Demand, out _)!.Value;

    private static double Scaled(double ofG, double ofRadius) => CamberTargetSearch.CamberDeg(
        Car(),
        Demand with { Corners = [.. Demand.Corners.Select(one => one with { Demand = one.Demand with { LateralG = one.Demand.LateralG * ofG, RadiusM = one.Demand.RadiusM * ofRadius } })] },
        out _)!.Value;
}
